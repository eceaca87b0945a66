import type { PointMm } from '../geometry/point.ts';
import type { BrowMark, FacePair, MarkSet, PairMarks } from '../mapping/marks/markSet.ts';
import { drawFrom, drawNormalWithin, seedFrom } from '../quantities/seed.ts';

/**
 * Another reading of the same face: every mark moves by its own normal error in both directions, then is read
 * to 0.1 mm.
 * `temMm`, nought or more, is the technical error of one reading (Dahlberg); errors are held inside three of
 * it. Same seed, same reading.
 */
export function readAgain(truth: MarkSet, seed: number, temMm = 0.3): MarkSet {
  const draw = drawFrom(seedFrom('reading', seed));
  const read = ({ xMm, yMm }: PointMm): PointMm => ({
    xMm: readTenths(xMm + error()),
    yMm: readTenths(yMm + error()),
  });
  const error = (): number => drawNormalWithin(draw, 0, temMm, -3 * temMm, 3 * temMm);
  return mapMarks(truth, read);
}

/** The marks to 0.1 mm, as a person writes them down. */
export function roundedMarks(markSet: MarkSet): MarkSet {
  return mapMarks(markSet, ({ xMm, yMm }) => ({ xMm: readTenths(xMm), yMm: readTenths(yMm) }));
}

function readTenths(mm: number): number {
  return Math.round(mm * 10) / 10 + 0;
}

/** Every mark through one rule, always in the same order. */
export function mapMarks(
  { pairs, singles, brows, taken }: MarkSet,
  read: (point: PointMm) => PointMm,
): MarkSet {
  const both = ({ right, left }: PairMarks): PairMarks => ({ right: read(right), left: read(left) });
  const pair = (mark: FacePair): PairMarks => both(pairs[mark]);
  const brow = (mark: BrowMark): PairMarks => both(brows[mark]);
  return {
    pairs: {
      innerCorner: pair('innerCorner'),
      outerCorner: pair('outerCorner'),
      pupil: pair('pupil'),
      noseWing: pair('noseWing'),
    },
    singles: {
      glabella: read(singles.glabella),
      nasion: read(singles.nasion),
      subnasale: read(singles.subnasale),
      chin: read(singles.chin),
    },
    brows: {
      frontLower: brow('frontLower'),
      frontTop: brow('frontTop'),
      archTop: brow('archTop'),
      archLower: brow('archLower'),
      tail: brow('tail'),
    },
    taken,
  };
}
