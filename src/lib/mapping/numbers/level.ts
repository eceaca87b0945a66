/**
 * From arch to arch, and from hand to hand along a thread: the lengths that calculators and problems about
 * level start from, mm.
 */
export const archesApartMm = 82;
export const threadLengthMm = 150;
