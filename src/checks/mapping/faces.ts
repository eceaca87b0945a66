import { drawIntercanthalMm, drawNorm, practiceNorms } from '#lib/face/practiceNorms.ts';
import { drawFrom, type Draw } from '#lib/quantities/seed.ts';
import type { Check } from '../check.ts';

function meanOf(count: number, make: (draw: Draw) => number): number {
  const draw = drawFrom(2022);
  let sum = 0;
  for (let i = 0; i < count; i++) sum += make(draw);
  return sum / count;
}

/** Practice faces against the measurements they are drawn from. */
export const faceChecks = [
  {
    id: 'inner-corners-mean',
    kind: 'hand',
    source: 'bouhadana-2022',
    where: 'abstract: mean of the six printed means',
    what: 'mean distance of the inner corners over 20,000 practice draws',
    printed: 33.767,
    unit: 'mm',
    tolerance: 0.12,
    because: 'three standard errors, and a little for the limits of a face',
    ours: (factor = 1) => factor * meanOf(20_000, drawIntercanthalMm),
  },
  {
    id: 'pupils-mean',
    kind: 'table',
    source: 'dodgson-2004',
    where: 'abstract: mean adult distance',
    what: 'mean distance of the pupils over 20,000 practice draws',
    printed: 63,
    unit: 'mm',
    tolerance: 0.2,
    because: 'the source says "around 63"; far less than 1 %',
    ours: (factor = 1) => factor * meanOf(20_000, (draw) => drawNorm(draw, practiceNorms.pupilDistanceMm)),
  },
] as const satisfies readonly Check[];
