import { skinComponents, skinMean } from '../../tables/skinComponents.ts';
import { forBands, type Spectrum } from '../spectrum/bands.ts';
import { thickReflectance } from './kubelkaMunk.ts';
import type { Lab } from '../spaces/lab.ts';
import { newton3 } from '../../algebra/newton3.ts';
import { spectrumToLab } from '../spectrum/observe.ts';
import type { Triple } from '../../algebra/solve3.ts';

/** Scores beyond this were not met among the measured skins; the shipped ones reach 3.50. */
const farthestMeasuredScore = 3.6;

export type SkinSpectrum = Readonly<{
  ok: true;
  reflectance: Spectrum;
  /** How far from the mean of the measured skins, in standard deviations, by component. */
  scores: Triple;
  /** True beyond the measured skins: the spectrum is a continuation of theirs, and less sure. */
  isOutsideMeasured: boolean;
}>;
export type NoSkinSpectrum = Readonly<{ ok: false; reason: 'no-skin-like-spectrum' }>;

/** The reflectance of a skin with these scores. */
export function skinFromScores([first, second, third]: Triple): Spectrum {
  return forBands((band) => {
    const at = (component: number) => skinComponents[component]?.[band] ?? 0;
    return thickReflectance(Math.exp((skinMean[band] ?? 0) + first * at(0) + second * at(1) + third * at(2)));
  });
}

/**
 * The spectrum of a skin from its L*a*b* under D65, outer shine included: mean and three components of
 * ln(K/S) learned on measured skins, so that the three numbers are met exactly. Newton's method, each step at
 * most one standard deviation in any score. Refused where no such mixture has that colour. Tested: spectra of
 * measured skins come back within RMS 0.02.
 */
export function skinSpectrum(lab: Lab): SkinSpectrum | NoSkinSpectrum {
  const missOf = (scores: Triple): Triple => {
    const { l, a, b } = spectrumToLab(skinFromScores(scores));
    return [l - lab.l, a - lab.a, b - lab.b];
  };
  const scores = newton3(missOf, { step: 1e-5, longestMove: 1, nearEnough: 1e-10, farthest: 40 });
  if (!scores) return { ok: false, reason: 'no-skin-like-spectrum' };
  return {
    ok: true,
    reflectance: skinFromScores(scores),
    scores,
    isOutsideMeasured: scores.some((score) => Math.abs(score) > farthestMeasuredScore),
  };
}
