import {
  mayRead,
  photoNumbers,
  refusals,
  type PhotoNumber,
  type PhotoRefusal,
  type PictureTaken,
} from '#lib/mapping/pose/mayRead.ts';
import { drawFrom, drawOne, drawWhole, type Draw } from '#lib/quantities/seed.ts';
import { neededFor, useOrRefuseWords } from '#words/skills/useOrRefuse.ts';
import type { UseOrRefuseAnswer, UseOrRefuseGiven } from '#words/skills/useOrRefuse.ts';
import type { Skill } from '../skill.ts';

type Given = UseOrRefuseGiven;

function rightAnswer({ wanted, picture }: Pick<Given, 'wanted' | 'picture'>): UseOrRefuseAnswer {
  const may = mayRead(wanted, picture);
  return may.use ? 'use' : may.why;
}

/** What each number needs; a picture lacks at most one of these, so that one refusal is right. */
const needed: Readonly<Record<PhotoNumber, readonly [PhotoRefusal, ...PhotoRefusal[]]>> = {
  'height-sides': ['not-at-rest', 'mirror-unknown', 'level-unknown'],
  'width-sides': ['widths-never'],
  'tail-over-front': ['not-at-rest', 'nod-unchecked'],
  'arch-share': ['not-at-rest', 'too-near'],
  length: ['not-at-rest', 'too-near', 'no-ruler'],
};

/** A picture, plainly near or plainly far. What this number does not need is there or not, by chance. */
function takePicture(draw: Draw, wanted: PhotoNumber): PictureTaken {
  const lack = draw() < 0.35 ? 'nothing' : drawOne(draw, needed[wanted]);
  const lacks = (why: PhotoRefusal) => {
    const byChance = draw() < 0.5;
    return why === lack || (byChance && !needed[wanted].includes(why) && why !== 'not-at-rest');
  };
  const far = 10 * drawWhole(draw, 17, 25);
  const near = 5 * drawWhole(draw, 5, 12);
  return {
    atRest: !lacks('not-at-rest'),
    levelKnown: !lacks('level-unknown'),
    nodChecked: !lacks('nod-unchecked'),
    mirrorKnown: !lacks('mirror-unknown'),
    cameraCm: lacks('too-near') ? near : far,
    hasRuler: !lacks('no-ruler'),
  };
}

/** "Use", the right refusal and others, four in all, in the rule's own order. */
function choicesFor(draw: Draw, right: UseOrRefuseAnswer): readonly UseOrRefuseAnswer[] {
  const wrong = refusals.filter((why) => why !== right);
  const shuffled = wrong
    .map((why) => ({ why, at: draw() }))
    .sort((a, b) => a.at - b.at)
    .map(({ why }) => why);
  const kept = new Set<UseOrRefuseAnswer>(['use', right, ...shuffled.slice(0, right === 'use' ? 3 : 2)]);
  return ['use' as const, ...refusals].filter((code) => kept.has(code));
}

/** Use or refuse one number of one picture: what that number needs against what is known of the picture. */
export const useOrRefuse: Skill<Given> = {
  id: 'use-or-refuse',
  version: 1,
  words: useOrRefuseWords,
  given: (seed) => {
    const draw = drawFrom(seed);
    const wanted = drawOne(draw, photoNumbers);
    const picture = takePicture(draw, wanted);
    return { wanted, picture, choices: choicesFor(draw, rightAnswer({ wanted, picture })) };
  },
  answer: (given) => ({ kind: 'choice', correct: rightAnswer(given), options: given.choices }),
  slips: [
    { id: 'used-it', credit: 0, value: () => 'use' },
    { id: 'blamed-the-face', credit: 0.3, value: () => 'not-at-rest' },
    { id: 'blamed-the-mirror', credit: 0.3, value: () => 'mirror-unknown' },
    { id: 'called-it-a-width', credit: 0.2, value: () => 'widths-never' },
    { id: 'blamed-the-level', credit: 0.3, value: () => 'level-unknown' },
    { id: 'blamed-the-nod', credit: 0.3, value: () => 'nod-unchecked' },
    { id: 'blamed-the-distance', credit: 0.3, value: () => 'too-near' },
    { id: 'asked-for-a-ruler', credit: 0.3, value: () => 'no-ruler' },
  ],
  steps: (given) => [
    { id: 'needs', values: { needs: neededFor(given.wanted) } },
    {
      id: 'has',
      values: {
        has: rightAnswer(given) === 'use' ? 'This picture has all of it' : 'Something stands against it',
        answer: useOrRefuseWords.option(rightAnswer(given), given),
      },
    },
  ],
  facts: [
    'turn-3-deg-tail-mm',
    'nod-up-tail-mm',
    'nod-none-tail-mm',
    'brow-from-30-cm-mm',
    'brow-straight-mm',
    'ask-if-mirrored',
  ],
};
