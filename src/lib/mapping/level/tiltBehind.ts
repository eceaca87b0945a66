export type TiltBehind =
  | Readonly<{ ok: true; tiltDeg: number }>
  | Readonly<{ ok: false; reason: 'higher-than-the-span' }>;

/**
 * The tilt that would explain a height difference between two points a span apart, degrees: arcsin(height ÷
 * span). Undoes fakedHeightMm. Refused where the difference is larger than the span: no tilt can make it.
 */
export function tiltBehind(heightMm: number, spanMm: number): TiltBehind {
  if (!(Math.abs(heightMm) <= spanMm) || spanMm === 0) return { ok: false, reason: 'higher-than-the-span' };
  return { ok: true, tiltDeg: (Math.asin(heightMm / spanMm) * 180) / Math.PI };
}
