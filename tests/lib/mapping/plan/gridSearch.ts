import type { Brow } from '#lib/mapping/marks/brow.ts';
import type { ApprovedLimits } from '#lib/mapping/plan/limits.ts';
import type { OldShape } from '#lib/mapping/plan/oldShape.ts';

const stepMm = 0.1;
const sampleMm = 0.2;
const taperMm = 5;

/** The share of the end mark: 1 − 1.5t + 0.5t³, written out from the outline's definition. */
const fall = (u: number, end: number, arch: number) => {
  const t = (u - end) / (arch - end);
  return 1 - 1.5 * t + 0.5 * t ** 3;
};

/** Top and foot of a polygon at one place, by crossing every edge. */
function extent({ corners }: OldShape, u: number): readonly [number, number] | undefined {
  let [top, foot] = [-Infinity, Infinity];
  corners.forEach((a, i) => {
    const b = corners[(i + 1) % corners.length] ?? a;
    if (u < Math.min(a.uMm, b.uMm) || u > Math.max(a.uMm, b.uMm)) return;
    const v = a.uMm === b.uMm ? a.vMm : a.vMm + ((b.vMm - a.vMm) * (u - a.uMm)) / (b.uMm - a.uMm);
    [top, foot] = [
      Math.max(top, v, a.uMm === b.uMm ? b.vMm : v),
      Math.min(foot, v, a.uMm === b.uMm ? b.vMm : v),
    ];
  });
  return top >= foot ? [top, foot] : undefined;
}

/** What the old shape asks for at each place between front and tail end. */
function needsOf({ frontTop, frontLower, tail }: Brow, old: OldShape, marginMm: number) {
  const first = Math.min(frontTop.uMm, frontLower.uMm);
  const places = [
    ...Array.from({ length: Math.ceil((tail.uMm - first) / sampleMm) }, (_, i) => first + i * sampleMm),
    ...old.corners.map(({ uMm }) => uMm),
  ];
  return places.flatMap((u) => {
    const found = u >= first && u <= tail.uMm ? extent(old, u) : undefined;
    return found
      ? [{ u, top: found[0], foot: found[1], margin: marginMm * Math.min(1, (tail.uMm - u) / taperMm) }]
      : [];
  });
}

/** Both edges of a brow, written out. */
function edgesOf({ frontTop: ft, frontLower: fb, archTop: at, archLower: ab, tail: tt }: Brow) {
  const line = (u: number) => fb.vMm + ((ft.vMm - fb.vMm) * (u - fb.uMm)) / (ft.uMm - fb.uMm);
  return {
    upper: (u: number) =>
      u < ft.uMm
        ? line(u)
        : u <= at.uMm
          ? at.vMm + (ft.vMm - at.vMm) * fall(u, ft.uMm, at.uMm)
          : at.vMm + (tt.vMm - at.vMm) * fall(u, tt.uMm, at.uMm),
    under: (u: number) =>
      u < fb.uMm
        ? line(u)
        : u <= ab.uMm
          ? ab.vMm + (fb.vMm - ab.vMm) * fall(u, fb.uMm, ab.uMm)
          : ab.vMm + (tt.vMm - ab.vMm) * fall(u, tt.uMm, ab.uMm),
  };
}

/**
 * True when a brow keeps limits and covers an old shape with its margin, place by place; by so much may each
 * be missed, mm.
 */
export function isCoverWithin(
  planned: Brow,
  was: Brow,
  old: OldShape,
  limits: ApprovedLimits,
  marginMm: number,
  slipMm: number,
): boolean {
  const { upper, under } = edgesOf(planned);
  const [front, last] = [Math.max(planned.frontTop.uMm, planned.frontLower.uMm), planned.tail.uMm];
  const isCover = needsOf(planned, old, marginMm).every(({ u, top, foot, margin }) => {
    const asked = u >= front && u < last ? margin : 0;
    return upper(u) >= top + asked - slipMm && under(u) <= foot - asked + slipMm;
  });
  const isNear = (['frontTop', 'frontLower', 'archTop', 'archLower', 'tail'] as const).every((mark) => {
    const by = planned[mark].vMm - was[mark].vMm;
    return by <= limits.raiseMostMm[mark] + slipMm && -by <= limits.lowerMostMm[mark] + slipMm;
  });
  const { frontTop, frontLower, archTop, archLower, tail } = planned;
  const isTail =
    !limits.isTailWithinFront || (tail.vMm >= frontLower.vMm - slipMm && tail.vMm <= frontTop.vMm + slipMm);
  return (
    isCover &&
    isNear &&
    isTail &&
    keepsSize(
      planned,
      {
        top: frontTop.vMm,
        lower: frontLower.vMm,
        archTop: archTop.vMm,
        archLower: archLower.vMm,
        tail: tail.vMm,
      },
      limits,
      old.areaMm2,
    )
  );
}

