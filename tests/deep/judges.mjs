/** The tests that judge a change of the library: its own and the outside checks, or those that a part names. */
export const judges = () => process.env.TAUTLINE_JUDGES?.split(',') ?? ['tests/{lib,checks}/**/*.test.ts'];

/**
 * Left out: simulations of thousands of faces and searches of hundreds of plans or recipes, each of which
 * takes seconds, so that thousands of changes would take a day; and the packed library, which runs elsewhere.
 */
export const tooSlow = [
  'tests/lib/mapping/{coverage,monteCarlo,plan/planHeights}.test.ts',
  'tests/lib/colour/recipe/findRecipe.test.ts',
  'tests/lib/package.test.ts',
];
