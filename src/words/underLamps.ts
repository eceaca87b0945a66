import type { Lab } from '#lib/colour/spaces/lab.ts';
import { fixed } from './number.ts';

type Two = Readonly<{ day: Lab; seen: Lab }>;
type Looks = Readonly<{
  skin: Two;
  times: readonly (Two & Readonly<{ sinceDay: number; sinceSeen: number }>)[];
}>;

const redder = ({ day, seen }: Two) => seen.a - day.a;
const change = (by: number) =>
  Math.abs(by) < 0.05 ? 'no redder' : `${fixed(Math.abs(by))} ${by > 0 ? 'redder' : 'less red'}`;

/** What another lamp does to brow and skin, and what two years do, in words. `lamp` is the lamp's name. */
export function looksSay({ skin, times }: Looks, lamp: string): string {
  const [first, last] = [times[0], times.at(-1)];
  if (!first || !last) return '';
  return `Under the ${lamp} the brow reads ${change(redder(first))} in a* than in daylight, the skin ${change(redder(skin))}. From six weeks to two years the brow moves by ${fixed(last.sinceDay)} in daylight and ${fixed(last.sinceSeen)} under the ${lamp}. Compare only readings under one lamp.`;
}

/** The lamp in a sentence: "tungsten lamp". */
export const lampInWords = {
  D65: 'daylight',
  D50: 'warmer daylight',
  A: 'tungsten lamp',
  'LED-B3': 'white LED',
} as const;

/** "50.7 / 10.0 / 13.9": L*, a*, b* where the heading names them. */
export function three({ l, a, b }: Lab): string {
  return `${fixed(l)} / ${fixed(a)} / ${fixed(b)}`;
}
