import { depthMm } from './modelHead.ts';

/**
 * Which way a picture looks turned: front and tail differ, left minus right, with opposite signs, each by at
 * least `leastMm`.
 * A turn brings the fronts, which stand before the midline's marks, towards the side the face looks to, and
 * the tails, which stand behind them, the other way. 'left': the face looks to the client's own left. 'none':
 * no sign of a turn.
 */
export function turnSign({
  frontMm,
  tailMm,
  leastMm,
}: Readonly<{ frontMm: number; tailMm: number; leastMm: number }>): 'left' | 'right' | 'none' {
  if (frontMm >= leastMm && tailMm <= -leastMm) return 'left';
  if (frontMm <= -leastMm && tailMm >= leastMm) return 'right';
  return 'none';
}

/**
 * A pair at depth z against marks at depth z_ref: a turn ψ before a far camera fakes 2(z − z_ref) sin ψ, mm.
 */
export function turnFakesMm(aheadMm: number, turnDeg: number): number {
  return 2 * aheadMm * Math.sin((turnDeg * Math.PI) / 180);
}

/** How far the nose base stands before the three eye pairs on the model head, mm. */
export const noseBaseAheadMm: number =
  depthMm('subnasale') - (depthMm('innerCorner') + depthMm('outerCorner') + depthMm('pupil')) / 3;

/**
 * The turn that shows the nose base so far off the middle of the eyes, degrees (far camera): asin(off /
 * ahead).
 * One picture cannot tell the two apart. Refused where no turn of the model head shows so much.
 */
export function turnLikeNoseOff(
  offMm: number,
): Readonly<{ ok: true; turnDeg: number }> | Readonly<{ ok: false; reason: 'more-than-a-turn-shows' }> {
  const sine = offMm / noseBaseAheadMm;
  return Math.abs(sine) <= 1
    ? { ok: true, turnDeg: (Math.asin(sine) * 180) / Math.PI }
    : { ok: false, reason: 'more-than-a-turn-shows' };
}
