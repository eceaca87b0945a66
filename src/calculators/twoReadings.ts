import { budgetMm } from '#lib/mapping/uncertainty/budget.ts';
import type { Pose, Posture, SkinState, Taken } from '#lib/mapping/marks/markSet.ts';
import { compareHeights, type HeightsCompared } from '#lib/mapping/compare/compareHeights.ts';
import {
  type LatelyChange,
  latelyChanges,
  type WhichToMap,
  whichToMap,
} from '#lib/mapping/compare/whichToMap.ts';
import {
  caliperHalfWidthMm,
  exampleErrorMm,
  pencilHalfWidthMm,
  threadHalfWidthMm,
} from '#lib/mapping/numbers/start.ts';
import { choiceField, numberField } from './fields.ts';
import type { Calculator } from './spec.ts';

export type TwoReadingsState = Readonly<{
  pose1: Pose;
  posture1: Posture;
  skin1: SkinState;
  right1: number;
  left1: number;
  pose2: Pose;
  posture2: Posture;
  skin2: SkinState;
  right2: number;
  left2: number;
  lately: LatelyChange;
  error: number;
  readings: number;
}>;
export type TwoReadings = HeightsCompared & Readonly<{ which: WhichToMap; taken: readonly [Taken, Taken] }>;

const budget = budgetMm(
  [pencilHalfWidthMm, caliperHalfWidthMm, threadHalfWidthMm].map((halfWidthMm) => ({ halfWidthMm })),
);
const height = (key: string, start: number) =>
  numberField(key, start, { unit: 'mm', lo: 5, hi: 40, step: 0.1, decimals: 1 });
const pose = (key: string, start: Pose) =>
  choiceField<Pose>(key, start, ['rest', 'eyes-closed', 'raised', 'frown']);
const posture = (key: string) => choiceField<Posture>(key, 'sitting', ['sitting', 'lying']);
const skin = (key: string) => choiceField<SkinState>(key, 'normal', ['normal', 'numb', 'swollen']);

/**
 * Two readings of one pair of arches: which may be mapped, what each shows, and whether they may be compared.
 * Starts with the baker: talking, then at rest.
 */
export const twoReadings: Calculator<TwoReadingsState, TwoReadings> = {
  id: 'two-readings',
  fields: {
    pose1: pose('pose1', 'raised'),
    posture1: posture('posture1'),
    skin1: skin('skin1'),
    right1: height('right1', 19.6),
    left1: height('left1', 21.2),
    pose2: pose('pose2', 'rest'),
    posture2: posture('posture2'),
    skin2: skin('skin2'),
    right2: height('right2', 18.2),
    left2: height('left2', 18.6),
    lately: choiceField<LatelyChange>('lately', 'nothing', latelyChanges),
    error: numberField('error', exampleErrorMm, { unit: 'mm', lo: 0.05, hi: 3, step: 0.05, decimals: 2 }),
    readings: numberField('readings', 3, { unit: '1', lo: 1, hi: 9, step: 1, decimals: 0 }),
  },
  solve: (state) => {
    const first: Taken = { pose: state.pose1, posture: state.posture1, skin: state.skin1 };
    const second: Taken = { pose: state.pose2, posture: state.posture2, skin: state.skin2 };
    const compared = compareHeights(
      { taken: first, archMm: { right: state.right1, left: state.left1 } },
      { taken: second, archMm: { right: state.right2, left: state.left2 } },
      { temMm: state.error, readings: Math.round(state.readings), budgetMm: budget },
    );
    return { ...compared, which: whichToMap(first, second, state.lately), taken: [first, second] };
  },
};
