/**
 * On swollen skin, after the first pass, gaps smaller than this are left, mm: the fact
 * "swollen-chase-from-mm".
 */
export const chaseFromMm = 1;
