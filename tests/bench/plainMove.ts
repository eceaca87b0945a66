import type { Brow, Brows } from '#lib/mapping/marks/brow.ts';
import { faceFrame, toFace } from '#lib/mapping/marks/faceFrame.ts';
import { browMarks, type MarkSet, type Side } from '#lib/mapping/marks/markSet.ts';
import { mirrorMarksOf } from '#lib/mapping/marks/mirrorMarks.ts';
import { fitRobustMidline } from '#lib/mapping/midline/robustMidline.ts';
import type { OldShape } from '#lib/mapping/plan/oldShape.ts';
import { movePoints } from '../lib/mapping/faces.ts';

/**
 * The same work written down plainly: each slope by fitting the face again, areas by Simpson's rule, cover
 * place by place, the plan by trying steps.
 */

const sides = ['right', 'left'] as const;

export function plainBrows(set: MarkSet): Brows {
  const fit = fitRobustMidline(mirrorMarksOf(set));
  if (!fit.ok) throw new Error(fit.reason);
  const frame = faceFrame(set, fit.line, 'midline');
  const side = (name: Side): Brow => {
    const at = (mark: keyof Brow) => toFace(set.brows[mark][name], name, frame);
    return {
      frontLower: at('frontLower'),
      frontTop: at('frontTop'),
      archTop: at('archTop'),
      archLower: at('archLower'),
      tail: at('tail'),
    };
  };
  return { right: side('right'), left: side('left') };
}

/**
 * Standard uncertainty of left minus right of each brow mark, [outward, up], every coordinate of every point
 * moved by itself.
 */
export function plainUncertainty(
  set: MarkSet,
  markMm: number,
): Readonly<Record<keyof Brow, readonly [number, number]>> {
  const step = 1e-3;
  const differences = (of: MarkSet) => {
    const { right, left } = plainBrows(of);
    return browMarks.flatMap((mark) => [left[mark].uMm - right[mark].uMm, left[mark].vMm - right[mark].vMm]);
  };
  const squares = browMarks.flatMap(() => [0, 0]);
  let points = 0;
  movePoints(set, (point) => (points++, point));
  for (let target = 0; target < points; target++) {
    for (const axis of ['xMm', 'yMm'] as const) {
      const shifted = (by: number) => {
        let at = 0;
        return movePoints(set, (point) => (at++ === target ? { ...point, [axis]: point[axis] + by } : point));
      };
      const [up, down] = [differences(shifted(step)), differences(shifted(-step))];
      up.forEach(
        (value, i) =>
          (squares[i] = (squares[i] ?? 0) + ((markMm * (value - (down[i] ?? 0))) / (2 * step)) ** 2),
      );
    }
  }
  const at = (i: number): readonly [number, number] => [
    Math.sqrt(squares[2 * i] ?? 0),
    Math.sqrt(squares[2 * i + 1] ?? 0),
  ];
  return { frontLower: at(0), frontTop: at(1), archTop: at(2), archLower: at(3), tail: at(4) };
}

const fall = (u: number, end: number, arch: number) => {
  const t = (u - end) / (arch - end);
  return 1 - 1.5 * t + 0.5 * t ** 3;
};

/** Height of one edge, with the straight front where that edge has not begun. */
function edge(brow: Brow, isUpper: boolean, u: number): number {
  const { frontLower, frontTop, tail } = brow;
  const [front, arch] = isUpper ? [brow.frontTop, brow.archTop] : [brow.frontLower, brow.archLower];
  if (u < front.uMm)
    return (
      frontLower.vMm +
      ((frontTop.vMm - frontLower.vMm) * (u - frontLower.uMm)) / (frontTop.uMm - frontLower.uMm)
    );
  const end = u <= arch.uMm ? front : tail;
  return arch.vMm + (end.vMm - arch.vMm) * fall(u, end.uMm, arch.uMm);
}

export function plainAreaMm2(brow: Brow): number {
  const places = [
    brow.frontTop.uMm,
    brow.frontLower.uMm,
    brow.archTop.uMm,
    brow.archLower.uMm,
    brow.tail.uMm,
  ].sort((a, b) => a - b);
  const thick = (u: number) => edge(brow, true, u) - edge(brow, false, u);
  return places.slice(1).reduce((sum, to, i) => {
    const from = places[i] ?? to;
    const n = 100;
    const h = (to - from) / n;
    if (h === 0) return sum;
    let inside = thick(from + 1e-12) + thick(to);
    for (let k = 1; k < n; k++) inside += (k % 2 ? 4 : 2) * thick(from + k * h);
    return sum + (inside * h) / 3;
  }, 0);
}

