import { isMirroredBy, sideInHalf } from '#lib/mapping/pose/pictureSide.ts';
import { drawFrom, drawOne, drawWhole } from '#lib/quantities/seed.ts';
import {
  flippedSelfieWords,
  selfieAnswers,
  selfieClients,
  selfieSignSays,
  selfieSigns,
} from '#words/skills/flippedSelfie.ts';
import type { FlippedSelfieGiven, SelfieAnswer } from '#words/skills/flippedSelfie.ts';
import type { Skill } from '../skill.ts';

type Given = FlippedSelfieGiven;
const halves = ['left', 'right'] as const;

function rightAnswer({ thing, thingHalf, signSide, signHalf }: Given): SelfieAnswer {
  if (thing === 'longer') return 'no-widths';
  if (signSide === 'not-written') return 'cannot-tell';
  return sideInHalf(thingHalf, isMirroredBy({ side: signSide, half: signHalf }));
}

/** Which side a selfie shows: told by a mark of known side; refused for a width, and where nothing tells. */
export const flippedSelfie: Skill<Given> = {
  id: 'flipped-selfie',
  version: 1,
  words: flippedSelfieWords,
  given: (seed) => {
    const draw = drawFrom(seed);
    const chance = draw();
    return {
      client: drawOne(draw, selfieClients),
      thing: chance < 0.22 ? 'longer' : 'higher',
      thingHalf: drawOne(draw, halves),
      amountMm: drawWhole(draw, 12, 29) / 10,
      sign: drawOne(draw, selfieSigns),
      signSide: chance >= 0.22 && chance < 0.38 ? 'not-written' : drawOne(draw, halves),
      signHalf: drawOne(draw, halves),
    };
  },
  answer: (given) => ({ kind: 'choice', correct: rightAnswer(given), options: selfieAnswers }),
  slips: [
    { id: 'trusted-the-screen', credit: 0, value: ({ thingHalf }) => sideInHalf(thingHalf, true) },
    { id: 'read-as-usual', credit: 0.2, value: ({ thingHalf }) => sideInHalf(thingHalf, false) },
    { id: 'sign-unread', credit: 0.2, value: () => 'cannot-tell' },
    { id: 'refused-too-much', credit: 0.4, value: () => 'no-widths' },
  ],
  steps: (given) => [
    { id: 'kind', values: { thing: given.thing } },
    ...(given.thing === 'higher' ? [{ id: 'sign', values: { signSays: selfieSignSays(given) } }] : []),
    { id: 'decide', values: { answer: flippedSelfieWords.option(rightAnswer(given), given) } },
  ],
  facts: ['ask-if-mirrored', 'turn-3-deg-tail-mm', 'turn-3-deg-front-mm'],
};
