import type { BottleId } from '#lib/colour/pigment/bottleIds.ts';
import { bottleWords } from '../bottleWords.ts';
import { fixed } from '../number.ts';
import type { ProblemWords } from './problemWords.ts';
import { say } from './say.ts';

export type SimplestRow = Readonly<{ recipe: readonly number[]; apart: number }>;
/**
 * Four rows of a search, fewest drops first: drops of each bottle on the shelf, and the difference at the
 * worse date.
 */
export type SimplestRecipeGiven = Readonly<{
  client: string;
  wanted: readonly [number, number, number];
  shelf: readonly BottleId[];
  rows: readonly SimplestRow[];
}>;

export const dropsOf = ({ recipe }: SimplestRow) => recipe.reduce((sum, drops) => sum + drops, 0);
const counted = (drops: number) => (drops === 1 ? '1 drop' : `${drops} drops`);
const mixWords = ({ shelf }: SimplestRecipeGiven, { recipe }: SimplestRow) =>
  recipe
    .flatMap((drops, i) => {
      const id = shelf[i];
      return drops > 0 && id ? `${drops} ${bottleWords[id]}` : [];
    })
    .join('; ');
const nearest = ({ rows }: SimplestRecipeGiven) => Math.min(...rows.map(({ apart }) => apart));
/** As near as nobody could tell: half a unit beyond the nearest, and never less than one. */
export const limitOf = (given: SimplestRecipeGiven) =>
  Math.max(1, Math.round(100 * (nearest(given) + 0.5)) / 100);
const row = (code: string, { rows }: SimplestRecipeGiven) =>
  rows.find((one) => `drops-${dropsOf(one)}` === code);
const stays = (reply: string, { rows }: SimplestRecipeGiven) =>
  fixed(rows.find((one) => `The recipe of ${counted(dropsOf(one))}` === reply)?.apart ?? NaN, 2);
const limitWords = (given: SimplestRecipeGiven) => `${fixed(limitOf(given), 2)} is as near as counts here`;

export const simplestRecipeWords: ProblemWords<SimplestRecipeGiven> = {
  name: 'Simplest recipe',
  summary: 'Choose the simplest of the recipes that are all as near as anyone could tell.',
  question: ({ client }) => `Which recipe do you mix for the ${client}?`,
  givens: (given) => [
    `The brown she wants has L* ${fixed(given.wanted[0])}, a* ${fixed(given.wanted[1])}, b* ${fixed(given.wanted[2])}. Four bottles stand on the shelf.`,
    'The table comes from a search over all recipes of whole drops. Each row is the nearest recipe for its number of drops, and how far it stays from that brown at its worse date, in this model.',
  ],
  table: (given) => ({
    caption: 'The nearest recipe for each number of drops',
    head: ['Drops', 'Recipe', 'Apart'],
    rows: given.rows.map((one) => [String(dropsOf(one)), mixWords(given, one), fixed(one.apart, 2)]),
  }),
  label: 'What you mix',
  option: (code, given) => {
    const found = row(code, given);
    return found ? `The recipe of ${counted(dropsOf(found))}` : code;
  },
  steps: {
    nearest: {
      hint: 'Which row is the nearest of all?',
      done: (v) => `The nearest stays ${say(v, 'nearest', 2)} away.`,
    },
    limit: {
      hint: 'Half a unit more cannot be told apart by eye. Add it; under one, everything counts as near.',
      done: (v) => `As near as that are all rows up to ${say(v, 'limit', 2)}.`,
    },
    fewest: {
      hint: 'Of these rows, take the one with the fewest drops.',
      done: (v) => `The fewest drops among them: ${say(v, 'answer')}.`,
    },
  },
  right: (given, reply) =>
    `${reply}. It stays ${stays(reply, given)} away, and ${limitWords(given)}. Fewer drops are easier to count, to write down and to mix again.`,
  slips: {
    'most-exact': (given, reply) => ({
      title: 'Close: nearest, but not simplest',
      text: `${reply} stays ${stays(reply, given)} away, the least of all. Nobody can see the last half unit, and no healing is that exact. ${limitWords(given)}: a smaller recipe gets there.`,
    }),
    'fewest-drops': (given, reply) => ({
      title: 'Simple, but too far',
      text: `${reply} is the simplest of all. It stays ${stays(reply, given)} away, and ${limitWords(given)}.`,
    }),
    'not-needed': (given, reply) => ({
      title: 'Close: near enough, with drops to spare',
      text: `${reply} stays ${stays(reply, given)} away, and ${limitWords(given)}. But fewer drops come as near.`,
    }),
    'still-too-far': (given, reply) => ({
      title: 'Not near enough',
      text: `${reply} stays ${stays(reply, given)} away. The nearest stays ${fixed(nearest(given), 2)}, so ${limitWords(given)}.`,
    }),
  },
  other: (given, reply) => ({
    title: 'Not that',
    text: `“${reply}”: ${limitWords(given)}. Take the fewest drops within it.`,
  }),
};
