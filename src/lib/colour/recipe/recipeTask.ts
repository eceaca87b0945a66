import { ciede2000 } from '../spaces/ciede2000.ts';
import { throughParts, type Setting } from '../healing/healedColour.ts';
import type { Bottle } from '../pigment/bottles.ts';
import { bandsNm } from '../spectrum/bands.ts';
import { mixedLayer } from '../layers/kubelkaMunk.ts';
import type { Lab } from '../spaces/lab.ts';
import { hueDeg, hueStepDeg } from '../spaces/lch.ts';
import { spectrumToLab } from '../spectrum/observe.ts';
import { mixLayer, pigmentIds, type PigmentId, type Shares } from '../pigment/pigments.ts';
import { partedAt, type SkinOptics } from '../layers/skinOptics.ts';
import { leftOf, type Ageing } from '../healing/uncertainHealing.ts';
import { totalDrops, type Recipe } from './recipes.ts';

/** What is searched: recipes from bottles, at one of several doses, for one target at several times. */
export type RecipeTask = Readonly<{
  skin: SkinOptics;
  setting: Setting;
  bottles: readonly Bottle[];
  ageing: Ageing;
  /** Doses to try: pigment in the skin, in the model's unit. */
  doses: readonly number[];
  target: Lab;
  /** Years at which the colour is judged; 0 stands for six weeks. */
  times: readonly number[];
  mostBottles: number;
  mostDrops: number;
  /** White (CI 77891) in the recipe at most, as a share of its pigment. */
  mostWhiteShare: number;
  /**
   * A recipe may be darker than the target by so much in L*, at any of the times; left out, any darkness
   * goes.
   */
  mostDarker?: number;
  /**
   * Its hue may lean from the target's by so many degrees, to either side, at any of the times; left out, any
   * hue goes.
   */
  mostLeanDeg?: number;
}>;

/** True where a recipe keeps the limit on white; a hair's breadth over counts as on it. */
export function keepsWhiteLimit(
  whiteDrops: number,
  drops: number,
  { mostWhiteShare }: Pick<RecipeTask, 'mostWhiteShare'>,
): boolean {
  return whiteDrops <= mostWhiteShare * drops + 1e-9;
}

/** Colours summed in another order differ by far less than this, in L* and in degrees. */
const hair = 1e-6;

/**
 * True where a colour keeps the limits on darkness and on the lean of its hue; a hair's breadth over counts
 * as on it.
 */
export function keepsLook(
  lab: Lab,
  {
    target,
    mostDarker = Infinity,
    mostLeanDeg = 180,
  }: Pick<RecipeTask, 'target' | 'mostDarker' | 'mostLeanDeg'>,
): boolean {
  const turnDeg = hueStepDeg(hueDeg(target.a, target.b), hueDeg(lab.a, lab.b));
  return target.l - lab.l <= mostDarker + hair && Math.abs(turnDeg) <= mostLeanDeg + hair;
}

/** Shares of the pigments in a recipe. */
export function sharesOf(recipe: Recipe, bottles: readonly Bottle[]): Shares {
  const whole = totalDrops(recipe);
  const share = (id: PigmentId) =>
    recipe.reduce((sum, drops, i) => sum + drops * (bottles[i]?.shares[id] ?? 0), 0) / whole;
  const shares = pigmentIds.reduce<Shares>((all, id) => ({ ...all, [id]: share(id) }), {
    '77891': 0,
    '77492': 0,
    '77491': 0,
    '77499': 0,
    '77266': 0,
  });
  const own = bottles.flatMap(({ shares: { own: layer } }, i) =>
    layer && (recipe[i] ?? 0) > 0 ? { layer, share: (recipe[i] ?? 0) / whole } : [],
  );
  if (own.length === 0) return shares;
  const part = (band: number) =>
    mixedLayer(
      own.map(({ layer, share: amount }) => ({ layer: layer[band] ?? { k: 0, s: 0 }, share: amount })),
    );
  return { ...shares, own: bandsNm.map((_, band) => part(band)) };
}

/**
 * The colour of a recipe at each time. What depends on the task alone is worked out once, for many recipes.
 */
export function colourerOf({
  skin,
  setting,
  bottles,
  ageing,
  times,
}: RecipeTask): (recipe: Recipe, dose: number) => readonly Lab[] {
  const parts = partedAt(skin, setting.depthMm, setting.veilShare);
  const left = times.map((years) => leftOf(ageing, years));
  return (recipe, dose) => {
    const shares = sharesOf(recipe, bottles);
    return left.map((factors) =>
      spectrumToLab(throughParts(skin, parts, mixLayer(shares, dose, factors), setting.coverage)),
    );
  };
}

/**
 * How far a recipe stays from the target: the largest ΔE00 of all times, so that six weeks is not bought with
 * two years. This is the definition.
 */
export function scorerOf(task: RecipeTask): (recipe: Recipe, dose: number) => number {
  const colours = colourerOf(task);
  return (recipe, dose) => Math.max(...colours(recipe, dose).map((lab) => ciede2000(lab, task.target)));
}
