import type { Side } from '../marks/markSet.ts';

/** A half of the picture as it lies before the reader. */
export type Half = 'left' | 'right';

const other = { left: 'right', right: 'left' } as const;

/**
 * Whose side lies in a half of the picture: her right on the picture's left, as others see her; mirrored, her
 * left.
 */
export function sideInHalf(half: Half, isMirrored: boolean): Side {
  return isMirrored ? half : other[half];
}

/**
 * Whether a picture is mirrored, told by a mark of the face whose side is known: it then lies in the half of
 * its own name.
 */
export function isMirroredBy(mark: Readonly<{ side: Side; half: Half }>): boolean {
  return mark.side === mark.half;
}
