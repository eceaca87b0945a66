import { intervalAround, type Interval } from '../../quantities/interval.ts';
import type { Brow, Brows } from '../marks/brow.ts';
import type { BrowRecord } from '../marks/browRecord.ts';
import { differenceUncertaintyMm, type Reading } from '../uncertainty/budget.ts';
import { familyCoverageFactor } from '../uncertainty/familyWise.ts';
import type { BrowMark, Side, Taken } from '../marks/markSet.ts';
import { nextStep, type NextStep } from './nextStep.ts';
import { acrossFrom, shortOfOutlineMm } from './shortOfOutline.ts';

/** At one mark: how far the pigment ends short of the outline, and what may be done. */
export type MarkStep = Readonly<{ short: Interval; step: NextStep }>;

/**
 * `comparisons`: how many marks are judged together. `chaseFromMm`: on swollen skin smaller gaps are left.
 */
export type AgainChoices = Readonly<{ reading: Reading; comparisons: number; chaseFromMm: number }>;

export type AgainRefusal = Readonly<{
  ok: false;
  reason: 'pose-differs' | 'posture-differs' | 'approved-on-swollen-skin';
}>;
export type BrowAgain =
  | Readonly<{ ok: true; marks: BrowRecord<MarkStep>; realFromMm: number }>
  | AgainRefusal;
export type BrowsAgain =
  | Readonly<{ ok: true; brows: Readonly<Record<Side, BrowRecord<MarkStep>>>; realFromMm: number }>
  | AgainRefusal;

/** Numb or swollen skin after a pass is expected and carried on; another pose or posture is another brow. */
function refusal(approved: Taken, now: Taken): AgainRefusal | undefined {
  if (approved.pose !== now.pose) return { ok: false, reason: 'pose-differs' };
  if (approved.posture !== now.posture) return { ok: false, reason: 'posture-differs' };
  return approved.skin === 'swollen' ? { ok: false, reason: 'approved-on-swollen-skin' } : undefined;
}

/**
 * One brow after the first pass, mark by mark: the approved outline against where the pigment's edge sits,
 * both in the face's frame and read alike. Each gap is a difference of two readings, √2 u, times k for the
 * marks that are judged together. The two edges at one place are looked at together: a place that moved as a
 * whole is read again, and nothing is made thicker than approved.
 */
export function browAfterFirstPass(
  approved: Brow,
  pigment: Brow,
  taken: Readonly<{ approved: Taken; now: Taken }>,
  choices: AgainChoices,
): BrowAgain {
  const refused = refusal(taken.approved, taken.now);
  if (refused) return refused;
  const uncertaintyMm = differenceUncertaintyMm(choices.reading);
  const k = familyCoverageFactor(choices.comparisons);
  const shortAt = (mark: BrowMark) =>
    intervalAround(shortOfOutlineMm(mark, approved[mark], pigment[mark]), uncertaintyMm, k);
  const at = (mark: BrowMark): MarkStep => {
    const short = shortAt(mark);
    const across = acrossFrom(mark);
    return {
      short,
      step: nextStep(
        across ? { short, across: shortAt(across) } : { short },
        taken.now.skin,
        choices.chaseFromMm,
      ),
    };
  };
  const marks = {
    frontLower: at('frontLower'),
    frontTop: at('frontTop'),
    archTop: at('archTop'),
    archLower: at('archLower'),
    tail: at('tail'),
  };
  return { ok: true, marks, realFromMm: k * uncertaintyMm };
}

/** Both brows after the first pass. */
export function afterFirstPass(
  approved: Brows,
  pigment: Brows,
  taken: Readonly<{ approved: Taken; now: Taken }>,
  choices: AgainChoices,
): BrowsAgain {
  const right = browAfterFirstPass(approved.right, pigment.right, taken, choices);
  if (!right.ok) return right;
  const left = browAfterFirstPass(approved.left, pigment.left, taken, choices);
  if (!left.ok) return left;
  return { ok: true, brows: { right: right.marks, left: left.marks }, realFromMm: right.realFromMm };
}
