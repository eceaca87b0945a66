// Each number that a calculator starts from stands alone here, so that a page loads those it uses and no
// others.
// Their sources stand in facts/, under the ids that values.ts gives them.

export const mostSeeMm = 3;
export const fewSeeMm = 1;
export const tenComparisons = 10;
export const exampleErrorMm = 0.3;
export const pencilHalfWidthMm = 0.25;
export const caliperHalfWidthMm = 0.05;
export const threadHalfWidthMm = 0.25;
/** The example budget: what reading again does not shrink. */
export const exampleBudget = [pencilHalfWidthMm, caliperHalfWidthMm, threadHalfWidthMm].map(
  (halfWidthMm) => ({ halfWidthMm }),
);
/** Mean size of the height difference of two brows, and its published 95 % interval, by place on the brow. */
export const unequalMm = { front: 1.34, middle: 1.77, tail: 1.78 } as const;
export const unequalRangeMm = { front: [1.14, 1.54], middle: [1.47, 2.07], tail: [1.5, 2.06] } as const;
/** Middle of the nostril as a share of the way from the nose's middle to its wing. */
export const nostrilMiddleShare = 0.6;
