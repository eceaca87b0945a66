// The bare numbers of the arch rules: calculators load these and no quotations. Their sources stand in
// facts/arch.ts.

/** Share of the eye's width, from the inner corner, at which the arch stood on average. */
export const archOfEyeWidth = { women: 0.929, models: 0.978 } as const;
/** Spread of that share from person to person (one standard deviation). */
export const archOfEyeWidthSpread = { women: 0.146, models: 0.131 } as const;
/** Share of the eye's width at which the outer edge of the iris stood in the same pictures. */
export const irisEdgeOfEyeWidth = { women: 0.762, models: 0.735 } as const;
export const archTwoThirds = 2 / 3;
