import { drawFrom, drawNormal, type Draw } from '../../quantities/seed.ts';
import { ciede2000 } from '../spaces/ciede2000.ts';
import { throughParts, type Setting } from './healedColour.ts';
import type { Lab } from '../spaces/lab.ts';
import { hueDeg, hueStepDeg } from '../spaces/lch.ts';
import type { Lamp } from '../spectrum/lamps.ts';
import { spectrumToLab } from '../spectrum/observe.ts';
import { mixLayer, pigmentIds, type Factors, type PigmentId, type Shares } from '../pigment/pigments.ts';
import { partedAt, type SkinOptics } from '../layers/skinOptics.ts';

/**
 * What is left of each pigment after six weeks, and what it loses each year after: assumed, shown, and
 * changeable.
 */
export type Ageing = Readonly<Record<PigmentId, Kept>> &
  Readonly<{
    /** What is known by its swatch alone; nothing of it is lost where this is not said. */
    own?: Kept;
  }>;
export type Kept = Readonly<{ keptAtSixWeeks: number; lostPerYear: number }>;

/**
 * Spreads of what nobody knows for one healing, as shares (log-normal), and the range of the veil (even).
 * Assumed.
 */
export type Doubts = Readonly<{
  strength: number;
  dose: number;
  depth: number;
  kept: number;
  lost: number;
  veilLo: number;
  veilHi: number;
}>;

export type Plan = Readonly<{
  shares: Shares;
  dose: number;
  setting: Setting;
  ageing: Ageing;
  doubts: Doubts;
}>;

/** Years after the treatment; 0 stands for six weeks. */
export type AtYears = number;

const neverLost: Kept = { keptAtSixWeeks: 1, lostPerYear: 0 };

/** What is left of each pigment, as a factor. */
export function leftOf(ageing: Ageing, years: AtYears): Factors {
  const left = (id: PigmentId | 'own') => {
    const { keptAtSixWeeks, lostPerYear } = ageing[id] ?? neverLost;
    return keptAtSixWeeks * (1 - lostPerYear) ** years;
  };
  return {
    '77891': left('77891'),
    '77492': left('77492'),
    '77491': left('77491'),
    '77499': left('77499'),
    '77266': left('77266'),
    ownLeft: left('own'),
  };
}

/** The colour predicted when every number is as assumed. */
export function plainPrediction(
  skin: SkinOptics,
  { shares, dose, setting, ageing }: Plan,
  years: AtYears,
  lamp: Lamp = 'D65',
): Lab {
  return spectrumToLab(
    throughParts(
      skin,
      partedAt(skin, setting.depthMm, setting.veilShare),
      mixLayer(shares, dose, leftOf(ageing, years)),
      setting.coverage,
    ),
    lamp,
  );
}

/** Log-normal with median 1 and this spread. */
const about1 = (draw: Draw, spread: number) => Math.exp(spread * drawNormal(draw));

/**
 * Seeded healings of one plan: in each, strength, dose, depth, veil, what is kept and what is lost are drawn
 * anew. One draw ages: its colours at several times belong to one healing.
 */
export function simulatedHealings(
  skin: SkinOptics,
  plan: Plan,
  times: readonly AtYears[],
  draws: number,
  seed: number,
  lamp: Lamp = 'D65',
): readonly (readonly Lab[])[] {
  const draw = drawFrom(seed);
  const { doubts, setting, shares, dose, ageing } = plan;
  // A mix without a bottle of one's own draws nothing for it: its healings stay as they were.
  const drawn: readonly (PigmentId | 'own')[] = shares.own ? [...pigmentIds, 'own'] : pigmentIds;
  return Array.from({ length: draws }, () => {
    const strength = new Map(drawn.map((id) => [id, about1(draw, doubts.strength)]));
    const aged = new Map(
      drawn.map((id) => [id, { kept: about1(draw, doubts.kept), lost: about1(draw, doubts.lost) }]),
    );
    const thisDose = dose * about1(draw, doubts.dose);
    const depthMm = setting.depthMm * about1(draw, doubts.depth);
    const veilShare = doubts.veilLo + (doubts.veilHi - doubts.veilLo) * draw();
    const parts = partedAt(skin, depthMm, veilShare);
    return times.map((years) => {
      const left = (id: PigmentId | 'own') => {
        const { kept = 1, lost = 1 } = aged.get(id) ?? {};
        const { keptAtSixWeeks, lostPerYear } = ageing[id] ?? neverLost;
        return (
          (strength.get(id) ?? 1) *
          Math.min(1, keptAtSixWeeks * kept) *
          (1 - Math.min(1, lostPerYear * lost)) ** years
        );
      };
      const factors: Factors = {
        '77891': left('77891'),
        '77492': left('77492'),
        '77491': left('77491'),
        '77499': left('77499'),
        '77266': left('77266'),
        ownLeft: left('own'),
      };
      return spectrumToLab(
        throughParts(skin, parts, mixLayer(shares, thisDose, factors), setting.coverage),
        lamp,
      );
    });
  });
}

/** What many healings say about one target: how many come within a difference, and how they lean. */
export type Outcomes = Readonly<{
  /** Share within ΔE00 `near` of the target. */
  near: number;
  /** Share darker than the target by more than 2 in L*. */
  darker: number;
  /** Shares whose hue lies more than 15° to the red or to the yellow-green side of the target. */
  leanRed: number;
  leanGreen: number;
}>;

/** Counts the healings around a target. `near` is a ΔE00. */
export function outcomesAround(healings: readonly Lab[], target: Lab, near: number): Outcomes {
  const share = (test: (lab: Lab) => boolean) => healings.filter(test).length / Math.max(1, healings.length);
  const turnDeg = ({ a, b }: Lab) => hueStepDeg(hueDeg(target.a, target.b), hueDeg(a, b));
  return {
    near: share((lab) => ciede2000(lab, target) <= near),
    darker: share(({ l }) => l < target.l - 2),
    leanRed: share((lab) => turnDeg(lab) < -15),
    leanGreen: share((lab) => turnDeg(lab) > 15),
  };
}

/** The lower and upper twentieth of a number over healings: "9 in 10 land between". */
export function ninetyOf(values: readonly number[]): readonly [number, number] {
  const sorted = values.toSorted((a, b) => a - b);
  const at = (share: number) => {
    const place = share * (sorted.length - 1);
    const low = sorted[Math.floor(place)] ?? 0;
    return low + ((sorted[Math.ceil(place)] ?? low) - low) * (place - Math.floor(place));
  };
  return [at(0.05), at(0.95)];
}
