import { browAfterFirstPass, type BrowAgain } from '#lib/mapping/again/afterFirstPass.ts';
import { chaseFromMm } from '#lib/mapping/numbers/again.ts';
import type { Brow } from '#lib/mapping/marks/brow.ts';
import { budgetMm } from '#lib/mapping/uncertainty/budget.ts';
import type { Pose, Posture, Side, SkinState } from '#lib/mapping/marks/markSet.ts';
import {
  caliperHalfWidthMm,
  exampleErrorMm,
  pencilHalfWidthMm,
  threadHalfWidthMm,
} from '#lib/mapping/numbers/start.ts';
import { choiceField, numberField } from './fields.ts';
import type { Calculator } from './spec.ts';

/**
 * The five marks of one brow, as approved and as the pigment's edge is read now: heights, for the tail the
 * distance from the midline.
 */
export const againMarks = ['frontTop', 'archTop', 'frontLower', 'archLower', 'tail'] as const;
export type AgainMark = (typeof againMarks)[number];
type Numbers = Readonly<Record<AgainMark | `${AgainMark}Now`, number>>;

export type AfterTheFirstPassState = Numbers &
  Readonly<{ side: Side; skin: SkinState; pose: Pose; posture: Posture; error: number; readings: number }>;
export type AfterTheFirstPassResult = Readonly<{ approved: Brow; pigment: Brow; again: BrowAgain }>;

/** Where the marks stand across the face, mm from the midline; the calculator compares heights only. */
const acrossMm = { frontTop: 14, frontLower: 15, archTop: 47, archLower: 46 } as const;
const tailHeightMm = 20;

function browOf(heights: Readonly<Record<AgainMark, number>>): Brow {
  return {
    frontTop: { uMm: acrossMm.frontTop, vMm: heights.frontTop },
    frontLower: { uMm: acrossMm.frontLower, vMm: heights.frontLower },
    archTop: { uMm: acrossMm.archTop, vMm: heights.archTop },
    archLower: { uMm: acrossMm.archLower, vMm: heights.archLower },
    tail: { uMm: heights.tail, vMm: tailHeightMm },
  };
}

const height = (key: string, startMm: number) =>
  numberField(key, startMm, { unit: 'mm', lo: 5, hi: 45, step: 0.1, decimals: 1 });
const along = (key: string, startMm: number) =>
  numberField(key, startMm, { unit: 'mm', lo: 50, hi: 80, step: 0.1, decimals: 1 });

/**
 * The approved outline against where the pigment sits after the first pass: at each mark add here, or stop.
 */
export const afterTheFirstPass: Calculator<AfterTheFirstPassState, AfterTheFirstPassResult> = {
  id: 'after-the-first-pass',
  fields: {
    side: choiceField<Side>('side', 'right', ['right', 'left']),
    frontTop: height('frontTop', 25),
    frontTopNow: height('frontTopNow', 24.4),
    archTop: height('archTop', 33),
    archTopNow: height('archTopNow', 31.5),
    frontLower: height('frontLower', 17),
    frontLowerNow: height('frontLowerNow', 17.2),
    archLower: height('archLower', 27),
    archLowerNow: { ...height('archLowerNow', 27), startBefore: 25.8 },
    tail: along('tail', 64),
    tailNow: along('tailNow', 63.1),
    skin: choiceField<SkinState>('skin', 'swollen', ['normal', 'numb', 'swollen']),
    pose: choiceField<Pose>('pose', 'rest', ['rest', 'eyes-closed', 'raised', 'frown']),
    posture: choiceField<Posture>('posture', 'sitting', ['sitting', 'lying']),
    error: numberField('error', exampleErrorMm, { unit: 'mm', lo: 0.05, hi: 3, step: 0.05, decimals: 2 }),
    readings: numberField('readings', 5, { unit: '1', lo: 1, hi: 9, step: 1, decimals: 0 }),
  },
  solve: ({ skin, pose, posture, error, readings, ...numbers }) => {
    const approved = browOf(numbers);
    const pigment = browOf({
      frontTop: numbers.frontTopNow,
      archTop: numbers.archTopNow,
      frontLower: numbers.frontLowerNow,
      archLower: numbers.archLowerNow,
      tail: numbers.tailNow,
    });
    const tools = budgetMm(
      [pencilHalfWidthMm, caliperHalfWidthMm, threadHalfWidthMm].map((halfWidthMm) => ({ halfWidthMm })),
    );
    return {
      approved,
      pigment,
      again: browAfterFirstPass(
        approved,
        pigment,
        { approved: { pose: 'rest', posture: 'sitting', skin: 'normal' }, now: { pose, posture, skin } },
        {
          reading: { temMm: error, readings: Math.round(readings), budgetMm: tools },
          comparisons: againMarks.length,
          chaseFromMm,
        },
      ),
    };
  },
};
