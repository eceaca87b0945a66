import { bandOf } from '#lib/mapping/compare/band.ts';
import { budgetMm, markUncertaintyMm, smallestRealDifferenceMm } from '#lib/mapping/uncertainty/budget.ts';
import { measuringFacts } from '#lib/mapping/facts/measuring.ts';
import { seeingFacts } from '#lib/mapping/facts/seeing.ts';
import { familyCoverageFactor } from '#lib/mapping/uncertainty/familyWise.ts';
import { intervalAround } from '#lib/quantities/interval.ts';
import { drawFrom, drawOne, drawWhole, type Draw } from '#lib/quantities/seed.ts';
import { neededIn, realOrNotWords, verdictCode } from '#words/skills/realOrNot.ts';
import type { RealOrNotGiven } from '#words/skills/realOrNot.ts';
import type { Skill } from '../skill.ts';

type Given = RealOrNotGiven;
const to = (value: number, decimals: number) => Number(value.toFixed(decimals));

const halfWidths = ['pencil-half-width-mm', 'caliper-half-width-mm', 'thread-half-width-mm'] as const;
const exampleBudgetMm = to(budgetMm(halfWidths.map((id) => ({ halfWidthMm: measuringFacts[id].value }))), 3);

/**
 * The verdict that follows from a standard uncertainty of the difference, and the smallest real difference
 * behind it. Its code knows two sizes only; whether few or some see the smaller is said from the difference.
 */
function verdict({ differenceMm, mostSeeMm }: Given, neededMm: number): string {
  return verdictCode(
    bandOf(intervalAround(differenceMm, neededMm, 1), { fewSeeMm: mostSeeMm, mostSeeMm }),
    neededMm,
  );
}

const needed = (given: Given, k = given.kAll) => smallestRealDifferenceMm(given, k);
const byMethod = {
  right: (given: Given) => verdict(given, needed(given)),
  'k-of-one': (given: Given) => verdict(given, needed(given, given.kOne)),
  'no-root-two': (given: Given) => verdict(given, needed(given) / Math.SQRT2),
  'one-reading': (given: Given) => verdict(given, needed({ ...given, readings: 1 })),
  'seen-is-real': (given: Given) => verdict(given, given.mostSeeMm),
} as const;

/**
 * Two of these are always wrong methods; "equal" tempts where nothing is shown, the bar of seeing where
 * something is.
 */
function options(given: Given): readonly string[] {
  const right = byMethod.right(given);
  const last = right.startsWith('not-shown') ? 'equal' : byMethod['seen-is-real'](given);
  const codes = [
    right,
    byMethod['k-of-one'](given),
    byMethod['no-root-two'](given),
    byMethod['one-reading'](given),
    last,
  ];
  return codes.sort((a, b) => (neededIn(a) ?? 0) - (neededIn(b) ?? 0));
}

/**
 * A difference in one of four places: under every bar, between wrong and right bar from below or above, or
 * plain to see.
 */
function deal(draw: Draw): Given {
  const comparisons = drawWhole(draw, 3, 10);
  const base = {
    temMm: drawOne(draw, [0.2, 0.3, 0.4, 0.5]),
    readings: drawWhole(draw, 2, 4),
    budgetMm: exampleBudgetMm,
    comparisons,
    kOne: to(familyCoverageFactor(1), 2),
    kAll: to(familyCoverageFactor(comparisons), 2),
    mostSeeMm: seeingFacts['most-see-mm'].value,
  };
  const bare = { ...base, differenceMm: 0 };
  const low = Math.min(needed(bare, base.kOne), needed(bare) / Math.SQRT2);
  const high = needed({ ...bare, readings: 1 });
  const where = draw();
  const [from, upTo] =
    where < 0.15
      ? [low * 0.4, low]
      : where < 0.5
        ? [low, needed(bare)]
        : where < 0.8
          ? [needed(bare), high]
          : [base.mostSeeMm + 0.1, base.mostSeeMm + 2];
  return { ...base, differenceMm: to(from + (upTo - from) * draw(), 1) };
}

/** True when the difference keeps clear of every bar and no two bars can be mistaken for each other. */
function isClear(given: Given): boolean {
  const bars = options(given)
    .map(neededIn)
    .filter((bar) => bar !== undefined);
  return (
    Math.abs(given.differenceMm - needed(given)) > 0.1 &&
    bars.every(
      (bar, i) => Math.abs(given.differenceMm - bar) > 0.02 && (i === 0 || bar - (bars[i - 1] ?? 0) > 0.04),
    )
  );
}

/** Real or not shown: the difference against k·√(2(TEM²/n + u²)), k for as many comparisons as are made. */
export const realOrNot: Skill<Given> = {
  id: 'real-or-not',
  version: 1,
  words: realOrNotWords,
  given: (seed) => {
    const draw = drawFrom(seed);
    for (;;) {
      const given = deal(draw);
      if (isClear(given)) return given;
    }
  },
  answer: (given) => ({ kind: 'choice', correct: byMethod.right(given), options: options(given) }),
  slips: [
    { id: 'k-of-one', credit: 0.5, value: byMethod['k-of-one'] },
    { id: 'no-root-two', credit: 0.5, value: byMethod['no-root-two'] },
    { id: 'one-reading', credit: 0.5, value: byMethod['one-reading'] },
    { id: 'called-equal', credit: 0, value: () => 'equal' },
    { id: 'seen-is-real', credit: 0, value: byMethod['seen-is-real'] },
  ],
  steps: (given) => {
    const sideMm = markUncertaintyMm(given);
    const bothMm = Math.SQRT2 * sideMm;
    return [
      {
        id: 'one-side',
        values: { temMm: given.temMm, readings: given.readings, budgetMm: given.budgetMm, sideMm },
      },
      { id: 'two-sides', values: { sideMm, bothMm } },
      {
        id: 'factor',
        values: { comparisons: given.comparisons, k: given.kAll, bothMm, neededMm: needed(given) },
      },
      {
        id: 'verdict',
        values: {
          differenceMm: given.differenceMm,
          answer: realOrNotWords.option(byMethod.right(given), given),
        },
      },
    ];
  },
  facts: [
    'most-see-mm',
    'factor-95',
    'pencil-half-width-mm',
    'caliper-half-width-mm',
    'thread-half-width-mm',
  ],
};
