// Apart from the rules of the arch: many pages measure by the iris. Its source stands in facts/arch.ts.
export const irisWidthMm = 11.71;
