import { browMarks, type Side } from '#lib/mapping/marks/markSet.ts';
import type { NoOutline } from '#lib/mapping/outline/outline.ts';
import type { Growth } from '#lib/mapping/plan/growth.ts';
import type { NoOldShape } from '#lib/mapping/plan/oldShape.ts';
import type { Outside } from '#lib/mapping/plan/outsideOf.ts';
import type { CorrectionPlan, OldSkin } from '#lib/mapping/plan/planCorrections.ts';
import { skinStops } from './coverLabels.ts';
import { coverAreaWords, heldByWords, markName, moveWords, outsideWords } from './coverPlan.ts';
import { listed, type Says } from './midline.ts';
import { fixed, signed } from './number.ts';
import { outlineFaultWords } from './outlineAndCover.ts';

type SideSeen = Readonly<{ outside: Outside; growth: Growth | undefined }>;
/** What the page was given: a plan with what it leaves outside, or why there is none. */
export type CoverSeen =
  | Readonly<{
      ok: true;
      plan: CorrectionPlan;
      sides: Readonly<Record<Side, SideSeen>>;
      askedMarginMm: number;
    }>
  | Readonly<{
      ok: false;
      side: Side;
      shape: 'planned' | 'old';
      reason: NoOutline['reason'] | NoOldShape['reason'];
    }>
  | Readonly<{ ok: false; reason: 'skin-not-quiet'; skin: Exclude<OldSkin, 'quiet'> }>
  | Readonly<{ ok: false; reason: 'limits-contradict' }>;

const sides = ['right', 'left'] as const;

const oldFaultWords: Readonly<Record<NoOldShape['reason'], string>> = {
  'too-few-corners': 'It has too few corners.',
  'not-a-number': 'A mark lies too far away.',
  'crosses-itself': 'Its edges cross.',
  'no-area': 'It has no area.',
};

function faultWords(reason: NoOutline['reason'] | NoOldShape['reason']): string {
  return reason === 'too-few-corners' ||
    reason === 'crosses-itself' ||
    reason === 'no-area' ||
    reason === 'not-a-number'
    ? oldFaultWords[reason]
    : outlineFaultWords[reason];
}

/** The contradictions of the limits, said before anything else. */
function contradictionWords({ contradictions }: CorrectionPlan): string {
  const [worst] = [...contradictions].sort((a, b) => b.leastMm - a.leastMm);
  if (!worst) return '';
  return `The limits contradict: the gap at the ${markName(worst.mark)} is ${fixed(worst.gapMm)} mm and they close ${fixed(worst.roomMm)}. ${fixed(worst.leastMm)} mm stay at least. `;
}

function moved(plan: CorrectionPlan): readonly string[] {
  return sides.flatMap((side) =>
    browMarks.flatMap((mark) =>
      plan.moves[side][mark].isLeft
        ? []
        : [`${side} ${markName(mark)}: ${moveWords(plan.moves[side][mark])}`],
    ),
  );
}

/** The marks whose sides differ after the plan by more than the readings can make, the largest first. */
function unevenWords({ remainingMm, remainingHalfMm }: CorrectionPlan): string {
  const uneven = browMarks.filter((mark) => Math.abs(remainingMm[mark]) > remainingHalfMm[mark]);
  const [worst] = [...uneven].sort((a, b) => Math.abs(remainingMm[b]) - Math.abs(remainingMm[a]));
  if (!worst) return '';
  return `The two sides stay uneven: the ${remainingMm[worst] > 0 ? 'left' : 'right'} ${markName(worst)} stands ${fixed(Math.abs(remainingMm[worst]))} mm higher${uneven.length > 1 ? ', and more below' : ''}. `;
}

const areaWords = (mm2: number): string => `${coverAreaWords(mm2)} mm² in all`;

const grownBy = (growth: Growth | undefined): string =>
  growth ? `${signed(growth.thicknessMm)} mm, ${signed(100 * growth.share, 0)} %` : 'nothing to compare';

/** The answer of the figure: cover first, then what holds it, then the growth. */
export function coverSays(cover: CoverSeen): Says {
  if (!cover.ok) {
    if (cover.reason === 'skin-not-quiet') return skinStops(cover.skin);
    if (cover.reason === 'limits-contradict')
      return {
        answer: 'The limits contradict each other: no outline keeps them all.',
        doubt: 'Ask the client which one she means, and widen that one.',
      };
    return {
      answer: `The ${cover.side} marks of the ${cover.shape === 'old' ? 'old shape' : 'planned outline'} make no outline.`,
      doubt: faultWords(cover.reason),
    };
  }
  const { plan, sides: seen } = cover;
  const all = sides.flatMap((side) => outsideWords(side, seen[side].outside));
  /**
   * What stands out by no less than half the interval of a move on that side: less is not shown to stand out.
   */
  const out = sides.flatMap((side) => outsideWords(side, seen[side].outside, doubtMm(plan, side)));
  const outMm2 = sides.reduce((sum, side) => sum + seen[side].outside.areaMm2, 0);
  const [limits, old] = [
    plan.heldBy.filter(({ kind }) => kind !== 'old-work'),
    plan.heldBy.filter(({ kind }) => kind === 'old-work'),
  ];
  const holders = heldByWords(out.length > 0 ? limits : [...limits, ...old]);
  const held =
    holders.length > 0
      ? `Held by: ${listed(holders.slice(0, 2))}${holders.length > 2 ? ', and more below' : ''}. `
      : '';
  const grown = `Growth since the old work: right ${grownBy(seen.right.growth)}; left ${grownBy(seen.left.growth)}.`;
  const uneven = unevenWords(plan);
  if (out.length > 0) {
    return {
      answer: `${contradictionWords(plan)}Lighten first, or leave visible: old work stands ${listed(out)}, ${areaWords(outMm2)}.`,
      doubt: `${uneven}${held}${grown}`,
    };
  }
  const moves = moved(plan);
  const steps =
    moves.length === 0
      ? 'leave every mark'
      : moves.length <= 3
        ? moves.join('; ')
        : `${moves.slice(0, 3).join('; ')}; ${moves.length - 3} more below`;
  if (all.length > 0) {
    return {
      answer: `${contradictionWords(plan)}As good as covered. Less stands outside than anyone can measure: ${listed(all)}, ${areaWords(outMm2)}.`,
      doubt: `Corrections: ${steps}. ${uneven}${held}${grown}`,
    };
  }
  const isMarginShort = sides.some((side) => (plan.cover[side]?.marginOutMm2 ?? 0) > shortFromMm2);
  return {
    answer: `${contradictionWords(plan)}The old shape fits${isMarginShort ? ', with less margin than you asked for' : ''}: ${steps}.`,
    doubt: `${uneven}${held}${grown}`,
  };
}
const shortFromMm2 = 0.1;

/** Half the interval of a move on one side, as its table prints it. */
function doubtMm({ moves }: CorrectionPlan, side: Side): number {
  return Math.max(...browMarks.map((mark) => moves[side][mark].halfMm));
}

/** Under a result that leaves old work outside. */
export function coverCaution(cover: CoverSeen): string | undefined {
  if (!cover.ok) return undefined;
  const isOut = sides.some((side) => outsideWords(side, cover.sides[side].outside).length > 0);
  return isOut ? 'Do not chase it: an outline drawn round old work is larger at every refresh.' : undefined;
}
