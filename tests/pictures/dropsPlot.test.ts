import { h } from 'preact';
import { renderToStaticMarkup } from 'preact-render-to-string';
import { expect, it } from 'vitest';
import { DropsPlot } from '#components/pictures/DropsPlot.tsx';

const drawn = (differences: readonly number[], goodBelow = 1) =>
  renderToStaticMarkup(
    h(DropsPlot, {
      nearest: differences.map((difference, i) => ({ drops: i + 1, difference })),
      ringedDrops: 2,
      goodBelow,
      reachedBelow: 3,
      isLate: false,
    }),
  );
const dots = (svg: string) =>
  [...svg.matchAll(/class="plot-dot" cx="([\d.]+)" cy="([\d.]+)"/g)].map(([, x, y]) => [
    Number(x),
    Number(y),
  ]);

it('[hand] dots stand at even steps of drops, and half as far up for half the difference', () => {
  // From the foot at 76 to the top at 12, the scale reaching to 4: a unit is 16; four drops over 146, the
  // first in the middle of its quarter.
  expect(dots(drawn([4, 2, 1, 0]))).toEqual([
    [30.25, 12],
    [66.75, 44],
    [103.25, 60],
    [139.75, 76],
  ]);
});

it('[property] nothing leaves the frame, however far every recipe stays, and each number is said', () => {
  const svg = drawn([30.2, 24, 23.9], 24.4);
  for (const [, y] of dots(svg)) expect(y).toBeGreaterThanOrEqual(12);
  expect(Number(/plot-band"[^>]* y="([\d.-]+)"/.exec(svg)?.[1])).toBeGreaterThanOrEqual(12);
  expect(svg).toContain('1 drop: 30.2; 2 drops: 24.0; 3 drops: 23.9.');
});
