import { expect, test } from 'vitest';
import { recipeCount } from '#lib/colour/recipe/recipes.ts';
import { bundled } from './bundled.ts';
import { middle } from './middleMs.ts';

const { fast, plainly, scalar, sevenDoses, tasksOf } =
  await bundled<typeof import('./searches.ts')>('searches.ts');

/**
 * One table: the search written down plainly on culori, the same with our own difference, and the search as
 * the site runs it.
 */
test('all recipes: plainly, scalar, fast', () => {
  const rows: (readonly [string, number, number, number])[] = [];
  const small = tasksOf({ bottles: 12, mostDrops: 8, doses: [0.2], times: [0] });
  const timed = small.map((task) => {
    const [plain, own] = [msOf(() => plainly(task)), msOf(() => scalar(task))];
    const ours = fast(task);
    if (!ours.ok) throw new Error(ours.reason);
    const found = plainly(task);
    expect(Math.abs(ours.best.score - found.score)).toBeLessThan(1e-6);
    ours.byDrops.forEach(({ score }, i) =>
      expect(Math.abs(score - (found.dropsBest[i] ?? NaN))).toBeLessThan(1e-6),
    );
    return { plain, own, fast: middle(Array.from({ length: 9 }, () => msOf(() => fast(task)))) };
  });
  const plain = middle(timed.map((one) => one.plain));
  const own = middle(timed.map((one) => one.own));
  rows.push(['12 bottles, 8 drops, 1 dose', plain, own, middle(timed.map((one) => one.fast))]);
  const fastOf = (tasks: ReturnType<typeof tasksOf>, times: number) =>
    middle(tasks.map((task) => middle(Array.from({ length: times }, () => msOf(() => fast(task))))));
  rows.push([
    'the same, 7 doses',
    7 * plain,
    7 * own,
    fastOf(tasksOf({ bottles: 12, mostDrops: 8, doses: sevenDoses, times: [0] }), 3),
  ]);
  rows.push([
    'the same, 7 doses, 2 dates',
    14 * plain,
    14 * own,
    fastOf(tasksOf({ bottles: 12, mostDrops: 8, doses: sevenDoses, times: [0, 2] }), 3),
  ]);
  // The plain searches of 20.5 million recipes take minutes: each 800th recipe is timed. `npm run deep` runs
  // them whole.
  const large = tasksOf({ bottles: 24, mostDrops: 16, doses: [0.2], times: [0] }).slice(0, 5);
  const [first] = large;
  if (!first) throw new Error('No task.');
  const share = (run: typeof plainly) => {
    const from = performance.now();
    const { searched } = run(first, 800);
    return ((performance.now() - from) * recipeCount(24, 4, 16)) / searched;
  };
  rows.push(['24 bottles, 16 drops, 1 dose', share(plainly), share(scalar), fastOf(large, 1)]);
  for (const [name, culori, scalarMs, ms] of rows)
    console.log(
      `${name.padEnd(30)} culori ${culori.toFixed(0).padStart(7)} ms   scalar ${scalarMs.toFixed(0).padStart(7)} ms   fast ${ms.toFixed(1).padStart(7)} ms   ratio ${(culori / ms).toFixed(0).padStart(5)}`,
    );
}, 300_000);

function msOf(run: () => unknown): number {
  const from = performance.now();
  run();
  return performance.now() - from;
}
