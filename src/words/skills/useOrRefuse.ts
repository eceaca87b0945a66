import {
  farEnoughCm,
  type PhotoNumber,
  type PhotoRefusal,
  type PictureTaken,
} from '#lib/mapping/pose/mayRead.ts';
import type { ProblemWords } from './problemWords.ts';
import { say } from './say.ts';

/** One number wanted from one picture, and what is known of the picture. */
export type UseOrRefuseGiven = Readonly<{
  wanted: PhotoNumber;
  picture: PictureTaken;
  choices: readonly UseOrRefuseAnswer[];
}>;
export type UseOrRefuseAnswer = 'use' | PhotoRefusal;

const wantedWords: Readonly<Record<PhotoNumber, string>> = {
  'height-sides': 'how much higher her left arch is than her right',
  'width-sides': 'how much further out her left tail ends than her right',
  'tail-over-front': 'how far her tail stands below her front',
  'arch-share': 'at which share of the brow’s length her arch stands',
  length: 'how long her brow is, in millimetres',
};

const answerWords: Readonly<Record<UseOrRefuseAnswer, string>> = {
  use: 'Use it',
  'not-at-rest': 'Refuse: the face is not at rest',
  'mirror-unknown': 'Refuse: it may be mirrored',
  'widths-never': 'Refuse: it is a width, and a turn fakes widths',
  'level-unknown': 'Refuse: nothing says what is level',
  'nod-unchecked': 'Refuse: the chin may be up or down',
  'too-near': 'Refuse: the camera was too near',
  'no-ruler': 'Refuse: nothing in the picture gives its scale',
};
const isAnswer = (code: string): code is UseOrRefuseAnswer => Object.hasOwn(answerWords, code);

/** What each number needs of a picture. */
const needWords: Readonly<Record<PhotoNumber, string>> = {
  'height-sides':
    'A height, left against right, needs three things: a face at rest, a level from the face, and to know whether the picture is mirrored.',
  'width-sides':
    'A width, left against right, is never read from a picture: a small turn fakes it, and no picture shows its turn.',
  'tail-over-front':
    'The tail against the front needs a face at rest and a chin that was checked from the side: a nod fakes it.',
  'arch-share': `A share of the length needs a face at rest and a camera at least ${farEnoughCm} cm away: from near, the tail’s end looks shorter.`,
  length: `A length needs a face at rest, a camera at least ${farEnoughCm} cm away, and a ruler in the brow’s plane.`,
};

const hasWords = ({
  atRest,
  levelKnown,
  nodChecked,
  mirrorKnown,
  cameraCm,
  hasRuler,
}: PictureTaken): readonly string[] => [
  atRest ? 'The face is at rest.' : 'She is talking in the picture, brows a little up.',
  `${levelKnown ? 'A level thread lies in the picture.' : 'There is no level in it.'} ${nodChecked ? 'A second picture from the side shows the chin level.' : 'There is no picture from the side.'}`,
  `${mirrorKnown ? 'It is not mirrored: the writing on her shirt can be read.' : 'Nothing shows whether it is mirrored.'} The camera was ${cameraCm} cm away. ${hasRuler ? 'A ruler lies on the brow bone.' : 'There is no ruler in it.'}`,
];

export const useOrRefuseWords: ProblemWords<UseOrRefuseGiven> = {
  name: 'Use or refuse',
  summary: 'Decide for one number of one picture: use it, or refuse it and say why.',
  question: ({ wanted }) => `From this picture you want to read ${wantedWords[wanted]}. Use or refuse?`,
  givens: ({ picture }) => hasWords(picture),
  label: 'Use or refuse',
  option: (code) => (isAnswer(code) ? answerWords[code] : code),
  steps: {
    needs: {
      hint: 'What does this number need? A height needs other things than a width or a length.',
      done: (v) => say(v, 'needs'),
    },
    has: {
      hint: 'Go through what is known of the picture, and look for the first thing this number lacks.',
      done: (v) => `${say(v, 'has')}: ${say(v, 'answer')}.`,
    },
  },
  right: ({ wanted }, reply) => `${reply}. ${needWords[wanted]}`,
  slips: {
    'used-it': ({ wanted }, reply) => ({
      title: 'This picture lacks something for that',
      text: `You chose “${reply}”. ${needWords[wanted]}`,
    }),
    'blamed-the-face': ({ wanted, picture }, reply) => ({
      title: 'The resting face is not the trouble',
      text: `You chose “${reply}”. ${picture.atRest ? 'She is at rest here.' : 'She is not, but there is something before that.'} ${needWords[wanted]}`,
    }),
    'blamed-the-mirror': ({ wanted }, reply) => ({
      title: 'A mirror is not the trouble here',
      text: `You chose “${reply}”. Mirroring exchanges the sides. ${needWords[wanted]}`,
    }),
    'called-it-a-width': ({ wanted }, reply) => ({
      title: 'Close: that is the reason for widths',
      text: `You chose “${reply}”. What you want here is no width, left against right. ${needWords[wanted]}`,
    }),
    'blamed-the-level': ({ wanted }, reply) => ({
      title: 'The level is not the trouble here',
      text: `You chose “${reply}”. A level line matters for heights, left against right. ${needWords[wanted]}`,
    }),
    'blamed-the-nod': ({ wanted }, reply) => ({
      title: 'A nod is not the trouble here',
      text: `You chose “${reply}”. A nod moves both sides alike: it fakes the tail against the front. ${needWords[wanted]}`,
    }),
    'blamed-the-distance': ({ wanted, picture }, reply) => ({
      title: 'The distance is not the trouble here',
      text: `You chose “${reply}”. The camera was ${picture.cameraCm} cm away. ${needWords[wanted]}`,
    }),
    'asked-for-a-ruler': ({ wanted }, reply) => ({
      title: 'A scale is not the trouble here',
      text: `You chose “${reply}”. Only a length in millimetres needs a ruler. ${needWords[wanted]}`,
    }),
  },
  other: ({ wanted }, reply) => ({
    title: 'Not that one',
    text: `You chose “${reply}”. ${needWords[wanted]}`,
  }),
};

/** For the steps: what this number needs, and how the picture stands to it. */
export const neededFor = (wanted: PhotoNumber): string => needWords[wanted];
