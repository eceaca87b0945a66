import type { healedFacts } from '#lib/colour/facts/healed.ts';

/** What each fact about healed colours is, in a few plain words. */
export const colourHealedFactNames = {
  'pigment-put-in-least': 'Pigment in tattooed skin, the least in one study',
  'pigment-put-in-mean': 'Pigment in tattooed skin, the mean of that study',
  'pigment-put-in-most': 'Pigment in tattooed skin, the most in that study',
  'deposit-unchanged-days': 'Day until which a deposit in pig skin was unchanged, from day 7',
  'losses-looked-at': 'Largest loss looked at, as times the assumed one',
} as const satisfies Readonly<Record<keyof typeof healedFacts, string>>;
