import type { Lab } from '../spaces/lab.ts';
import { hueDeg } from '../spaces/lch.ts';
import { ita } from '../spaces/ita.ts';

/** A number with the ends of its interval. */
export type Span = Readonly<{ value: number; lo: number; hi: number }>;
/** A colour known to a box: each coordinate between its own ends. */
export type LabBox = Readonly<{ l: Span; a: Span; b: Span }>;

/** A box around a colour, so much each way. */
export function boxAround({ l, a, b }: Lab, half: Lab): LabBox {
  const span = (value: number, by: number): Span => ({ value, lo: value - by, hi: value + by });
  return { l: span(l, half.l), a: span(a, half.a), b: span(b, half.b) };
}

function spanOf(value: number, corners: readonly number[]): Span {
  return { value, lo: Math.min(...corners), hi: Math.max(...corners) };
}

export type AngleSpan =
  | Readonly<{ ok: true; span: Span }>
  | Readonly<{ ok: false; reason: 'outside-the-scale' }>;

/**
 * The typology angle over a box, degrees. It rises with L* everywhere and is monotone in b*, so its ends lie
 * at corners.
 * Refused where the box reaches down to no yellow: the angle jumps there.
 */
export function itaSpan({ l, b }: LabBox): AngleSpan {
  if (!(b.lo > 0)) return { ok: false, reason: 'outside-the-scale' };
  const at = (lightness: number, yellow: number): number => {
    const reading = ita({ l: lightness, b: yellow });
    return reading.ok ? reading.deg : 0;
  };
  return {
    ok: true,
    span: spanOf(
      at(l.value, b.value),
      [l.lo, l.hi].flatMap((lightness) => [at(lightness, b.lo), at(lightness, b.hi)]),
    ),
  };
}

/**
 * The hue angle over a box, degrees. Refused as above: above the line b* 0 the ends of the angle lie at
 * corners.
 */
export function hueSpan({ a, b }: LabBox): AngleSpan {
  if (!(b.lo > 0)) return { ok: false, reason: 'outside-the-scale' };
  return {
    ok: true,
    span: spanOf(
      hueDeg(a.value, b.value),
      [a.lo, a.hi].flatMap((red) => [hueDeg(red, b.lo), hueDeg(red, b.hi)]),
    ),
  };
}
