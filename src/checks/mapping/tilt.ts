import { fakedHeightMm } from '#lib/mapping/level/fakedHeight.ts';
import { tiltBehind } from '#lib/mapping/level/tiltBehind.ts';
import type { Check } from '../check.ts';

const behind = (heightMm: number, spanMm: number) => {
  const tilt = tiltBehind(heightMm, spanMm);
  return tilt.ok ? tilt.tiltDeg : 0;
};
const fiveDecimals = 'printed to five decimals: half a unit of the last';

/** What a tilt makes over a distance, and the tilt behind it. */
export const tiltChecks = [
  {
    id: 'tilt-of-1',
    kind: 'table',
    source: 'sine-table',
    where: 'sines: row 1',
    what: 'height faked over 1 mm by a tilt of 1°',
    printed: 0.01745,
    unit: 'mm',
    tolerance: 5e-6,
    because: fiveDecimals,
    ours: (factor = 1) => fakedHeightMm(1, factor),
  },
  {
    id: 'tilt-of-5',
    kind: 'table',
    source: 'sine-table',
    where: 'sines: row 5',
    what: 'height faked over 1 mm by a tilt of 5°',
    printed: 0.08716,
    unit: 'mm',
    tolerance: 5e-6,
    because: fiveDecimals,
    ours: (factor = 1) => fakedHeightMm(1, factor * 5),
  },
  {
    id: 'tilt-of-3',
    kind: 'table',
    source: 'oeis-a019812',
    where: 'first digits',
    what: 'height faked over 1 mm by a tilt of 3°',
    printed: 0.0523359562,
    unit: 'mm',
    tolerance: 5e-11,
    because: 'ten of the printed digits: half a unit of the last',
    ours: (factor = 1) => fakedHeightMm(factor, 3),
  },
  {
    id: 'tilt-behind',
    kind: 'table',
    source: 'sine-table',
    where: 'sines: row 10',
    what: 'the tilt behind 17.365 mm over 100 mm',
    printed: 10,
    unit: '°',
    tolerance: 0.0005,
    because: 'the sine is printed to five decimals',
    ours: (factor = 1) => behind(17.365, 100 * factor),
  },
] as const satisfies readonly Check[];
