import type { OldSkin } from '#lib/mapping/plan/planCorrections.ts';

// The few words that the cover's figure needs before its plan arrives.

export const shapeWords = { planned: 'planned outline', old: 'old shape' } as const;
export const oldSkinWords: Readonly<Record<OldSkin, string>> = {
  quiet: 'flat and quiet',
  raised: 'raised',
  itchy: 'itchy',
  scaly: 'scaly',
};
export const freeWords = {
  both: 'both sides',
  right: 'the right side only',
  left: 'the left side only',
} as const;

/** While marks are newer than their answer. */
export const beingWorkedOut = 'The plan for these marks is being worked out.';

/** Said at once, before anything is worked out: no plan goes over such skin. */
export const skinStops = (skin: Exclude<OldSkin, 'quiet'>) => ({
  answer: `Stop: the skin over the old work is ${oldSkinWords[skin]}. A doctor looks first.`,
  doubt: 'There is no plan, whatever the numbers say.',
});
