import type { PointMm } from '#lib/geometry/point.ts';
import type { BrowMark, FacePair, FaceSingle, MarkSet, PairMarks } from '#lib/mapping/marks/markSet.ts';
import type { ReadingChoices } from '#lib/mapping/compare/readFace.ts';
import { drawFrom, drawNormal, drawNormalWithin, type Draw } from '#lib/quantities/seed.ts';

/**
 * Faces for the tests of mapping, made here and nowhere in the library. Marks in the order of `movePoints`.
 */
const taken = { pose: 'rest', posture: 'sitting', skin: 'normal' } as const;

const mirrored = (xMm: number, yMm: number): PairMarks => ({ right: { xMm: -xMm, yMm }, left: { xMm, yMm } });
const middle = (yMm: number): PointMm => ({ xMm: 0, yMm });

/** An exactly symmetric face, upright, midline x = 0, pupils at y = 0. */
export const plainFace: MarkSet = {
  pairs: {
    innerCorner: mirrored(16, -1),
    outerCorner: mirrored(45, 1),
    pupil: mirrored(31, 0),
    noseWing: mirrored(17, -39),
  },
  singles: { glabella: middle(20), nasion: middle(7), subnasale: middle(-46), chin: middle(-92) },
  brows: {
    frontLower: mirrored(15, 17),
    frontTop: mirrored(14, 25),
    archTop: mirrored(47, 33),
    archLower: mirrored(46, 27),
    tail: mirrored(64, 20),
  },
  taken,
};

/** An exactly symmetric face with its own proportions. */
export function symmetricFace(seed: number): MarkSet {
  const draw = drawFrom(seed);
  const about = (mean: number, sd: number) => drawNormalWithin(draw, mean, sd, mean - 3 * sd, mean + 3 * sd);
  const pupil = about(31.5, 1.75);
  const front = about(14, 1.7);
  const frontLowerY = about(17, 1.5);
  const thick = about(7.3, 1.2);
  const tail = about(60, 3);
  const arch = front + about(0.62, 0.05) * (tail - front);
  const archTopY = frontLowerY + thick + about(6, 1.5);
  return {
    pairs: {
      innerCorner: mirrored(about(17, 1.2), about(-1, 0.6)),
      outerCorner: mirrored(about(45, 1.8), about(1, 1)),
      pupil: mirrored(pupil, 0),
      noseWing: mirrored(about(18, 1.8), about(-39, 2.5)),
    },
    singles: {
      glabella: middle(about(20, 2)),
      nasion: middle(about(7, 1.5)),
      subnasale: middle(about(-46, 3)),
      chin: middle(about(-92, 5)),
    },
    brows: {
      frontLower: mirrored(front + 1, frontLowerY),
      frontTop: mirrored(front, frontLowerY + thick),
      archTop: mirrored(arch, archTopY),
      archLower: mirrored(arch - 1, archTopY - about(6.2, 0.8)),
      tail: mirrored(tail, frontLowerY + about(2, 1.5)),
    },
    taken,
  };
}

/** What a test does to one point; it may look at the mark's name and side. */
export type Move = (
  point: PointMm,
  name: FacePair | FaceSingle | BrowMark,
  side: 'right' | 'left' | 'middle',
) => PointMm;

/** Moves every mark of a set. */
export function movePoints({ pairs, singles, brows, taken }: MarkSet, move: Move): MarkSet {
  const pair = (marks: PairMarks, name: FacePair | BrowMark): PairMarks => ({
    right: move(marks.right, name, 'right'),
    left: move(marks.left, name, 'left'),
  });
  return {
    pairs: {
      innerCorner: pair(pairs.innerCorner, 'innerCorner'),
      outerCorner: pair(pairs.outerCorner, 'outerCorner'),
      pupil: pair(pairs.pupil, 'pupil'),
      noseWing: pair(pairs.noseWing, 'noseWing'),
    },
    singles: {
      glabella: move(singles.glabella, 'glabella', 'middle'),
      nasion: move(singles.nasion, 'nasion', 'middle'),
      subnasale: move(singles.subnasale, 'subnasale', 'middle'),
      chin: move(singles.chin, 'chin', 'middle'),
    },
    brows: {
      frontLower: pair(brows.frontLower, 'frontLower'),
      frontTop: pair(brows.frontTop, 'frontTop'),
      archTop: pair(brows.archTop, 'archTop'),
      archLower: pair(brows.archLower, 'archLower'),
      tail: pair(brows.tail, 'tail'),
    },
    taken,
  };
}

/** A turn about the origin, counter-clockwise, then a shift. */
export function turned(set: MarkSet, deg: number, shiftX = 0, shiftY = 0): MarkSet {
  return movePoints(set, (p) => turnPoint(p, deg, shiftX, shiftY));
}

export function turnPoint({ xMm, yMm }: PointMm, deg: number, shiftX = 0, shiftY = 0): PointMm {
  const [c, s] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
  return { xMm: c * xMm - s * yMm + shiftX, yMm: s * xMm + c * yMm + shiftY };
}

/** A nose base (wings and subnasale) that stands off to the client's left. */
export function noseOff(set: MarkSet, offMm: number): MarkSet {
  return movePoints(set, (p, name) =>
    name === 'noseWing' || name === 'subnasale' ? { ...p, xMm: p.xMm + offMm } : p,
  );
}

/** Normal noise on every coordinate. */
export function noisy(set: MarkSet, sdMm: number, draw: Draw): MarkSet {
  return movePoints(set, ({ xMm, yMm }) => ({
    xMm: xMm + sdMm * drawNormal(draw),
    yMm: yMm + sdMm * drawNormal(draw),
  }));
}

/** One reading of technical error 0.3 mm and the example budget: 0.364 mm a coordinate. */
export const choices: ReadingChoices = {
  levelReference: 'midline',
  temMm: 0.3,
  readings: 1,
  budget: [{ halfWidthMm: 0.25 }, { halfWidthMm: 0.05 }, { halfWidthMm: 0.25 }],
  comparisons: 10,
  notice: { fewSeeMm: 1, mostSeeMm: 3 },
};
