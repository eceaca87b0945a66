import { fixed } from './number.ts';

type Within = Readonly<{ share: number; lo: number; hi: number }>;
type Result = Readonly<{ fresh: Within; spread: Within }>;
type Made = 'apart' | 'crossing' | 'dots';
type State = Readonly<{ made: Made; count: number; dots: number; dot: number }>;

export const madeWords: Readonly<Record<Made, string>> = {
  apart: 'strokes side by side',
  crossing: 'strokes that cross',
  dots: 'dots',
};

/** What each number is called. */
export const strokeLabels = {
  made: 'Made of',
  count: 'Strokes',
  length: 'Length of a stroke',
  width: 'Width, fresh',
  spread: 'Width, spread',
  area: 'Area of the brow',
  dots: 'Dots in a square millimetre',
  dot: 'Diameter, fresh',
  dotSpread: 'Diameter, spread',
  countOff: 'Count ±',
  lengthOff: 'Length ±',
  widthOff: 'Fresh ±',
  spreadOff: 'Spread ±',
  areaOff: 'Area ±',
  dotsOff: 'Dots ±',
} as const;

const short = (value: number) => String(Number(value.toFixed(2)));
/** "58 %", and never 100 % for what is not all. */
export function percent(share: number): string {
  return `${fixed(share < 1 ? Math.min(99, 100 * share) : 100, share < 0.1 ? 1 : 0)}\u00a0%`;
}
const between = ({ lo, hi }: Within) => `${percent(lo).replace('\u00a0%', '')} to ${percent(hi)}`;

/** How much of the brow is coloured, fresh and spread, and how sure that is. */
export function strokesSays(
  { fresh, spread }: Result,
  { made, count, dots, dot }: State,
): Readonly<{ answer: string; doubt: string }> {
  const who =
    made === 'dots'
      ? `${short(dots)} ${dots === 1 ? 'dot' : 'dots'} in each square millimetre, ${short(dot)} mm across,`
      : count === 1
        ? 'One stroke'
        : `${short(count)} strokes${made === 'crossing' ? ' that cross' : ''}`;
  const times = fresh.share > 0 ? spread.share / fresh.share : 1;
  const grown =
    times >= 1.05 ? ` ${fixed(times)} times as much skin is coloured, and nothing was added.` : '';
  return {
    answer: `${who} cover${who === 'One stroke' ? 's' : ''} ${percent(fresh.share)} of the brow fresh, and ${percent(spread.share)} once spread.`,
    doubt: `95 in 100: ${between(fresh)} fresh, ${between(spread)} spread.${grown}`,
  };
}

type Given = State &
  Readonly<
    Record<
      | 'length'
      | 'width'
      | 'spread'
      | 'area'
      | 'dotSpread'
      | 'countOff'
      | 'lengthOff'
      | 'widthOff'
      | 'spreadOff'
      | 'areaOff'
      | 'dotsOff',
      number
    >
  >;
/** What was counted and measured, each with its give or take, for paper: there the fields are left out. */
export function madeOnPaper(state: Given): string {
  const part = (key: Exclude<keyof Given, 'made'>, off: Exclude<keyof Given, 'made'>, unit = ' mm') =>
    `${strokeLabels[key].toLowerCase()} ${state[key]} ± ${state[off]}${unit}`;
  const parts =
    state.made === 'dots'
      ? [part('dots', 'dotsOff', ''), part('dot', 'widthOff'), part('dotSpread', 'spreadOff')]
      : [
          part('count', 'countOff', ''),
          part('length', 'lengthOff'),
          part('width', 'widthOff'),
          part('spread', 'spreadOff'),
          part('area', 'areaOff', ' mm²'),
        ];
  return `Made of ${madeWords[state.made]}: ${parts.join('; ')}. Each ± holds in 95 of 100 cases.`;
}

/** What has to be said where hardly any bare skin may be left. */
export function strokesCaution({ spread }: Result): string | undefined {
  return spread.hi >= 0.9
    ? 'At the wide end hardly any bare skin is left. A stroke can be added later, and not taken out.'
    : undefined;
}

/** What the picture shows, for those who do not see it. */
export function strokesAlt({ fresh, spread }: Result): string {
  return `The same brow twice on millimetre paper, to scale. Fresh: ${percent(fresh.share)} of the skin is covered. Spread: the same marks, wider, cover ${percent(spread.share)}.`;
}
