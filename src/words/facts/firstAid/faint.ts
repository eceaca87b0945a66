import type { faintFacts } from '#lib/firstAid/facts/faint.ts';

/** What each fact about fainting says, in a few words. */
export const firstAidFaintFactNames = {
  'faint-not-recovered': 'Call where she is not quite herself again',
  'faint-chest-pain': 'Call for chest pain or an uneven heart',
  'faint-fit': 'Call for shaking or a fit',
  'faint-lying-down': 'Call for a faint while lying down',
  'faint-one-minute': 'NHS 111 Wales waits a minute for her to wake',
  'faint-lie-down': 'Lie down in a faint',
  'faint-no-pillow': 'The pillow comes out',
  'faint-legs-up': 'Raise the legs in a faint',
  'faint-legs-if-sound': 'Legs up only where nothing hurts',
  'faint-pregnant-side': 'Pregnant: on the side in a faint',
  'faint-pregnant-not-back': 'Pregnant: not on the back',
  'faint-left-side': 'The left side in a faint',
  'faint-no-better-minutes': 'Awake but no better, the call comes after',
  'faint-fresh-air': 'Fresh air',
  'faint-up-slowly': 'Up slowly',
  'nothing-to-drink-yet': 'Nothing by mouth until she is fully awake',
  'faint-no-chair': 'Never sit with the head between the knees',
  'faint-head-down-offered': 'NHS 111 Wales offers the head between the knees',
  'no-bag-no-slap': 'No bag, slap, salts or sugar',
} as const satisfies Readonly<Record<keyof typeof faintFacts, string>>;
