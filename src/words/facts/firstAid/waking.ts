import type { wakingFacts } from '#lib/firstAid/facts/waking.ts';

/** What each fact about whoever does not wake or breathe says, in a few words. */
export const firstAidWakingFactNames = {
  'arrest-signs': 'When to start CPR',
  'fetch-defibrillator': 'Someone fetches the defibrillator',
  'call-before-breathing': 'Not answering: the call comes before the look at the breath',
  'cpr-on-the-floor': 'CPR is done on the floor',
  'on-the-side': 'The side is for those who breathe well but do not wake',
} as const satisfies Readonly<Record<keyof typeof wakingFacts, string>>;
