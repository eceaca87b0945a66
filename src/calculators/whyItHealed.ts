import { healedColour } from '#lib/colour/healing/healedColour.ts';
import type { Lab } from '#lib/colour/spaces/lab.ts';
import { modelValues } from '#lib/colour/numbers/model.ts';
import { spectrumToLab } from '#lib/colour/spectrum/observe.ts';
import type { OwnBottle } from '#lib/colour/own/ownBottle.ts';
import { mixLayer } from '#lib/colour/pigment/pigments.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';
import { fittingSet, type FittingSet } from '#lib/colour/healing/fittingSet.ts';
import { depthsLookedAt, dosesBetween, lossesLookedAt } from '#lib/colour/healing/healingAxes.ts';
import { type HealedWork, type HealingCell, healingMap } from '#lib/colour/healing/healingMap.ts';
import { leftWithLoss } from '#lib/colour/healing/leftWithLoss.ts';
import { mixedOf } from './mixedOf.ts';
import { skinOf } from '#lib/colour/old/skinOf.ts';
import type { Calculator } from './spec.ts';
import { type WhyItHealedState, type WorkAge, whyItHealedFields } from './whyItHealedFields.ts';

/** One date: what was read, what the plan and the nearest cell would show then. */
export type WhyDate = Readonly<{ age: WorkAge; seen: Lab; planned: Lab; nearest: Lab }>;
export type WhyItHealed =
  | Readonly<{
      ok: true;
      doses: readonly number[];
      set: FittingSet;
      nearest: HealingCell;
      /** The plan itself, at every loss looked at. */
      plan: HealingCell;
      /** How far the plan stays with the loss as assumed. */
      planAway: number;
      before: Lab;
      dates: readonly WhyDate[];
      isOutsideMeasured: boolean;
      /** Something in the mix is known by its swatch alone. */
      hasSwatch: boolean;
    }>
  | Readonly<{
      ok: false;
      reason:
        | 'no-drops'
        | 'own-bottle-missing'
        | 'no-dose-range'
        | 'no-skin-like-spectrum'
        | 'old-pigment-not-reached';
    }>;

const yearsOf: Readonly<Record<WorkAge, number>> = {
  'six-weeks': 0,
  'three-months': 0.25,
  'six-months': 0.5,
  'one-year': 1,
  'eighteen-months': 1.5,
  'two-years': 2,
  'three-years': 3,
};

/** The readings of a state: one, or two. */
function readingsOf({
  age,
  healedL,
  healedA,
  healedB,
  second,
  secondL,
  secondA,
  secondB,
}: WhyItHealedState): readonly Readonly<{ age: WorkAge; seen: Lab }>[] {
  const first = { age, seen: { l: healedL, a: healedA, b: healedB } };
  return second === 'none' ? [first] : [first, { age: second, seen: { l: secondL, a: secondA, b: secondB } }];
}

/**
 * Which model depths, doses and losses would heal to what was read: a set, never one cause. `shelf`: the
 * bottles of one's own.
 */
export function whyWith(state: WhyItHealedState, shelf: readonly OwnBottle[]): WhyItHealed {
  const mixed = mixedOf(state, shelf);
  if (!mixed.ok) return mixed;
  if (!(state.doseLo < state.doseHi)) return { ok: false, reason: 'no-dose-range' };
  const skin = skinOf(state);
  if (!skin.ok) return skin;
  const [shares, setting] = [
    mixed.shares,
    { coverage: state.coverage / 100, veilShare: modelValues.veilShare },
  ];
  const readings = readingsOf(state);
  const work: HealedWork = {
    skin,
    shares,
    setting,
    ageing: startAgeing,
    readings: readings.map(({ age, seen }) => ({ years: yearsOf[age], seen })),
    error: state.error,
  };
  const doses = dosesBetween(state.doseLo, state.doseHi);
  const set = fittingSet(healingMap(work, { depthsMm: depthsLookedAt, doses, losses: lossesLookedAt }));
  const planned = (losses: readonly number[]) =>
    healingMap(work, { depthsMm: [state.depth], doses: [state.dose], losses })[0];
  const [plan, asAssumed] = [planned(lossesLookedAt), planned([1])];
  const { nearest } = set;
  if (!nearest || !plan || !asAssumed) return { ok: false, reason: 'no-dose-range' };
  const colour = (age: WorkAge, { depthMm, dose, loss }: Omit<HealingCell, 'fits' | 'difference'>) =>
    healedColour(skin, mixLayer(shares, dose, leftWithLoss(startAgeing, yearsOf[age], loss)), {
      ...setting,
      depthMm,
    });
  return {
    ok: true,
    doses,
    set,
    nearest,
    plan,
    planAway: asAssumed.difference,
    before: spectrumToLab(skin.reflectance),
    dates: readings.map(({ age, seen }) => ({
      age,
      seen,
      planned: colour(age, { ...plan, loss: 1 }),
      nearest: colour(age, nearest),
    })),
    isOutsideMeasured: skin.isOutsideMeasured,
    hasSwatch: shares.own !== undefined,
  };
}

/** Why did it heal this way as a calculator: without bottles of one's own. */
export const whyItHealed: Calculator<WhyItHealedState, WhyItHealed> = {
  ...whyItHealedFields,
  solve: (state) => whyWith(state, []),
};
