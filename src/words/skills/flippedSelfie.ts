import type { Half } from '#lib/mapping/pose/pictureSide.ts';
import type { Side } from '#lib/mapping/marks/markSet.ts';
import { fixed } from '../number.ts';
import type { ProblemWords } from './problemWords.ts';
import { say } from './say.ts';

export const selfieSigns = ['nose', 'scar', 'mole', 'stud', 'parting'] as const;
export type SelfieSign = (typeof selfieSigns)[number];
export const selfieClients = [
  'ferry pilot',
  'baker',
  'violinist',
  'bell-ringer',
  'choir leader',
  'potter',
] as const;

export type FlippedSelfieGiven = Readonly<{
  client: (typeof selfieClients)[number];
  /** What was read: a height or a width. */
  thing: 'higher' | 'longer';
  thingHalf: Half;
  amountMm: number;
  sign: SelfieSign;
  /** Her own side of the sign, as her record has it. */
  signSide: Side | 'not-written';
  signHalf: Half;
}>;

export const selfieAnswers = ['left', 'right', 'cannot-tell', 'no-widths'] as const;
export type SelfieAnswer = (typeof selfieAnswers)[number];

const recordWords: Readonly<Record<SelfieSign, (side: Side) => string>> = {
  nose: (side) => `her nose leans to her own ${side}`,
  scar: (side) => `she has a scar on her ${side} cheek`,
  mole: (side) => `she has a mole above her ${side} lip corner`,
  stud: (side) => `she wears a stud in her ${side} nostril`,
  parting: (side) => `her hair is parted on her own ${side}`,
};
const unwrittenWords: Readonly<Record<SelfieSign, string>> = {
  nose: 'Her record says nothing about her nose',
  scar: 'Her record says that she has a scar on one cheek, not on which',
  mole: 'Her record says that she has a mole above the lip, not on which side',
  stud: 'Her record says that she wears a stud in one nostril, not in which',
  parting: 'Her record says nothing about her parting',
};
const seenWords: Readonly<Record<SelfieSign, (half: Half) => string>> = {
  nose: (half) => `the nose leans towards the ${half} half`,
  scar: (half) => `the scar lies in the ${half} half`,
  mole: (half) => `the mole lies in the ${half} half`,
  stud: (half) => `the stud lies in the ${half} half`,
  parting: (half) => `the parting lies in the ${half} half`,
};
/** The sign as a thing: for a label. */
export const signNames: Readonly<Record<SelfieSign, string>> = {
  nose: 'nose leans',
  scar: 'scar',
  mole: 'mole',
  stud: 'stud',
  parting: 'parting',
};

const answerWords: Readonly<Record<SelfieAnswer, (given: FlippedSelfieGiven) => string>> = {
  left: ({ thing }) => `Her left brow is ${thing}`,
  right: ({ thing }) => `Her right brow is ${thing}`,
  'cannot-tell': () => 'Nobody can tell from this picture which side it is',
  'no-widths': () => 'Read no such thing from a picture, whichever side it is',
};
const isAnswer = (code: string): code is SelfieAnswer => selfieAnswers.some((answer) => answer === code);

/** What the sign says about the picture. */
function signSays({ sign, signSide, signHalf }: FlippedSelfieGiven): string {
  if (signSide === 'not-written')
    return `${unwrittenWords[sign]}: nothing tells whether the picture is mirrored.`;
  const isMirrored = signSide === signHalf;
  return `In her record ${recordWords[sign](signSide)}. In the picture ${seenWords[sign](signHalf)}. So the ${signHalf} half is her ${signSide}: the picture is ${isMirrored ? 'mirrored' : 'not mirrored'}.`;
}

const widthSays =
  'Which brow is longer is a width. A head turned by three degrees makes one brow longer and the other shorter, and no picture shows its turn.';

function truth(given: FlippedSelfieGiven): string {
  return given.thing === 'longer' ? widthSays : signSays(given);
}

export const flippedSelfieWords: ProblemWords<FlippedSelfieGiven> = {
  name: 'The flipped selfie',
  summary: 'Find out from a mark of known side which brow a picture really shows, or refuse the picture.',
  question: ({ thing }) => `Which of her brows is ${thing}?`,
  givens: ({ client, sign, signSide, signHalf, thing, thingHalf, amountMm }) => [
    `The ${client} sends a selfie. ${signSide === 'not-written' ? `${unwrittenWords[sign]}.` : `Her record says that ${recordWords[sign](signSide)}.`} In the picture ${seenWords[sign](signHalf)} of the screen.`,
    `The brow in the ${thingHalf} half reads ${fixed(amountMm)} mm ${thing}. Her face is at rest, and the level was taken from her eye corners.`,
  ],
  label: 'What do you say?',
  option: (code, given) => (isAnswer(code) ? answerWords[code](given) : code),
  steps: {
    kind: {
      hint: 'Is it a height or a width that was read? Only heights may be read from a picture.',
      done: (v) =>
        `${say(v, 'thing') === 'longer' ? widthSays : 'A brow that is higher: that is a height. At rest and with a level from the face, it may be read.'}`,
    },
    sign: {
      hint: 'Is there something on her face whose side you know? Where does it lie in the picture?',
      done: (v) => say(v, 'signSays'),
    },
    decide: {
      hint: 'Give the brow in that half of the picture the same side as the sign in that half.',
      done: (v) => `${say(v, 'answer')}.`,
    },
  },
  right: (given, reply) => `${reply}. ${truth(given)}`,
  slips: {
    'trusted-the-screen': (given, reply) => ({
      title: 'That is the screen’s side',
      text: `You chose “${reply}”, because it stands in the ${given.thingHalf} half of the picture. The screen’s side is hers only in a mirrored picture. ${truth(given)}`,
    }),
    'read-as-usual': (given, reply) => ({
      title: 'That is right for a picture that is not mirrored',
      text: `You chose “${reply}”, as if you stood before her. A front camera may have flipped it. ${truth(given)}`,
    }),
    'sign-unread': (given, reply) => ({
      title:
        given.thing === 'longer' ? 'The side is not the trouble here' : 'Something on her face does tell',
      text: `You chose “${reply}”. ${truth(given)}`,
    }),
    'refused-too-much': (given, reply) => ({
      title: 'Close: that is the rule for widths',
      text: `You chose “${reply}”. A brow that is higher is a height, and heights may be read from a level, resting face. ${truth(given)}`,
    }),
  },
  other: (given, reply) => ({ title: 'Not that one', text: `You chose “${reply}”. ${truth(given)}` }),
};

/** For the steps: what the sign says, as one text. */
export const selfieSignSays = signSays;
