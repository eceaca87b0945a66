/** A part of the outline: millimetres from its front, counted outwards as seen from the front. */
export type Stretch = Readonly<{ fromMm: number; toMm: number }>;
/** Parts that follow each other without touching; empty where there are none. */
export type Stretches = readonly Stretch[];

/** Length of all parts together. */
export function lengthOfMm(stretches: Stretches): number {
  return stretches.reduce((sum, { fromMm, toMm }) => sum + toMm - fromMm, 0);
}

/** What two parts share; nothing where they only touch. */
export function sharedBy(one: Stretch, other: Stretch): Stretches {
  const fromMm = Math.max(one.fromMm, other.fromMm);
  const toMm = Math.min(one.toMm, other.toMm);
  return fromMm < toMm ? [{ fromMm, toMm }] : [];
}

/** What is left of a part when another is taken away: nothing, one piece, or one on each side. */
export function without(whole: Stretch, taken: Stretch): Stretches {
  return [
    ...sharedBy(whole, { fromMm: whole.fromMm, toMm: taken.fromMm }),
    ...sharedBy(whole, { fromMm: taken.toMm, toMm: whole.toMm }),
  ];
}

/** What two lists of parts share, in order. */
export function sharedByAll(ones: Stretches, others: Stretches): Stretches {
  return ones.flatMap((one) => others.flatMap((other) => sharedBy(one, other)));
}
