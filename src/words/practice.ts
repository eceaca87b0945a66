import type { Rung } from '#lib/practice/ladder.ts';
import type { ClosedRange } from '#lib/quantities/closedRange.ts';
import { rangeEnds } from '#lib/quantities/closedRange.ts';
import type { DecimalReason } from '#lib/quantities/decimal.ts';
import { notFetched } from './fetching.ts';
import { fixed } from './number.ts';

/** Buttons and short labels of every problem. */
export const practiceWords = {
  check: 'Check',
  tryAgain: 'Try again',
  showWorked: 'Show the worked answer',
  worked: 'Worked answer',
  newNumbers: 'Same skill, new numbers',
  nextQuestion: 'Next question',
  newSet: 'Another mixed set',
  hints: 'Hints',
  choose: 'Choose one answer first.',
  rightTitle: 'Right',
  soFar: 'Worked for you so far',
  yourTurn: 'The rest is yours.',
  allWorked: 'This one is worked to the end. Read it, then take new numbers.',
  howMuch: 'How much is worked for you',
  noScript: 'Answers are checked in your browser. Without JavaScript you can read the worked answer below.',
  saveCopy: 'Save a copy',
  notFetched: notFetched('This question'),
  linkNotRead: notFetched('Which version of this exercise the link was made for'),
  notSaved:
    'Not saved on this device. This browser does not let the page keep anything. Save a copy before you close it.',
  newer:
    'This device holds practice from a newer version of the site. It is left as it is, and nothing new is saved. Load the page again to get the newer version.',
} as const;

export const rungWords: Readonly<Record<Rung, string>> = {
  worked: 'All of it',
  'last-blank': 'All but the last step',
  'two-blank': 'All but two steps',
  bare: 'Nothing',
  mixed: 'Nothing, mixed with others',
  review: 'Nothing, for review',
};

/** "Read as 19.5 mm." What was typed, as the page understood it. */
export function readAs(value: number, unit: string): string {
  return `Read as ${String(value).replace('-', '−')} ${unit}.`;
}

/** "Right within 0.1 mm." */
export function rightWithin(range: ClosedRange, unit: string): string {
  return `Right within ${fixed(rangeEnds(range).tolerance, range.decimals)} ${unit}.`;
}

/** What to do about a text that is not one number. */
export function refusedNumber(reason: DecimalReason, unit: string): string {
  switch (reason) {
    case 'empty':
      return 'Type your answer first.';
    case 'ambiguous':
      return 'Is that a thousand, or a bit more than one? Use one point or one comma, such as 31.5 or 31,5.';
    case 'other-unit':
      return `Give the answer in ${unit}: the number alone is enough.`;
    case 'too-long':
      return 'That is more digits than any ruler reads. One decimal is enough.';
    case 'not-a-number':
      return 'This is not a number. Type digits with one point or one comma, such as 31.5.';
  }
}

/** "Half the marks." from the share of the marks earned. */
export function creditWords(credit: number): string {
  if (credit >= 1) return 'Full marks.';
  if (credit === 0) return 'No marks this time.';
  return credit === 0.5 ? 'Half the marks.' : `${fixed(credit * 100, 0)} of 100 marks.`;
}

/** "Right at try 2, with 1 hint." */
export function solvedWords(tries: number, hints: number): string {
  const help = hints === 0 ? '' : hints === 1 ? ', with 1 hint' : `, with ${hints} hints`;
  return tries === 1
    ? help
      ? `Right at the first try${help}.`
      : 'Full marks.'
    : `Right at try ${tries}${help}.`;
}

/** "Seed 345." From its second version on, an exercise names that too: a seed alone means the first. */
export function seedWords(seed: number, version: number): string {
  return version === 1 ? `Seed ${seed}.` : `Seed ${seed}, version ${version}.`;
}

/** "Comes back for review in 3 days." */
export function reviewWords(days: number): string {
  if (days <= 0) return 'Due for review today.';
  return days === 1 ? 'Comes back for review tomorrow.' : `Comes back for review in ${days} days.`;
}

export function showHintWords(number: number): string {
  return `Show hint ${number}`;
}

export type BeadState = 'todo' | 'here' | 'full' | 'half' | 'none';

/** What a bead on the thread says to someone who does not see it. */
export function beadWords(number: number, state: BeadState): string {
  const said = {
    todo: 'to come',
    here: 'this one',
    full: 'right',
    half: 'right with help',
    none: 'not right',
  } as const;
  return `Question ${number}: ${said[state]}`;
}

export function questionOf(number: number, total: number): string {
  return `Question ${number} of ${total}`;
}

/** The end of a set. */
export function setDone(right: number, total: number): string {
  return right === total
    ? `The set is done: all ${total} right.`
    : `The set is done: ${right} of ${total} right. What was not right comes back sooner.`;
}
