import type { numbingFacts } from '#lib/firstAid/facts/numbing.ts';

/** What each fact about numbing cream and fits says, in a few words. */
export const firstAidNumbingFactNames = {
  'numbing-heart-fit': 'Uneven heart, fits, death',
  'numbing-first-signs': 'Numb tongue, ringing ears',
  'numbing-sight-twitching': 'Blurred sight and twitching are worse',
  'numbing-not-nerves': 'It is not nerves',
  'numbing-grey-lips': 'Grey or blue lips',
  'numbing-hours-later': 'Grey lips can come hours later',
  'numbing-take-off': 'Take the cream off',
  'numbing-away-from-eyes': 'Wipe away from the eyes',
  'numbing-lie': 'Flat, or on the side',
  'fit-first': 'A first fit is a call',
  'fit-not-held': 'A fit is not held down',
  'fit-nothing-in-mouth': 'Nothing in the mouth in a fit',
  'fit-clear-space': 'Clear the space round a fit',
  'fit-time': 'Time a fit',
  'numbing-for-the-crew': 'Tube and times for the crew',
} as const satisfies Readonly<Record<keyof typeof numbingFacts, string>>;
