import { drawFrom, drawOne, type Draw } from '#lib/quantities/seed.ts';
import { coverClients } from '#words/skills/doNotCover.ts';
import {
  dropsOf,
  limitOf,
  simplestRecipeWords,
  type SimplestRecipeGiven,
  type SimplestRow,
} from '#words/skills/simplestRecipe.ts';
import type { Skill } from '../skill.ts';
import { simplestCases } from './simplestCases.ts';

type Given = SimplestRecipeGiven;
const code = (row: SimplestRow) => `drops-${dropsOf(row)}`;
const nearestOf = (rows: readonly SimplestRow[]) =>
  rows.reduce((one, other) => (other.apart < one.apart ? other : one));
/** The fewest drops within half a unit of the nearest. */
const right = (given: Given): SimplestRow =>
  given.rows.find(({ apart }) => apart <= limitOf(given)) ?? nearestOf(given.rows);
/** The row that is neither the right one, nor the nearest, nor the smallest. */
const other = (given: Given) =>
  given.rows.find((row, i) => i > 0 && row !== right(given) && row !== nearestOf(given.rows));
const isNear = (row: SimplestRow | undefined, given: Given) =>
  row !== undefined && row.apart <= limitOf(given);

function deal(draw: Draw): Given {
  const [first, ...rest] = simplestCases;
  if (!first) throw new Error('No case to deal from.');
  const { wanted, shelf, rows } = drawOne(draw, [first, ...rest]);
  const all: Given = { client: drawOne(draw, coverClients), wanted, shelf, rows };
  const kept = new Set([rows[0], right(all), nearestOf(rows)]);
  const [spare, ...spares] = rows.filter((row) => !kept.has(row));
  if (!spare) throw new Error('A case needs four rows.');
  kept.add(drawOne(draw, [spare, ...spares]));
  return { ...all, rows: rows.filter((row) => kept.has(row)) };
}

/** The simplest of the recipes within half a unit of the nearest: neither the smallest nor the most exact. */
export const simplestRecipe: Skill<Given> = {
  id: 'simplest-recipe',
  version: 1,
  words: simplestRecipeWords,
  given: (seed) => deal(drawFrom(seed)),
  answer: (given) => ({ kind: 'choice', correct: code(right(given)), options: given.rows.map(code) }),
  slips: [
    { id: 'most-exact', credit: 0.4, value: (given) => code(nearestOf(given.rows)) },
    { id: 'fewest-drops', credit: 0.2, value: ({ rows: [first] }) => (first ? code(first) : '') },
    {
      id: 'not-needed',
      credit: 0.4,
      value: (given) => {
        const row = other(given);
        return row && isNear(row, given) ? code(row) : '';
      },
    },
    {
      id: 'still-too-far',
      credit: 0.1,
      value: (given) => {
        const row = other(given);
        return row && !isNear(row, given) ? code(row) : '';
      },
    },
  ],
  steps: (given) => [
    { id: 'nearest', values: { nearest: nearestOf(given.rows).apart } },
    { id: 'limit', values: { limit: limitOf(given) } },
    { id: 'fewest', values: { answer: simplestRecipeWords.option(code(right(given)), given) } },
  ],
  facts: ['recipes-in-drops'],
};
