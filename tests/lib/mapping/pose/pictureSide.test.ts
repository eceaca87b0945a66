import { expect, test } from 'vitest';
import { isMirroredBy, sideInHalf } from '#lib/mapping/pose/pictureSide.ts';

test('[hand] as others see her, her left lies in the right half; mirrored, in the left half', () => {
  expect(sideInHalf('right', false)).toBe('left');
  expect(sideInHalf('left', false)).toBe('right');
  expect(sideInHalf('left', true)).toBe('left');
  expect(sideInHalf('right', true)).toBe('right');
});

test('[property] a mark of known side tells the picture, and the picture gives the mark its side back', () => {
  for (const side of ['left', 'right'] as const)
    for (const half of ['left', 'right'] as const)
      expect(sideInHalf(half, isMirroredBy({ side, half }))).toBe(side);
});
