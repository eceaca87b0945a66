import type { BrowMark, Side } from '#lib/mapping/marks/markSet.ts';
import type { Growth } from '#lib/mapping/plan/growth.ts';
import type { Outside } from '#lib/mapping/plan/outsideOf.ts';
import type { Move } from '#lib/mapping/plan/planCorrections.ts';
import type { Holder } from '#lib/mapping/plan/row.ts';
import { browMarkWords } from './marks.ts';
import { fixed, signed } from './number.ts';

/** "raise 1.0 mm (± 0.5)" or "leave". */
export function moveWords({ byMm, halfMm, isLeft }: Move): string {
  if (isLeft) return 'leave';
  return `${byMm > 0 ? 'raise' : 'lower'} ${fixed(Math.abs(byMm))} mm (± ${fixed(halfMm)})`;
}

/** "arch top", inside a sentence. */
export const markName = (mark: BrowMark): string => browMarkWords[mark].replace(', ', ' ');

/** What holds a plan, by name: "right old work at the lower edge". */
function holderWords(holder: Holder): string {
  switch (holder.kind) {
    case 'old-work':
      return `${holder.side} old work at the ${holder.edge} edge`;
    case 'raise':
      return `the limit on raising the ${holder.side} ${markName(holder.mark)}`;
    case 'lower':
      return `the limit on lowering the ${holder.side} ${markName(holder.mark)}`;
    case 'thickness':
      return `the approved thickness, ${holder.side}`;
    case 'growth':
      return `the approved growth, ${holder.side}`;
    case 'tail':
      return `the limits of the tail tip, ${holder.side}`;
  }
}

/** Each holder once, limits before old work. */
export function heldByWords(heldBy: readonly Holder[]): readonly string[] {
  const limits = heldBy.filter(({ kind }) => kind !== 'old-work');
  return [...new Set([...limits, ...heldBy.filter(({ kind }) => kind === 'old-work')].map(holderWords))];
}

/**
 * "1.8 mm above the right upper edge" for each way the old work stands out of one side, by `fromMm` or more.
 */
export function outsideWords(
  side: Side,
  { aboveMm, belowMm, beforeFrontMm, beyondTailMm }: Outside,
  fromMm = shownFromMm,
): readonly string[] {
  const ways = [
    [aboveMm, `above the ${side} upper edge`],
    [belowMm, `below the ${side} lower edge`],
    [beforeFrontMm, `in front of the ${side} front`],
    [beyondTailMm, `past the ${side} tail`],
  ] as const;
  return ways.flatMap(([mm, where]) => (mm >= fromMm ? [`${fixed(mm)} mm ${where}`] : []));
}
const shownFromMm = 0.05;

/** An area without its unit: below `wholeFromMm2` with its tenth, and what is not nothing is never printed as 0. */
export function coverAreaWords(mm2: number, wholeFromMm2 = 10): string {
  if (mm2 > 0 && mm2 < 0.05) return 'less than 0.1';
  return fixed(mm2, mm2 < wholeFromMm2 ? 1 : 0);
}

/** "right +1.0 mm, +48 mm², +24 %" */
export function growthWords(growth: Growth | undefined): string {
  return growth
    ? `${signed(growth.thicknessMm)} mm thicker, ${signed(growth.areaMm2, 0)} mm², ${signed(100 * growth.share, 0)} %`
    : 'nothing to compare';
}
