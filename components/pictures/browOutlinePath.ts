import type { Brow } from '#lib/mapping/marks/brow.ts';
import type { FacePoint } from '#lib/mapping/marks/faceFrame.ts';
import type { Side } from '#lib/mapping/marks/markSet.ts';

/**
 * A brow as a closed path through its five marks, picture millimetres, y down, as seen from the front. Each
 * half edge is level at the arch and leaves the other mark as a cubic whose handles lie a third of the way
 * along.
 */
export function browOutlinePath(
  { frontLower, frontTop, archTop, archLower, tail }: Brow,
  side: Side,
): string {
  const at = (u: number, v: number) => `${(side === 'left' ? u : -u).toFixed(2)},${(-v).toFixed(2)}`;
  /**
   * The two handles and the end of a half edge; the end mark leaves with one and a half times the mean slope.
   */
  const half = (end: FacePoint, arch: FacePoint, toArch: boolean) => {
    const third = (arch.uMm - end.uMm) / 3;
    const leave = at(end.uMm + third, end.vMm + (arch.vMm - end.vMm) / 2);
    const level = at(arch.uMm - third, arch.vMm);
    return toArch
      ? `C${leave} ${level} ${at(arch.uMm, arch.vMm)}`
      : `C${level} ${leave} ${at(end.uMm, end.vMm)}`;
  };
  return `M${at(frontLower.uMm, frontLower.vMm)}L${at(frontTop.uMm, frontTop.vMm)}${half(frontTop, archTop, true)}${half(tail, archTop, false)}${half(tail, archLower, true)}${half(frontLower, archLower, false)}Z`;
}
