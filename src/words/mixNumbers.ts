import { fixed } from './number.ts';

type Ends = readonly [number, number];
type Ranges = Readonly<{ l: Ends; a: Ends; b: Ends }>;

/**
 * "L* 44.1 to 52.0, a* 9.8 to 12.1, b* 13.0 to 16.4": in a narrow cell it breaks between coordinates only.
 */
export function rangesWords({ l, a, b }: Ranges): string {
  const whole = (name: string, [lo, hi]: Ends) =>
    `${name} ${fixed(lo)} to ${fixed(hi)}`.replaceAll(' ', '\u00a0');
  return [whole('L*', l), whole('a*', a), whole('b*', b)].join(', ');
}

/** "Of 100 parts of pigment: 68 yellow and red, 30 dark, 2 white." */
export function partsWords({
  warmShare,
  whiteShare,
}: Readonly<{ warmShare: number; whiteShare: number }>): string {
  const [warm, white] = [Math.round(100 * warmShare), Math.round(100 * whiteShare)];
  return `Of 100 parts of pigment: ${warm} yellow and red, ${100 - warm - white} dark, ${white} white.`;
}
