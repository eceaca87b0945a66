import { ciede2000 } from '../spaces/ciede2000.ts';
import { healedColour, type Setting } from './healedColour.ts';
import type { Lamp } from '../spectrum/lamps.ts';
import { modelValues } from '../numbers/model.ts';
import { type Factors, mixLayer, pigmentIds, type PigmentId, type Shares } from '../pigment/pigments.ts';
import type { SkinOptics } from '../layers/skinOptics.ts';
import type { LayerSpectrum } from '../layers/veil.ts';

/**
 * What could be otherwise: how much pigment, how much skin covered, how deep, the veil, its own backscatter,
 * one pigment stronger.
 */
export type Cause = 'dose' | 'coverage' | 'depth' | 'veil' | 'backscatter' | PigmentId;

/** How far apart two healed colours lie, ΔE00, when this one thing is changed and all else stays. */
export type Matter = Readonly<{ cause: Cause; change: number }>;

export type Mix = Readonly<{
  shares: Shares;
  dose: number;
  setting: Setting;
  /** What is left of each pigment at the time of interest. */
  left: Factors;
}>;
type Healing = Readonly<{ layer: LayerSpectrum; setting: Setting }>;

/** How far each is changed: a quarter either way, doubled, halved and doubled, a fifth more. */
const matterSteps = { either: 0.25, depthTimes: 2, backscatterTimes: 2, stronger: 1.2 } as const;

/**
 * What moves the healed colour of one mix in one skin, largest first: dose and coverage from a quarter less
 * to a quarter more (coverage at most whole), depth from as it is to doubled, the veil over its assumed
 * range, the pigment's own backscatter from half to double at the same absorption, each pigment in the mix
 * from as it is to a fifth stronger. Each change is the CIEDE2000 between two calls of `healedColour`. Causes
 * of one size keep this order.
 */
export function whatMatters(
  skin: SkinOptics,
  { shares, dose, setting, left }: Mix,
  lamp: Lamp = 'D65',
): readonly Matter[] {
  const layerOf = (doseTimes: number, factors: Factors = left) => mixLayer(shares, dose * doseTimes, factors);
  const plain: Healing = { layer: layerOf(1), setting };
  const set = (changed: Partial<Setting>): Healing => ({ ...plain, setting: { ...setting, ...changed } });
  const scattering = (times: number): Healing => ({
    ...plain,
    layer: plain.layer.map(({ k, s }) => ({ k, s: s * times })),
  });
  const covering = (times: number) => set({ coverage: Math.min(1, setting.coverage * times) });
  const { either, depthTimes, backscatterTimes, stronger } = matterSteps;
  const pairs: readonly (readonly [Cause, Healing, Healing])[] = [
    ['dose', { ...plain, layer: layerOf(1 - either) }, { ...plain, layer: layerOf(1 + either) }],
    ['coverage', covering(1 - either), covering(1 + either)],
    ['depth', plain, set({ depthMm: setting.depthMm * depthTimes })],
    ['veil', set({ veilShare: modelValues.veilShareLo }), set({ veilShare: modelValues.veilShareHi })],
    ['backscatter', scattering(1 / backscatterTimes), scattering(backscatterTimes)],
    ...pigmentIds
      .filter((id) => shares[id] > 0)
      .map(
        (id) => [id, plain, { ...plain, layer: layerOf(1, { ...left, [id]: left[id] * stronger }) }] as const,
      ),
  ];
  const colour = (healing: Healing) => healedColour(skin, healing.layer, healing.setting, lamp);
  return pairs
    .map(([cause, one, other]) => ({ cause, change: ciede2000(colour(one), colour(other)) }))
    .toSorted((one, other) => other.change - one.change);
}
