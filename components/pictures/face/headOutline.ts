import type { Face } from '#lib/face/face.ts';
import { closedSpline, spline, type Curve } from './curve.ts';
import { blend, clamp, mirrored, type Spot, type Spots } from '#lib/face/spot.ts';

/** Below this height the cheek turns into the jaw. */
const cheekV = -14;
/** The chin's half width is measured this far above its lowest point. */
const chinWidthAboveMm = 6;

export type HeadOutline = Readonly<{
  /** Temple to temple round the chin; `long` runs further up, for pictures without hair. */
  faceLine: Curve;
  longFaceLine: Curve;
  /** The whole head, as without hair. */
  whole: Curve;
  /** Half width of the face at height v, between cheek and chin. */
  halfWidthAt: (v: number) => number;
  /** Half width at the upper end of the ear. */
  templeMm: number;
}>;

/**
 * Cheek to chin is one superellipse through cheek, jaw and chin, so the jaw never dents: u = cheek (1 -
 * t^p)^(1/q), t the share of the way down. q is found from the chin's width, p from the jaw.
 */
export function headOutline({ landmarks, form }: Face): HeadOutline {
  const [chinX, chinV] = landmarks.middle.chin;
  const drop = cheekV - chinV;
  const q = chinSquareness(
    form.cheekMm,
    form.jawMm,
    (cheekV - form.jawV) / drop,
    form.chinHalfWidthMm,
    1 - chinWidthAboveMm / drop,
  );
  const p = jawPower(form.cheekMm, form.jawMm, (cheekV - form.jawV) / drop, q);
  const halfWidthAt = (v: number): number =>
    form.cheekMm * (1 - clamp((cheekV - v) / drop, 0, 1) ** p) ** (1 / q);
  const jaw = [10, 24, 38, 51, 62, 72].map((deg): Spot => {
    const angle = (deg * Math.PI) / 180;
    return [form.cheekMm * Math.cos(angle) ** (2 / q), cheekV - drop * Math.sin(angle) ** (2 / p)];
  });
  // With the hair left out the full skull looks swollen: the open line takes half of what it stands off the
  // cheek.
  const highMm = blend(form.skullMm, form.cheekMm, 0.5);
  const templeMm = blend(form.skullMm, form.cheekMm, 0.6);
  // The superellipse of a narrow chin ends in a point: no spot lies close to the tip, so the spline rounds
  // it.
  const side: Spots = [[form.cheekMm + 0.3, 3], [form.cheekMm, cheekV], ...jaw];
  const crown: Spots = [
    [38, 106],
    [61, 86],
    [form.skullMm - 0.5, 58],
    [form.skullMm, 36],
    [templeMm, 18],
  ];
  const round = (temple: Spots): Spots => [...temple, ...side, [0, chinV], ...mirrored([...temple, ...side])];
  const leaned = (spots: Spots): Spots =>
    spots.map(([x, v]): Spot => [x + chinX * clamp((-40 - v) / (-40 - chinV), 0, 1), v]);
  return {
    faceLine: spline(leaned(round([[templeMm, 18]]))),
    longFaceLine: spline(
      leaned(
        round([
          [highMm - 0.6, 54],
          [highMm, 36],
          [blend(highMm, form.cheekMm, 0.6), 18],
        ]),
      ),
    ),
    whole: closedSpline(leaned([[0, 113], ...crown, ...side, [0, chinV], ...mirrored([...crown, ...side])])),
    halfWidthAt,
    templeMm,
  };
}

function jawPower(cheek: number, jaw: number, jawShare: number, q: number): number {
  return Math.log(1 - (jaw / cheek) ** q) / Math.log(jawShare);
}

/** The exponent that gives the chin its width, by halving the bracket; held where the outline stays round. */
function chinSquareness(
  cheek: number,
  jaw: number,
  jawShare: number,
  chinHalf: number,
  chinShare: number,
): number {
  let [lo, hi] = [1.35, 2.8];
  for (let i = 0; i < 24; i++) {
    const q = (lo + hi) / 2;
    const width = cheek * (1 - chinShare ** jawPower(cheek, jaw, jawShare, q)) ** (1 / q);
    if (width < chinHalf) lo = q;
    else hi = q;
  }
  return (lo + hi) / 2;
}