/** Top and foot of the old shape with its margin, at places 0.25 mm apart. */
function needs(
  { corners }: OldShape,
  { tail }: Brow,
  marginMm: number,
): readonly (readonly [u: number, top: number, foot: number])[] {
  const first = Math.min(...corners.map(({ uMm }) => uMm));
  const last = Math.max(...corners.map(({ uMm }) => uMm));
  return Array.from({ length: Math.floor((last - first) / 0.25) }, (_, i) => first + 0.01 + i * 0.25).map(
    (u) => {
      const heights = corners.flatMap((a, i) => {
        const b = corners[(i + 1) % corners.length] ?? a;
        return (a.uMm - u) * (b.uMm - u) <= 0 && a.uMm !== b.uMm
          ? [a.vMm + ((b.vMm - a.vMm) * (u - a.uMm)) / (b.uMm - a.uMm)]
          : [];
      });
      const margin = marginMm * Math.min(1, (tail.uMm - u) / 5);
      return [u, Math.max(...heights) + margin, Math.min(...heights) - margin] as const;
    },
  );
}

/** How far old work and margin stay outside, summed over the places, mm. */
export function plainShortMm(brow: Brow, old: OldShape, marginMm: number): number {
  return needs(old, brow, marginMm).reduce(
    (sum, [u, top, foot]) =>
      sum + Math.max(0, top - edge(brow, true, u)) + Math.max(0, edge(brow, false, u) - foot),
    0,
  );
}

/** What the plain plan makes small: short cover before asymmetry before movement, by weights. */
export function plainCost(
  brows: Brows,
  old: Readonly<Record<Side, OldShape>>,
  marginMm: number,
): (at: Brows) => number {
  const wanted = {
    right: needs(old.right, brows.right, marginMm),
    left: needs(old.left, brows.left, marginMm),
  };
  return (at) =>
    sides.reduce(
      (sum, side) =>
        sum +
        1000 *
          wanted[side].reduce(
            (short, [u, top, foot]) =>
              short +
              Math.max(0, top - edge(at[side], true, u)) +
              Math.max(0, edge(at[side], false, u) - foot),
            0,
          ),
      0,
    ) +
    browMarks.reduce(
      (sum, mark) =>
        sum +
        100 * (at.left[mark].vMm - at.right[mark].vMm) ** 2 +
        (at.left[mark].vMm - brows.left[mark].vMm) ** 2 +
        (at.right[mark].vMm - brows.right[mark].vMm) ** 2,
      0,
    );
}

/** Tries steps up and down, mark by mark and both sides together, ever smaller, while the cost falls. */
export function plainPlan(
  brows: Brows,
  old: Readonly<Record<Side, OldShape>>,
  marginMm: number,
  mostMm: number,
): Brows {
  const cost = plainCost(brows, old, marginMm);
  const moved = (at: Brows, mark: keyof Brow, by: number, which: readonly Side[]): Brows => {
    const side = (name: Side): Brow => {
      const v = at[name][mark].vMm + by;
      const held = Math.min(brows[name][mark].vMm + mostMm, Math.max(brows[name][mark].vMm - mostMm, v));
      return which.includes(name) ? { ...at[name], [mark]: { ...at[name][mark], vMm: held } } : at[name];
    };
    return { right: side('right'), left: side('left') };
  };
  let best = brows;
  let least = cost(best);
  for (let step = 1; step > 0.01; step /= 2) {
    for (let again = true, rounds = 0; again && rounds < 40; rounds++) {
      again = false;
      for (const mark of browMarks) {
        for (const which of [['right', 'left'], ['right'], ['left']] as const) {
          for (const by of [step, -step]) {
            const next = moved(best, mark, by, which);
            const value = cost(next);
            if (value < least - 1e-9) [best, least, again] = [next, value, true];
          }
        }
      }
    }
  }
  return best;
}

export function plainMove(
  set: MarkSet,
  old: Readonly<Record<Side, OldShape>>,
  markMm: number,
  marginMm: number,
) {
  const brows = plainBrows(set);
  const uncertainty = plainUncertainty(set, markMm);
  const areaMm2 = { right: plainAreaMm2(brows.right), left: plainAreaMm2(brows.left) };
  const plan = plainPlan(brows, old, marginMm, 3);
  return {
    brows,
    uncertainty,
    areaMm2,
    plan,
    shortMm: { right: plainShortMm(plan.right, old.right, 0), left: plainShortMm(plan.left, old.left, 0) },
  };
}
