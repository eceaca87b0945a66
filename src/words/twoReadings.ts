import type { HeightsCompared } from '#lib/mapping/compare/compareHeights.ts';
import type { LatelyChange, WhichToMap } from '#lib/mapping/compare/whichToMap.ts';
import type { Pose } from '#lib/mapping/marks/markSet.ts';
import { includesZero, type Interval } from '#lib/quantities/interval.ts';
import { emergencySigns } from './emergencySigns.ts';
import { poseWords } from './marks.ts';
import { fixed } from './number.ts';

/** A talking face is a raised one: its brows are not at rest. */
export const spokenPoses: Readonly<Record<Pose, string>> = {
  ...poseWords,
  raised: 'brows raised, or talking',
};

export const latelyWords: Readonly<Record<LatelyChange, string>> = {
  nothing: 'nothing known',
  toxin: 'toxin, may still be settling',
  unexplained: 'a change nobody has explained',
};

const unlikeWords = {
  'pose-differs': 'the face was held differently',
  'posture-differs': 'one was taken lying down',
  'skin-differs': 'the skin was not in the same state',
} as const;

const mapSentence = {
  first: 'Map the first reading: at rest, upright, normal skin.',
  second: 'Map the second reading: at rest, upright, normal skin.',
  either: 'Either reading may be mapped: both at rest, upright, on normal skin.',
  neither: 'Map neither. Read again at rest, upright, on normal skin.',
} as const;

function mapWords(which: WhichToMap): string {
  if (which.map !== 'not-yet') return mapSentence[which.map];
  return which.because === 'toxin'
    ? 'Map nothing yet: wait until the brows have settled.'
    : 'Map nothing: a doctor first.';
}

/** "0.7 to 2.5 mm", or "up to 1.3 mm either way" where the range holds zero. */
function rangeWords(difference: Interval): string {
  const [near = 0, far = 0] = [Math.abs(difference.lo), Math.abs(difference.hi)].sort((a, b) => a - b);
  return includesZero(difference)
    ? `up to ${fixed(far)} mm either way`
    : `${fixed(near)} to ${fixed(far)} mm`;
}

export const isShown = (difference: Interval): boolean => !includesZero(difference);

function apart(name: string, difference: Interval): string {
  const size = fixed(Math.abs(difference.value));
  const side = difference.value > 0 ? 'left' : 'right';
  return isShown(difference)
    ? `${name}: the ${side} arch stands ${size} mm higher (${rangeWords(difference)}).`
    : `${name}: ${size} mm apart, not shown to be real (${rangeWords(difference)}).`;
}

function moved(side: 'right' | 'left', change: Interval): string {
  if (!isShown(change)) return `the ${side} arch is not shown to have moved (${rangeWords(change)})`;
  return `the ${side} arch moved ${change.value > 0 ? 'up' : 'down'} ${fixed(Math.abs(change.value))} mm (${rangeWords(change)})`;
}

/** What the figure of two readings says. */
export function twoReadingsSays({
  first,
  second,
  change,
  which,
}: HeightsCompared & Readonly<{ which: WhichToMap }>): Readonly<{ answer: string; doubt: string }> {
  const both = `${apart('First', first)} ${apart('Second', second)}`;
  if (change.ok)
    return {
      answer: mapWords(which),
      doubt: `${both} Both were taken alike, so they may be compared: ${moved('right', change.right)}, ${moved('left', change.left)}.`,
    };
  const reasons = change.reasons.map((reason) => unlikeWords[reason]);
  const why =
    reasons.length < 2 ? reasons.join('') : `${reasons.slice(0, -1).join(', ')} and ${reasons.at(-1) ?? ''}`;
  return { answer: mapWords(which), doubt: `${both} The two are not compared: ${why}.` };
}

/** A caution that follows from what changed of late. */
export function latelyCaution(lately: LatelyChange): string | undefined {
  if (lately === 'toxin')
    return 'Ask who gave it when it will have settled. How long to wait is for that person and your local rules, not for this page.';
  if (lately === 'unexplained')
    return `A brow that dropped or a face that moves differently is for a doctor: today, if it came suddenly. ${emergencySigns}`;
  return undefined;
}
