import { caliperHalfWidthMm, pencilHalfWidthMm, threadHalfWidthMm } from '#lib/mapping/startValues.ts';

/** Half-widths of what reading again does not shrink: pencil line, caliper, thread. */
export const budgetLines = [pencilHalfWidthMm, caliperHalfWidthMm, threadHalfWidthMm].map((halfWidthMm) => ({ halfWidthMm }));
