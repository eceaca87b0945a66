import { browOf, coverKey, type CoverState, type Free } from '#calculators/coverFields.ts';
import { coverTheOldShape } from '#calculators/coverTheOldShape.ts';
import { startState } from '#calculators/startState.ts';
import { forBrowMarks } from '#lib/mapping/marks/browRecord.ts';
import { browMarks, type BrowMark, type Side } from '#lib/mapping/marks/markSet.ts';
import { outlineOf } from '#lib/mapping/outline/outline.ts';
import { edgeSpans } from '#lib/mapping/plan/edgeSpans.ts';
import { heightsFrom, heightsOf, listOf, withHeights, type BrowHeights } from '#lib/mapping/plan/heights.ts';
import { limitRows } from '#lib/mapping/plan/limits.ts';
import { readOldShape } from '#lib/mapping/plan/oldShape.ts';
import { outsideAreaMm2 } from '#lib/mapping/plan/outsideArea.ts';
import { outsideOf } from '#lib/mapping/plan/outsideOf.ts';
import type { CorrectionPlan } from '#lib/mapping/plan/planCorrections.ts';
import { rowValue } from '#lib/mapping/plan/row.ts';
import { spreadShape } from '#lib/mapping/plan/spreadShape.ts';
import { drawFrom, seedFrom, type Draw } from '#lib/quantities/seed.ts';

// States of the calculator “Cover of the old shape” drawn at random, and what is wrong with a plan of one.

const sides = ['right', 'left'] as const;
const tenth = (value: number) => Math.round(value * 10) / 10;

/** A brow and old work near it, limits and margin; in every other state the planned fronts lean. */
export function drawnState(seed: number, what: string): CoverState {
  const draw = drawFrom(seedFrom('cover-state', what, seed));
  const near = (mm: number, by: number) => mm + by * (draw() + draw() + draw() - 1.5);
  const start = startState(coverTheOldShape);
  const lean = seed % 2 === 0 ? 0 : 6 * draw() - 3;
  const marks: Partial<CoverState> = {};
  for (const shape of ['planned', 'old'] as const)
    for (const side of sides)
      for (const mark of browMarks) {
        const { xMm, yMm } = start[coverKey('planned', mark, side)];
        const uMm =
          near(Math.abs(xMm), 1.6) +
          (shape === 'planned' && mark === 'frontTop' ? lean : 0) -
          (shape === 'old' && mark === 'tail' ? 1.5 : 0);
        Object.assign(marks, {
          [coverKey(shape, mark, side)]: {
            xMm: tenth(side === 'right' ? -uMm : uMm),
            yMm: tenth(near(yMm, 1.6)),
          },
        });
      }
  const free: Free = (['both', 'right', 'left'] as const)[Math.floor(3 * draw())] ?? 'both';
  return {
    ...start,
    ...marks,
    free,
    spread: tenth(0.8 * draw()),
    raise: tenth(2.5 * draw()),
    lower: tenth(2 * draw()),
    thickness: tenth(7 + 4 * draw()),
    growth: 5 * Math.round(3 + 14 * draw()),
    margin: tenth(0.8 * draw()),
    error: tenth(0.1 + 0.4 * draw()),
  };
}

const free = (state: CoverState) => sides.filter((side) => state.free === 'both' || state.free === side);

/** One side of a state as the plan sees it, and whether heights keep its limits and make an outline. */
function sideOf(state: CoverState, side: Side) {
  const was = browOf(state, 'planned', side);
  const drawn = outlineOf(browOf(state, 'old', side));
  const old = drawn.ok ? readOldShape(spreadShape(drawn, state.spread)) : drawn;
  if (!old.ok) throw new Error(old.reason);
  const rows = limitRows(
    was,
    edgeSpans(was),
    side,
    {
      raiseMostMm: forBrowMarks(() => state.raise),
      lowerMostMm: forBrowMarks(() => state.lower),
      thicknessMostMm: state.thickness,
      growthMostShare: state.growth / 100,
    },
    old.areaMm2,
  );
  /** By how much heights exceed a limit, mm or mm². */
  const excess = (heights: readonly number[]) =>
    Math.max(...rows.map(({ coefficients, atLeast }) => atLeast - rowValue(coefficients, heights)));
  const outlineAt = (heights: BrowHeights) => {
    const outline = outlineOf(withHeights(was, heights));
    return outline.ok ? outline : undefined;
  };
  return { was, old, excess, outlineAt };
}

