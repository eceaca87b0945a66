/** The height difference that a tilt shows between two marks at equal height, against the picture's edge: apart × tan, mm. */
export function tiltFakesMm(apartMm: number, tiltDeg: number): number {
  return apartMm * Math.tan((tiltDeg * Math.PI) / 180);
}
