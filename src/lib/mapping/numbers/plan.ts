// Numbers of the plan that pages compute with; their backing stands in facts/cover.ts.

/**
 * The margin is so many standard uncertainties of a mark: one time in twenty the old edge lies further out.
 */
export const coverMarginFactor = 1.645;
/**
 * The margin shrinks to nought in a straight line over the last so many mm before the tail, where both edges
 * meet.
 */
export const marginTaperMm = 5;
/** A move below this is not worth making, mm. */
export const leaveBelowMm = 0.25;
