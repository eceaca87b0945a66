import type { Side } from '#lib/mapping/marks/markSet.ts';
import type { NoOutline } from '#lib/mapping/outline/outline.ts';
import type { StationPair } from '#lib/mapping/outline/stationPairs.ts';
import type { NoThickness } from '#lib/mapping/outline/thickness.ts';
import type { ShownTradeReport, TradeCheck } from '#lib/mapping/outline/tradeChecks.ts';
import type { NoPlacing } from '#lib/mapping/placing/placeFrontAndTail.ts';
import { capital } from './marks.ts';
import { fixed } from './number.ts';

/** Why marks make no outline, or a station no thickness. */
export const outlineFaultWords: Readonly<Record<NoOutline['reason'] | NoThickness['reason'], string>> = {
  'mark-not-a-number': 'A mark lies too far away.',
  'tail-inside-front': 'The tail must lie further out than both front marks.',
  'arch-not-between-front-and-tail':
    'Both arch marks must lie between front and tail, at least 1 mm from each.',
  'front-top-not-above-lower': 'The top front mark must lie above the lower one.',
  'upper-edge-under-lower-edge': 'The upper edge passes under the lower edge.',
  'off-the-outline': 'The brow does not reach this place.',
  'too-near-the-front': 'Too near the front: its straight edge is in the way.',
};

/** "a quarter", "half", "90 %" */
export function stationWords(share: number): string {
  return { 0.25: 'a quarter', 0.5: 'half', 0.75: 'three quarters' }[share] ?? `${fixed(100 * share, 0)} %`;
}

const equalWords = {
  'fronts-equally-far': 'fronts, out from the midline',
  'level-frontLower': 'lower edges at the front, height',
  'level-frontTop': 'tops of the fronts, height',
  'level-archTop': 'arches, height',
  'level-archLower': 'lower edges under the arch, height',
  'level-tail': 'tail tips, height',
  lengths: 'lengths, straight across',
  thickness: 'thickness',
} as const;
const moreWords = { 'fronts-equally-far': 'further out', lengths: 'longer', thickness: 'thicker' } as const;
const sideCheckWords = {
  'front-on-anchor': 'front, out from its anchor',
  'tail-over-front-lower': 'tail tip over the front’s lower edge',
  'tail-under-front-top': 'tail tip under the front’s top',
  'tail-inside-line': 'tail inside the line nose wing – outer eye corner',
} as const;
const brokenWords = {
  'tail-over-front-lower': 'tail tip lies below its front',
  'tail-under-front-top': 'tail tip lies above its front',
  'tail-inside-line': 'tail ends past its line',
} as const;

/** A check's name: "Thickness at a quarter", "Right tail tip over the front's lower edge". */
export function checkName(check: TradeCheck): string {
  if (check.kind === 'equal')
    return capital(
      `${equalWords[check.id]}${check.share === undefined ? '' : ` at ${stationWords(check.share)}`}`,
    );
  return capital(`${check.side} ${sideCheckWords[check.id]}`);
}

export const tradeVerdictWords: Readonly<Record<TradeCheck['verdict'], string>> = {
  differs: 'real',
  'not-shown': 'not shown',
  keeps: 'keeps it',
  breaks: 'breaks it',
  'too-near': 'too near to tell',
};

/** One failed check as part of a sentence; undefined where nothing is shown. */
function failedSays(check: TradeCheck): string | undefined {
  const size = `${fixed(Math.abs(check.value.value))} mm`;
  if (check.kind === 'limit')
    return check.verdict === 'breaks' ? `the ${check.side} ${brokenWords[check.id]} by ${size}` : undefined;
  if (check.verdict === 'not-shown') return undefined;
  if (check.kind === 'anchor')
    return `the ${check.side} front stands ${size} ${check.value.value > 0 ? 'outside' : 'inside'} its anchor`;
  const more =
    check.id === 'fronts-equally-far' || check.id === 'lengths' || check.id === 'thickness'
      ? moreWords[check.id]
      : 'higher';
  return `${equalWords[check.id].replace(', height', '')}${check.share === undefined ? '' : ` at ${stationWords(check.share)}`} (${check.value.value > 0 ? 'left' : 'right'} ${size} ${more})`;
}

/**
 * "straight across 2.7 mm right and 2.6 left; straight up would read 3.0 and 2.9" at the learner's own
 * station.
 */
function ownSays({ right, left, share }: StationPair): string {
  if (!right.ok || !left.ok) return '';
  const up = `straight up would read ${fixed(right.straightUpMm)} and ${fixed(left.straightUpMm)}`;
  return ` At ${stationWords(share)}, straight across: ${fixed(right.thicknessMm)} mm right, ${fixed(left.thicknessMm)} left; ${up}.`;
}

/** What the figure says: thickness first, then what else is shown. */
export function outlineSays(
  report: ShownTradeReport | NoPlacing,
  { station }: Readonly<{ station: number }>,
): Readonly<{ answer: string; doubt: string }> {
  if (!report.ok)
    return { answer: 'There is no tail line.', doubt: 'An outer eye corner must stand above its nose wing.' };
  const { outlines, stations, checks } = report;
  const sides: readonly Side[] = ['right', 'left'];
  const faults = sides.flatMap((side) => {
    const outline = outlines[side];
    return outline.ok ? [] : [`The ${side} marks make no outline. ${outlineFaultWords[outline.reason]}`];
  });
  if (faults.length > 0)
    return { answer: faults.join(' '), doubt: 'Nothing is said about thickness until they do.' };
  const failed = (wanted: (check: TradeCheck) => boolean) =>
    checks.filter(wanted).flatMap((check) => failedSays(check) ?? []);
  const thickness = failed(({ id }) => id === 'thickness');
  const others = failed(({ id }) => id !== 'thickness');
  const measured = stations.filter(({ difference }) => difference !== undefined).length;
  const own = stations.find(({ share }) => share === station / 100);
  return {
    answer:
      thickness.length > 0
        ? `${capital(thickness.join('; '))}.`
        : `No difference in thickness is shown at ${measured} stations.`,
    doubt:
      `${(own ? ownSays(own) : '').trim()} ${others.length > 0 ? `Shown as well: ${others.join('; ')}.` : 'Nothing else is shown to differ.'}`.trim(),
  };
}
