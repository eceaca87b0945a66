/**
 * The height difference that a line off level makes between two truly level points, span × sin(tilt), mm. The
 * span is measured between the points, on the face; the height square to the line. Signed like the tilt
 * (degrees).
 */
export function fakedHeightMm(spanMm: number, tiltDeg: number): number {
  return spanMm * Math.sin((tiltDeg * Math.PI) / 180);
}
