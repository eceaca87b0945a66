import type { Interval } from '#lib/quantities/interval.ts';
import { fixed } from '../number.ts';
import type { Ends, PlacedMark, PlacedOn, PlaceMidlineSlip } from './placeMidline.ts';
import type { Feedback } from './problemWords.ts';

const mm = (value: number) => `${fixed(value)} mm`;
const sideOf = (value: number) => (value > 0 ? 'left' : 'right');

/** "0.4 mm too far to the client’s left" */
function offWords(offMm: number): string {
  return Math.abs(offMm) < 0.05
    ? 'exactly right'
    : `${mm(Math.abs(offMm))} too far to the client’s ${sideOf(offMm)}`;
}

/** "Your thread crosses the ruler at 5.4 mm at the brows and 12.0 mm at the chin." */
function crossings(who: string, { browsMm, chinMm }: Ends): string {
  return `${who} at ${mm(browsMm)} at the brows and ${mm(chinMm)} at the chin.`;
}

/** The answer without a judgement, for readers without scripts. */
export function trueLineWords(exact: Ends): string {
  return crossings('The midline crosses the ruler', exact);
}

/** The picture of the answer, in words. */
export function answerPictureWords(exact: Ends): string {
  return `The same face with its pairs and their middles. ${trueLineWords(exact)} Your thread is the dashed line.`;
}

const slipWords: Readonly<
  Record<PlaceMidlineSlip, Readonly<{ what: string; why: (on: PlacedOn) => string }>>
> = {
  'followed-nose': {
    what: 'you followed the nose',
    why: ({ noseLeanMm }) =>
      `The nose base lies ${mm(Math.abs(noseLeanMm))} to the client’s ${sideOf(noseLeanMm)}, and a line from glabella to nose base runs further off all the way to the chin. Use the eyes, the glabella and the chin, and leave the nose out.`,
  },
  'brow-fronts': {
    what: 'you took the middle of the brow fronts',
    why: () =>
      'A line square to the two fronts turns as soon as one front is higher, and over the length of a face that is millimetres. The brows are what you are going to change: they never help to find the midline.',
  },
  'kept-vertical': {
    what: 'you kept the thread upright in the picture',
    why: ({ leanDeg }) =>
      `The head leans ${fixed(Math.abs(leanDeg))}° to the client’s ${leanDeg > 0 ? 'right' : 'left'}, and its midline leans with it. One point of it is not enough: look for a second one lower down, at the chin.`,
  },
  'one-pair': {
    what: 'you used one pair, the nose wings',
    why: ({ noseLeanMm }) =>
      `Their middle lies ${mm(Math.abs(noseLeanMm))} to the client’s ${sideOf(noseLeanMm)}, because the nose leans. One pair alone cannot show that it is wrong. The three eye pairs agree with each other, and not with this one.`,
  },
};

/** Why a right thread is right on this face, by its level. */
function rightWhy({ level, leanDeg, noseLeanMm, higherMm }: PlacedOn): string {
  if (level === 0)
    return 'This face is the same on both sides. Measured from your thread there is nothing to change: leave it alone. That is an answer too.';
  if (level === 1)
    return `The ${sideOf(higherMm)} brow stands ${mm(Math.abs(higherMm))} higher, and you did not let it turn the thread.`;
  if (level === 2)
    return `The head leans ${fixed(Math.abs(leanDeg))}° to the client’s ${leanDeg > 0 ? 'right' : 'left'}, and you leaned the thread with it.`;
  const nose = `The nose base lies ${mm(Math.abs(noseLeanMm))} to the client’s ${sideOf(noseLeanMm)}, and you left it out.`;
  if (level === 3) return nose;
  return `${nose} From near it looks larger, and the brows look shorter, on both sides alike. The old work is uneven, and it is no mark of the face. Find the midline here, but read no widths from such a picture.`;
}

/** What is said about one placed thread: the slip first, then the numbers, then why. */
export function placedFeedback(marked: PlacedMark, on: PlacedOn): Feedback {
  const both = `${crossings('Your thread crosses the ruler', on.yours)} ${crossings('The true midline crosses it', on.exact)}`;
  if (marked.right) return { title: 'Right', text: `${both} ${rightWhy(on)}` };
  const isClose = marked.browsAreRight || marked.chinIsRight;
  if (marked.slipId) {
    const { what, why } = slipWords[marked.slipId];
    return { title: isClose ? `Close: ${what}` : `Not yet: ${what}`, text: `${both} ${why(on)}` };
  }
  const { off } = marked;
  if (marked.browsAreRight)
    return {
      title: 'Close: right at the brows, not at the chin',
      text: `${both} At the chin yours is ${offWords(off.chinMm)}. Find a second point low on the face: the chin, or the middle of the lips.`,
    };
  if (marked.chinIsRight)
    return {
      title: 'Close: right at the chin, not at the brows',
      text: `${both} At the brows yours is ${offWords(off.browsMm)}. Read the inner eye corners and the pupils on the ruler and halve the sums.`,
    };
  return {
    title: 'Not there yet',
    text: `${both} Yours is ${offWords(off.browsMm)} at the brows, and ${offWords(off.chinMm)} at the chin. Take one eye pair first: add its two numbers, then halve.`,
  };
}

/**
 * What one careful reading of all the marks gives, with its doubt. `notTrusted`: names of marks that were
 * weighed down, or ''.
 */
export function libraryWords(atBrowsMm: Interval, leanDeg: Interval, notTrusted: string): string {
  const lean =
    leanDeg.lo <= 0 && leanDeg.hi >= 0
      ? 'a lean of the head is not shown'
      : `the head leans ${fixed(Math.abs(leanDeg.value))}° to the client’s ${leanDeg.value > 0 ? 'right' : 'left'} (${fixed(Math.min(Math.abs(leanDeg.lo), Math.abs(leanDeg.hi)))} to ${fixed(Math.max(Math.abs(leanDeg.lo), Math.abs(leanDeg.hi)))})`;
  const trust = notTrusted ? ` It did not trust the ${notTrusted}.` : ' It trusted every mark.';
  return `One careful reading of all the marks, worked out: the midline crosses the ruler at ${mm(atBrowsMm.value)} at the brows (${fixed(atBrowsMm.lo)} to ${fixed(atBrowsMm.hi)}), and ${lean}.${trust}`;
}

export const noLibraryWords = 'One careful reading of these marks does not fix a midline.';
