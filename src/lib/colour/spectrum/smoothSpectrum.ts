import { foldedWeights } from '../../tables/foldedWeights.ts';
import { bandCount, forBands, type Spectrum } from './bands.ts';
import { labToXyz, type Lab } from '../spaces/lab.ts';
import { spectrumToLab, spectrumToXyz, whiteOf } from './observe.ts';
import { solveLinear } from '../../algebra/solveLinear.ts';
import type { Triple } from '../../algebra/solve3.ts';

export type SmoothSpectrum =
  | Readonly<{ ok: true; reflectance: Spectrum }>
  | Readonly<{ ok: false; reason: 'no-smooth-spectrum' }>;

const weights = [foldedWeights.D65.x, foldedWeights.D65.y, foldedWeights.D65.z] as const;
const rounds = 60;
/**
 * The farthest a curve may move in one round, in units of the argument of tanh: keeps Newton's method on its
 * way.
 */
const longestStep = 1;
const labEnough = 1e-10;
const flatEnough = 1e-8;

/**
 * The smoothest reflectance, strictly between 0 and 1, that has a colour under D65. With R = (tanh z + 1)/2
 * the sum of the squared steps of z from band to band is least while X, Y and Z are met: S. A. Burns,
 * "Generating reflectance curves from sRGB triplets" (2015, the tanh form 2019). Newton's method on
 * Lagrange's conditions: 36 bands and 3 multipliers.
 * Refused where no such reflectance was found. Smooth is a guess about a pigment: `swatchTrust` says where it
 * is a good one.
 */
export function smoothSpectrum(lab: Lab): SmoothSpectrum {
  const target = labToXyz(lab, whiteOf('D65'));
  // Without light, or with all of it, no curve begins: what follows is not a number and is refused.
  let curve: Spectrum = forBands(() => Math.atanh((2 * target.y) / 100 - 1));
  let pulls: Triple = [0, 0, 0];
  for (let round = 0; round < rounds; round++) {
    const reflectance = curve.map((value) => (Math.tanh(value) + 1) / 2);
    const rise = curve.map((value) => (1 - Math.tanh(value) ** 2) / 2);
    const pull = forBands((band) =>
      weights.reduce((sum, row, i) => sum + (row[band] ?? 0) * (pulls[i] ?? 0), 0),
    );
    const uneven = forBands((band) => unevenness(curve, band) + (rise[band] ?? 0) * (pull[band] ?? 0));
    const seen = spectrumToLab(reflectance);
    if (
      Math.hypot(seen.l - lab.l, seen.a - lab.a, seen.b - lab.b) < labEnough &&
      uneven.every((value) => Math.abs(value) < flatEnough)
    )
      return { ok: true, reflectance };
    const { x, y, z } = spectrumToXyz(reflectance);
    const move = solveLinear(conditions(curve, rise, pull), [
      ...uneven,
      x - target.x,
      y - target.y,
      z - target.z,
    ]);
    if (!move) return refused;
    const shrink = Math.max(1, ...move.slice(0, bandCount).map((value) => Math.abs(value) / longestStep));
    const next = (value: number, i: number) => value - (move[i] ?? 0) / shrink;
    curve = curve.map(next);
    pulls = [next(pulls[0], bandCount), next(pulls[1], bandCount + 1), next(pulls[2], bandCount + 2)];
  }
  return refused;
}

const refused: SmoothSpectrum = { ok: false, reason: 'no-smooth-spectrum' };

/** Half the slope, at one band, of the sum of squared steps. */
function unevenness(curve: Spectrum, band: number): number {
  const here = curve[band] ?? 0;
  return 2 * here - (curve[band - 1] ?? here) - (curve[band + 1] ?? here);
}

/** The matrix of one round: how Lagrange's conditions answer to each band and each multiplier. */
function conditions(curve: Spectrum, rise: Spectrum, pull: Spectrum): readonly (readonly number[])[] {
  const bands = curve.map((value, band) => {
    const row = new Array<number>(bandCount).fill(0);
    const neighbours = [band - 1, band + 1].filter((other) => other >= 0 && other < bandCount);
    for (const other of neighbours) row[other] = -1;
    row[band] = neighbours.length - 2 * Math.tanh(value) * (rise[band] ?? 0) * (pull[band] ?? 0);
    return [...row, ...weights.map((each) => (rise[band] ?? 0) * (each[band] ?? 0))];
  });
  return [
    ...bands,
    ...weights.map((each) => [...each.map((weight, band) => weight * (rise[band] ?? 0)), 0, 0, 0]),
  ];
}
