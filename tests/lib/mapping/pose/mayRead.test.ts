import { expect, test } from 'vitest';
import { mayRead, photoNumbers, type PhotoNumber, type PictureTaken } from '#lib/mapping/pose/mayRead.ts';

const good: PictureTaken = {
  atRest: true,
  levelKnown: true,
  nodChecked: true,
  mirrorKnown: true,
  cameraCm: 150,
  hasRuler: true,
};
const why = (number: PhotoNumber, part: Partial<PictureTaken> = {}) => {
  const may = mayRead(number, { ...good, ...part });
  return may.use ? 'use' : may.why;
};

test('[hand] a good picture gives everything but widths', () => {
  expect(photoNumbers.map((number) => why(number))).toEqual(['use', 'widths-never', 'use', 'use', 'use']);
});

test('[hand] each number falls by its own want and by no other', () => {
  const falls = (part: Partial<PictureTaken>) =>
    photoNumbers.filter((number) => number !== 'width-sides').map((number) => why(number, part));
  expect(falls({ levelKnown: false })).toEqual(['level-unknown', 'use', 'use', 'use']);
  expect(falls({ nodChecked: false })).toEqual(['use', 'nod-unchecked', 'use', 'use']);
  expect(falls({ mirrorKnown: false })).toEqual(['mirror-unknown', 'use', 'use', 'use']);
  expect(falls({ cameraCm: 149 })).toEqual(['use', 'use', 'too-near', 'too-near']);
  expect(falls({ hasRuler: false })).toEqual(['use', 'use', 'use', 'no-ruler']);
  expect(falls({ atRest: false })).toEqual(['not-at-rest', 'not-at-rest', 'not-at-rest', 'not-at-rest']);
});

test('[hand] the first thing that forbids is named', () => {
  const nothing = {
    atRest: false,
    levelKnown: false,
    nodChecked: false,
    mirrorKnown: false,
    cameraCm: 30,
    hasRuler: false,
  };
  expect(why('height-sides', nothing)).toBe('not-at-rest');
  expect(why('width-sides', nothing)).toBe('widths-never');
  expect(why('height-sides', { ...nothing, atRest: true })).toBe('mirror-unknown');
  expect(why('length', { ...nothing, atRest: true })).toBe('too-near');
});
