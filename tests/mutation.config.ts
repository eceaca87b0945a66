import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

const firstMs = new Map<string, number>();

/**
 * Quick files first: most changes fail in any of them, and the first failure settles a change. What counts is
 * the time of the run without a change.
 */
class QuickFirst extends BaseSequencer {
  override sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    for (const file of files) {
      const known = this.ctx.cache.getTestSpecificationResult(file);
      if (known && !firstMs.has(file.moduleId)) firstMs.set(file.moduleId, known.duration);
    }
    const msOf = ({ moduleId }: TestSpecification) => firstMs.get(moduleId) ?? 0;
    return Promise.resolve(files.toSorted((one, other) => msOf(one) - msOf(other)));
  }
}

/**
 * The tests that judge a change of the library: those of the library itself and the outside checks.
 * Simulations of thousands of faces and searches of hundreds of plans or recipes are left out: each takes
 * seconds, thousands of changes would take a day.
 */
export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: ['tests/{lib,checks}/**/*.test.ts'],
    exclude: [
      'tests/lib/mapping/{coverage,monteCarlo,plan/planHeights}.test.ts',
      'tests/lib/colour/recipe/findRecipe.test.ts',
    ],
    testTimeout: 60_000,
    sequence: { sequencer: QuickFirst },
  },
});
