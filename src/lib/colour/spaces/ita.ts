import type { Lab } from './lab.ts';

/** The six classes of the individual typology angle, lightest first (Chardon and Del Bino's scheme). */
export const itaClasses = ['very-light', 'light', 'intermediate', 'tan', 'brown', 'dark'] as const;
export type ItaClass = (typeof itaClasses)[number];

/** The angles between the classes, degrees, lightest first: very light above 55, dark at −30 and below. */
export const itaEdgesDeg = [55, 41, 28, 10, -30] as const;

/** The L* that counts as nought in the angle. */
export const itaNoughtL = 50;

export type Ita =
  | Readonly<{ ok: true; deg: number; itaClass: ItaClass }>
  | Readonly<{ ok: false; reason: 'outside-the-scale' }>;

/**
 * Individual typology angle, arctan((L* − 50)/b*) in degrees, and its class. Made for skin: refused where b*
 * is not above 0, and where a number is none.
 * It leaves a* out: two people 3° apart in it may be 22° apart in hue, so the hue angle stands beside it.
 */
export function ita({ l, b }: Pick<Lab, 'l' | 'b'>): Ita {
  if (!(b > 0 && Number.isFinite(l - b))) return { ok: false, reason: 'outside-the-scale' };
  const deg = (Math.atan((l - itaNoughtL) / b) * 180) / Math.PI;
  return { ok: true, deg, itaClass: itaClassAt(deg) };
}

/** The class of an angle, degrees: on an edge, the darker one. */
export function itaClassAt(deg: number): ItaClass {
  return itaClasses[itaEdgesDeg.findIndex((edge) => deg > edge)] ?? 'dark';
}

/** The L* at which an angle is reached for a given b*: 50 + b* tan(angle). */
export function lightnessAtIta(deg: number, b: number): number {
  return itaNoughtL + b * Math.tan((deg * Math.PI) / 180);
}
