/** What one may want to read off a picture of a face. */
export const photoNumbers = [
  'height-sides',
  'width-sides',
  'tail-over-front',
  'arch-share',
  'length',
] as const;
/**
 * Heights or widths left against right; the tail's height against the front's; the arch's share of the
 * length; a length.
 */
export type PhotoNumber = (typeof photoNumbers)[number];

/** What is known of a picture. */
export type PictureTaken = Readonly<{
  atRest: boolean;
  /** The level was taken from the face or a level thread, not from the picture's edge. */
  levelKnown: boolean;
  /** The chin was checked from the side: head neither up nor down. */
  nodChecked: boolean;
  /** It is known whether the picture is mirrored. */
  mirrorKnown: boolean;
  cameraCm: number;
  /** A ruler or a sticker of known size lies in the brow's plane. */
  hasRuler: boolean;
}>;

export const refusals = [
  'not-at-rest',
  'mirror-unknown',
  'widths-never',
  'level-unknown',
  'nod-unchecked',
  'too-near',
  'no-ruler',
] as const;
export type PhotoRefusal = (typeof refusals)[number];
export type MayRead = Readonly<{ use: true }> | Readonly<{ use: false; why: PhotoRefusal }>;

/**
 * From here on a camera counts as far enough for shares and lengths, cm: five feet, at which studies of faces
 * take pictures.
 */
export const farEnoughCm = 150;

const refuse = (why: PhotoRefusal): MayRead => ({ use: false, why });

/**
 * Whether a number may be read off a picture, and if not, the first thing that forbids it: a face that moves,
 * sides that may be exchanged, then what this number itself needs. Widths left against right are never read:
 * no picture shows its turn.
 */
export function mayRead(
  number: PhotoNumber,
  { atRest, levelKnown, nodChecked, mirrorKnown, cameraCm, hasRuler }: PictureTaken,
): MayRead {
  if (number === 'width-sides') return refuse('widths-never');
  if (!atRest) return refuse('not-at-rest');
  if (number === 'height-sides') {
    if (!mirrorKnown) return refuse('mirror-unknown');
    return levelKnown ? { use: true } : refuse('level-unknown');
  }
  if (number === 'tail-over-front') return nodChecked ? { use: true } : refuse('nod-unchecked');
  if (cameraCm < farEnoughCm) return refuse('too-near');
  return number === 'arch-share' || hasRuler ? { use: true } : refuse('no-ruler');
}
