import { expect, test } from 'vitest';
import { solveLinear } from '#lib/algebra/solveLinear.ts';

test('[property] the largest of a column leads: a pivot near 0 first leaves all digits to a small matrix', () => {
  // Without it, 1 divided by 1e-12 takes four digits from both.
  const found =
    solveLinear(
      [
        [1e-12, 1],
        [-1, 1],
      ],
      [1 + 3e-12, -2],
    ) ?? [];
  expect(Math.abs((found[0] ?? NaN) - 3)).toBeLessThan(1e-14);
  expect(Math.abs((found[1] ?? NaN) - 1)).toBeLessThan(1e-14);
});

test('[hand] three equations by hand; a row of zeros first; two that say the same', () => {
  // x + y + z = 6, 2y + 5z = −4, 2x + 5y − z = 27: 5, 3, −2
  const found =
    solveLinear(
      [
        [1, 1, 1],
        [0, 2, 5],
        [2, 5, -1],
      ],
      [6, -4, 27],
    ) ?? [];
  [5, 3, -2].forEach((value, i) => expect(found[i]).toBeCloseTo(value, 12));
  expect(
    solveLinear(
      [
        [0, 2],
        [3, 0],
      ],
      [4, 6],
    ),
  ).toEqual([2, 2]);
  expect(
    solveLinear(
      [
        [1, 2],
        [2, 4],
      ],
      [3, 6],
    ),
  ).toBeUndefined();
  // A pivot as small as rounding settles nothing; one a little larger does, whichever its sign.
  for (const small of [1e-13, -1e-13, NaN])
    expect(
      solveLinear(
        [
          [1, 0],
          [0, small],
        ],
        [1, 1],
      ),
    ).toBeUndefined();
  for (const small of [2e-13, -2e-13])
    expect(
      solveLinear(
        [
          [1, 0],
          [0, small],
        ],
        [3, small],
      ),
    ).toEqual([3, 1]);
  expect(solveLinear([[2]], [3])).toEqual([1.5]);
  expect(solveLinear([], [])).toEqual([]);
});