/**
 * True when some heights on a grid of 0.1 mm around the marks keep every approved limit and cover the old
 * shape with its margin at places 0.2 mm apart and at every corner. Plain loops: every height of front top,
 * front lower and tail; the arch marks need not be searched, since the lowest arch top and the highest arch
 * lower that cover are also the ones that limits like best.
 */
export function gridFinds(brow: Brow, old: OldShape, limits: ApprovedLimits, marginMm: number): boolean {
  const { frontTop: ft, frontLower: fb, archTop: at, archLower: ab, tail: tt } = brow;
  const heights = (v: number, up: number, down: number) =>
    Array.from({ length: Math.round((up + down) / stepMm) + 1 }, (_, i) => v - down + i * stepMm);
  const range = (mark: keyof Brow) =>
    heights(brow[mark].vMm, limits.raiseMostMm[mark], limits.lowerMostMm[mark]);
  const first = Math.min(ft.uMm, fb.uMm);
  const needs = needsOf(brow, old, marginMm);
  /**
   * The least arch height (signs turned for the lower edge) with which one edge covers, for each front and
   * tail height.
   */
  const archNeeded = (sign: 1 | -1, frontU: number, archU: number, front: number, tail: number): number => {
    let needed = -Infinity;
    for (const { u, top, foot, margin } of needs) {
      if (u < frontU) continue;
      const [end, endV] = u <= archU ? [frontU, front] : [tt.uMm, tail];
      const share = fall(u, end, archU);
      const missing = sign * (sign === 1 ? top : foot) + margin - sign * endV * share;
      if (1 - share < 1e-12) {
        if (missing > 1e-9) return Infinity;
      } else needed = Math.max(needed, missing / (1 - share));
    }
    return sign * needed;
  };
  const frontLine = (top: number, lower: number): boolean =>
    needs.every(({ u, top: high, foot }) => {
      if (u < first || u >= Math.max(ft.uMm, fb.uMm)) return true;
      const line = lower + ((top - lower) * (u - fb.uMm)) / (ft.uMm - fb.uMm);
      return ft.uMm < fb.uMm ? foot >= line - 1e-9 : high <= line + 1e-9;
    });
  const onGrid = (list: readonly number[], needed: number, isUp: boolean) =>
    isUp ? list.find((v) => v >= needed - 1e-9) : [...list].reverse().find((v) => v <= needed + 1e-9);
  const [tops, lowers, tails] = [range('frontTop'), range('frontLower'), range('tail')];
  const [archTops, archLowers] = [range('archTop'), range('archLower')];
  for (const tail of tails) {
    const upper = tops.map((top) => onGrid(archTops, archNeeded(1, ft.uMm, at.uMm, top, tail), true));
    const under = lowers.map((lower) =>
      onGrid(archLowers, archNeeded(-1, fb.uMm, ab.uMm, lower, tail), false),
    );
    for (const [i, top] of tops.entries()) {
      const archTop = upper[i];
      if (archTop === undefined) continue;
      for (const [j, lower] of lowers.entries()) {
        const archLower = under[j];
        if (archLower === undefined || !frontLine(top, lower)) continue;
        if (limits.isTailWithinFront && (tail < lower - 1e-9 || tail > top + 1e-9)) continue;
        if (keepsSize(brow, { top, lower, archTop, archLower, tail }, limits, old.areaMm2)) return true;
      }
    }
  }
  return false;
}

type Heights = Readonly<{ top: number; lower: number; archTop: number; archLower: number; tail: number }>;

/**
 * Thickness at the front, half way and the arch marks, and the area by a sum of 100 strips between each two
 * marks.
 */
function keepsSize(
  brow: Brow,
  h: Heights,
  { thicknessMostMm, growthMostShare }: ApprovedLimits,
  oldMm2: number,
): boolean {
  const { frontTop: ft, frontLower: fb, archTop: at, archLower: ab, tail: tt } = brow;
  const { upper, under } = edgesOf({
    frontTop: { ...ft, vMm: h.top },
    frontLower: { ...fb, vMm: h.lower },
    archTop: { ...at, vMm: h.archTop },
    archLower: { ...ab, vMm: h.archLower },
    tail: { ...tt, vMm: h.tail },
  });
  if (thicknessMostMm !== undefined) {
    const front = Math.max(ft.uMm, fb.uMm);
    const stations = [front, (front + Math.min(at.uMm, ab.uMm)) / 2, at.uMm, ab.uMm];
    if (stations.some((u) => upper(u) - under(u) > thicknessMostMm + 1e-6)) return false;
  }
  if (growthMostShare === undefined) return true;
  const places = [ft.uMm, fb.uMm, at.uMm, ab.uMm, tt.uMm].sort((a, b) => a - b);
  let area = 0;
  places.slice(1).forEach((to, i) => {
    const from = places[i] ?? to;
    const width = (to - from) / 100;
    for (let k = 0; k < 100; k++)
      area += width * (upper(from + (k + 0.5) * width) - under(from + (k + 0.5) * width));
  });
  return area <= oldMm2 * (1 + growthMostShare) + 0.005;
}
