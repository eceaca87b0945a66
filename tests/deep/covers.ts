import { drawnState, excessOf, leftOutGainMm2, plannedState, searched } from '../specs/coverStates.ts';

const count = 2000;
const points = 5000;

/**
 * 2,000 states of “Cover of the old shape”: what leaving one printed move out would gain, by how much limits
 * are exceeded, and how much more stays outside than the best of many random heights and descents.
 */
export function manyCovers() {
  const rows = Array.from({ length: count }, (_, i) => {
    const planned = plannedState(drawnState(i, 'deep'));
    if (!planned) return [];
    return [
      {
        i,
        gainMm2: leftOutGainMm2(planned),
        excess: excessOf(planned),
        overMm2: Math.max(
          ...searched(planned, points, i).map(
            ({ planMm2, bestMm2 }) => planMm2 - bestMm2 - Math.max(0, 0.02 * bestMm2 - 0.3),
          ),
        ),
      },
    ];
  }).flat();
  const worst = (of: (row: (typeof rows)[number]) => number) => {
    const most = rows.reduce((a, b) => (of(b) > of(a) ? b : a));
    return { state: most.i, value: Number(of(most).toFixed(6)) };
  };
  const [gain, excess, over] = [
    worst((row) => row.gainMm2),
    worst((row) => row.excess),
    worst((row) => row.overMm2),
  ];
  if (gain.value > 0.1 || excess.value > 1e-6 || over.value > 0.3)
    throw new Error(`A plan is not the best: ${JSON.stringify({ gain, excess, over })}`);
  return { planned: rows.length, mostGainedByLeavingOutMm2: gain, mostExcess: excess, mostOverBestMm2: over };
}
