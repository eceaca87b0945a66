import { readingValues } from '#lib/colour/numbers/reading.ts';
import { choiceField, numberField } from './fields.ts';
import { ownFields, type OwnDrops, paletteFields, type PaletteMix } from './mixByDropsFields.ts';
import type { Calculator } from './spec.ts';

/** How old the work was at a reading. Six weeks is where the assumed yearly loss begins. */
export const workAges = [
  'six-weeks',
  'three-months',
  'six-months',
  'one-year',
  'eighteen-months',
  'two-years',
  'three-years',
] as const;
export type WorkAge = (typeof workAges)[number];

export type WhyItHealedState = PaletteMix &
  OwnDrops &
  Readonly<{
    age: WorkAge;
    healedL: number;
    healedA: number;
    healedB: number;
    error: number;
    doseLo: number;
    doseHi: number;
    second: WorkAge | 'none';
    secondL: number;
    secondA: number;
    secondB: number;
  }>;

const lightness = (key: string, start: number) =>
  numberField(key, start, { unit: '1', lo: 15, hi: 85, step: 1, decimals: 1 });
const red = (key: string, start: number) =>
  numberField(key, start, { unit: '1', lo: -10, hi: 30, step: 1, decimals: 1 });
const yellow = (key: string, start: number) =>
  numberField(key, start, { unit: '1', lo: -10, hi: 35, step: 1, decimals: 1 });

/**
 * The inputs of "why did it heal this way", without its sum. Skin, mix and plan are named as in Mix by drops,
 * so that an address serves both. Invented numbers.
 */
export const whyItHealedFields: Calculator<WhyItHealedState, undefined> = {
  id: 'why-it-healed-this-way',
  fields: {
    healedL: lightness('healedL', 54),
    healedA: red('healedA', 10.5),
    healedB: yellow('healedB', 14.5),
    error: numberField('error', readingValues.oneReading, {
      unit: '1',
      lo: 0.2,
      hi: 8,
      step: 0.5,
      decimals: 1,
    }),
    age: choiceField<WorkAge>('age', 'one-year', workAges),
    second: choiceField<WorkAge | 'none'>('second', 'none', ['none', ...workAges]),
    secondL: lightness('secondL', 56),
    secondA: red('secondA', 10.5),
    secondB: yellow('secondB', 15),
    doseLo: numberField('doseLo', 0.1, { unit: '1', lo: 0.02, hi: 1, step: 0.05, decimals: 2 }),
    doseHi: numberField('doseHi', 0.8, { unit: '1', lo: 0.05, hi: 2, step: 0.05, decimals: 2 }),
    ...paletteFields,
    ...ownFields,
  },
  solve: () => undefined,
};