type Planned = Readonly<{ state: CoverState; plan: CorrectionPlan }>;

/** The plan of a state, or undefined where there is none. */
export function plannedState(state: CoverState): Planned | undefined {
  const cover = coverTheOldShape.solve(state);
  return cover.ok ? { state, plan: cover.plan } : undefined;
}

/**
 * By how much less would stay outside if one printed move were left out, mm², the worst of them: only moves
 * without which the limits still hold.
 */
export function leftOutGainMm2({ state, plan }: Planned): number {
  let worst = 0;
  for (const side of free(state)) {
    const { was, old, excess, outlineAt } = sideOf(state, side);
    const heights = heightsOf(plan.brows[side]);
    const planned = outlineAt(heights);
    if (!planned) throw new Error('a plan is an outline');
    const mm2 = outsideOf(old, planned).areaMm2;
    const without = (mark: BrowMark) => ({ ...heights, [mark]: was[mark].vMm });
    for (const mark of browMarks) {
      const other = plan.moves[side][mark].isLeft ? undefined : outlineAt(without(mark));
      if (!other || excess(listOf(without(mark))) > 1e-6) continue;
      worst = Math.max(worst, mm2 - outsideOf(old, other).areaMm2);
    }
  }
  return worst;
}

/** By how much a plan exceeds a limit of a free side, mm or mm². */
export function excessOf({ state, plan }: Planned): number {
  return Math.max(
    ...free(state).map((side) => sideOf(state, side).excess(listOf(heightsOf(plan.brows[side])))),
  );
}

/**
 * For each free side: the area outside by the plan, and the least found by random heights inside the limits and
 * by going down from the best of them, mm².
 */
export function searched({ state, plan }: Planned, points: number, seed: number) {
  return free(state).map((side) => {
    const draw = drawFrom(seedFrom('cover-search', seed, side));
    const { old, was, excess, outlineAt } = sideOf(state, side);
    const own = listOf(heightsOf(plan.brows[side]));
    const valueAt = (heights: readonly number[]) => {
      if (excess(heights) > 1e-9) return Infinity;
      const outline = outlineAt(heightsFrom(heights));
      return outline ? outsideAreaMm2(old, outline) : Infinity;
    };
    const random = Array.from({ length: points }, () => {
      const share = [1, 1, 0.5, 0.2][Math.floor(4 * draw())] ?? 1;
      const heights = listOf(heightsOf(was)).map((v, i) => {
        const far = v - state.lower + draw() * (state.raise + state.lower);
        return (own[i] ?? v) + share * (far - (own[i] ?? v));
      });
      return { heights, mm2: valueAt(heights) };
    })
      .filter(({ mm2 }) => mm2 < Infinity)
      .sort((a, b) => a.mm2 - b.mm2);
    const best = Math.min(
      valueAt(own),
      ...random.slice(0, 4).map(({ heights }) => descended(heights, valueAt, draw)),
    );
    const outline = outlineAt(heightsFrom(own));
    return { planMm2: outline ? outsideOf(old, outline).areaMm2 : NaN, bestMm2: best, tried: random.length };
  });
}

/** Goes down by random steps, ever smaller. */
function descended(
  from: readonly number[],
  valueAt: (heights: readonly number[]) => number,
  draw: Draw,
): number {
  let [here, mm2] = [from, valueAt(from)];
  for (let sizeMm = 0.5; sizeMm > 1e-3; sizeMm *= 0.6)
    for (let i = 0; i < 60; i++) {
      const to = here.map((v) => v + (draw() < 0.5 ? sizeMm * (2 * draw() - 1) : 0));
      const value = valueAt(to);
      if (value < mm2) [here, mm2] = [to, value];
    }
  return mm2;
}
