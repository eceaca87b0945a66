import { ciede2000 } from '../spaces/ciede2000.ts';
import { throughParts, type Setting } from './healedColour.ts';
import type { Lab } from '../spaces/lab.ts';
import { spectrumToLab } from '../spectrum/observe.ts';
import { mixLayer, type Shares } from '../pigment/pigments.ts';
import { partedAt, type SkinOptics } from '../layers/skinOptics.ts';
import type { Ageing, AtYears } from './uncertainHealing.ts';
import { leftWithLoss } from './leftWithLoss.ts';

/** One look at the healed work: how old it was, and its colour under daylight (D65). */
export type HealedReading = Readonly<{ years: AtYears; seen: Lab }>;

/**
 * Everything that is known: the skin before the work, the mix, how much of the skin it covers, and what was
 * read later.
 */
export type HealedWork = Readonly<{
  skin: SkinOptics;
  shares: Shares;
  setting: Omit<Setting, 'depthMm'>;
  ageing: Ageing;
  readings: readonly HealedReading[];
  /** How far a reading may lie from the true colour, ΔE00. */
  error: number;
}>;

/** What is looked through: model depths, doses, and losses as times the assumed one. */
export type HealingAxes = Readonly<{
  depthsMm: readonly number[];
  doses: readonly number[];
  losses: readonly number[];
}>;

/** One depth with one dose. */
export type HealingCell = Readonly<{
  depthMm: number;
  dose: number;
  /** The losses at which the model comes within the reading error of every reading. */
  fits: readonly number[];
  /** The loss that comes nearest, and how far it stays: the largest ΔE00 of all readings. */
  loss: number;
  difference: number;
}>;

/**
 * How near the model comes to what was read, for every depth and dose, depth by depth. It says what would
 * fit, never what happened: the same colour heals from many of them.
 */
export function healingMap(
  work: HealedWork,
  { depthsMm, doses, losses }: HealingAxes,
): readonly HealingCell[] {
  const { skin, shares, setting, ageing, readings, error } = work;
  const layers = doses.map((dose) =>
    losses.map((loss) => ({
      loss,
      dates: readings.map(({ years, seen }) => ({
        seen,
        layer: mixLayer(shares, dose, leftWithLoss(ageing, years, loss)),
      })),
    })),
  );
  return depthsMm.flatMap((depthMm) => {
    const parts = partedAt(skin, depthMm, setting.veilShare);
    return doses.map((dose, i): HealingCell => {
      const tried = (layers[i] ?? []).map(({ loss, dates }) => ({
        loss,
        difference: Math.max(
          ...dates.map(({ seen, layer }) =>
            ciede2000(spectrumToLab(throughParts(skin, parts, layer, setting.coverage)), seen),
          ),
        ),
      }));
      const nearest = tried.reduce((best, one) => (one.difference < best.difference ? one : best), {
        loss: 1,
        difference: Infinity,
      });
      return {
        depthMm,
        dose,
        fits: tried.filter(({ difference }) => difference <= error).map(({ loss }) => loss),
        ...nearest,
      };
    });
  });
}
