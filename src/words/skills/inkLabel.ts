import type { InkLabel, LabelFault } from '#lib/colour/label/labelFault.ts';
import type { ProblemWords } from './problemWords.ts';
import { say } from './say.ts';

const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;
export const labelBadges = [
  '“Compliant”',
  '“Vegan”',
  '“Premium, salon quality”',
  '“Dermatologically tested”',
] as const;

/**
 * One invented label: what it says, what else is printed on it, and the day. At most one of the four things
 * is missing.
 */
export type InkLabelGiven = Readonly<{
  label: InkLabel;
  today: Readonly<{ year: number; month: number; day: number }>;
  /** The lot where there is one; else a number that is none. */
  number: string;
  pigments: readonly [string, string, string];
  badge: (typeof labelBadges)[number];
  fault: LabelFault | 'none';
}>;

export const labelAnswers = ['none', 'no-use', 'no-lot', 'no-list', 'past'] as const;
const answerWords: Readonly<Record<(typeof labelAnswers)[number], string>> = {
  none: 'None of the four is missing',
  'no-use': 'Put it away: it does not say what it is for',
  'no-lot': 'Put it away: there is no lot',
  'no-list': 'Put it away: there is no list of ingredients',
  past: 'Put it away: its last day has passed',
};
const isAnswer = (code: string): code is (typeof labelAnswers)[number] => Object.hasOwn(answerWords, code);

const monthOf = (month: number) => months[month - 1] ?? '';
export const dayWords = ({ year, month, day }: InkLabelGiven['today']) => `${day} ${monthOf(month)} ${year}`;
export const lastWords = ({ label: { last } }: InkLabelGiven) => `end of ${monthOf(last.month)} ${last.year}`;

/** What is printed on the label, line by line. */
export function labelLines(given: InkLabelGiven): readonly Readonly<{ name: string; text: string }>[] {
  const { label, number, pigments, badge } = given;
  return [
    { name: 'Front', text: `Brow brown, 15 ml, ${badge}` },
    {
      name: 'Use',
      text: label.saysUse
        ? 'Mixture for use in tattoos or permanent make-up'
        : 'Colour concentrate for professionals',
    },
    { name: 'Number', text: label.hasLot ? `Lot ${number}` : `Item no. ${number}` },
    {
      name: 'Inside',
      text: label.listsIngredients
        ? `Ingredients: water, glycerol, ${pigments.map((pigment) => `CI ${pigment}`).join(', ')}`
        : `Rich in mineral pigments, with CI ${pigments[0]}`,
    },
    { name: 'Lasts', text: `To be used before the ${lastWords(given)}` },
  ];
}

const whyWords: Readonly<Record<LabelFault, (given: InkLabelGiven) => string>> = {
  'no-use': () =>
    '“Colour concentrate for professionals” does not say that it is meant for skin. A label must say that the mixture is for tattoos or permanent make-up.',
  'no-lot': ({ number }) =>
    `“Item no. ${number}” is the number of the product: every filling has the same. A lot names one filling.`,
  'no-list': ({ pigments: [first] }) =>
    `One pigment is named, CI ${first}. A list gives all that was put in. “Rich in” is advertising.`,
  past: (given) => `It lasts to the ${lastWords(given)}, and today is ${dayWords(given.today)}.`,
};

/** Why the right answer is right. */
export function labelBecause(given: InkLabelGiven): string {
  if (given.fault !== 'none') return whyWords[given.fault](given);
  return `Use, lot, ingredients and last day are there, and it lasts through ${monthOf(given.label.last.month)} ${given.label.last.year}. That is all this check can say: the local code may ask for more.`;
}

const thereWords: Readonly<Record<LabelFault, string>> = {
  'no-use': 'The use is printed: “Mixture for use in tattoos or permanent make-up”.',
  'no-lot': 'The lot is printed.',
  'no-list': 'The ingredients are listed.',
  past: 'Its last month is not over.',
};
/** What is said where a thing is called missing that is there. */
const called = (fault: LabelFault) => (given: InkLabelGiven, reply: string) => ({
  title: 'Look again: that one is there',
  text: `You chose “${reply}”. ${thereWords[fault]} ${labelBecause(given)}`,
});

export const inkLabelWords: ProblemWords<InkLabelGiven> = {
  name: 'Read an ink label',
  summary: 'One bottle, one day: find what keeps it shut, or that none of four things is missing.',
  question: () => 'May this bottle be opened? Look for the use, the lot, the ingredients and the last day.',
  givens: (given) => [
    `Today is ${dayWords(given.today)}. The label is invented, and at most one of the four is wrong. This is what it says:`,
    ...labelLines(given).map(({ name, text }) => `${name}: ${text}.`),
  ],
  label: 'Your answer',
  option: (code) => (isAnswer(code) ? answerWords[code] : code),
  steps: {
    use: {
      hint: 'Does it say that it is for tattoos or permanent make-up?',
      done: (v) => `Use: ${say(v, 'use')}.`,
    },
    lot: {
      hint: 'Is the number a lot, or the number of the product?',
      done: (v) => `Lot: ${say(v, 'lot')}.`,
    },
    list: {
      hint: 'Are all ingredients listed, or is one only praised?',
      done: (v) => `Ingredients: ${say(v, 'list')}.`,
    },
    last: {
      hint: 'Is the last month over?',
      done: (v) => `It lasts to the ${say(v, 'last')}; today is ${say(v, 'today')}.`,
    },
    decide: {
      hint: 'One missing is enough to put it away. A badge counts for nothing.',
      done: (v) => `${say(v, 'answer')}. ${say(v, 'because')}`,
    },
  },
  right: (given, reply) => `${reply}. ${labelBecause(given)}`,
  slips: {
    'trusted-the-badge': (given, reply) => ({
      title: 'Something is missing',
      text: `You chose “${reply}”. ${labelBecause(given)} The badge ${given.badge} is not one of the four.`,
    }),
    'use-is-there': called('no-use'),
    'lot-is-there': called('no-lot'),
    'list-is-there': called('no-list'),
    'not-past': (given, reply) => ({
      title: 'Close: it lasts to the end of that month',
      text: `You chose “${reply}”. Today is ${dayWords(given.today)} and it lasts to the ${lastWords(given)}. ${given.fault === 'none' ? '' : labelBecause(given)}`.trim(),
    }),
  },
  other: (given, reply) => ({ title: 'Not that one', text: `You chose “${reply}”. ${labelBecause(given)}` }),
};
