import type { exposureFacts } from '#lib/firstAid/facts/exposure.ts';

/** What each fact about needle and blood says, in a few words. */
export const firstAidExposureFactNames = {
  'exposure-within-hour': 'Within the hour',
  'hiv-ideal-hours': 'HIV medicine is best within',
  'hiv-edge-hours': 'HIV medicine is not begun later than',
  'exposure-wash': 'Soap and water',
  'exposure-bleed-freely': 'Let it bleed',
  'exposure-encourage': 'The UK gently encourages bleeding',
  'exposure-squeeze-taught': 'A Welsh board squeezes gently',
  'exposure-squeeze-no-evidence': 'No evidence for squeezing',
  'exposure-no-bleach': 'No bleach',
  'blood-rinse-minutes': 'Rinse blood from eye or mouth for at least',
  'exposure-lens': 'Rinse before and after the lens',
  'exposure-spit': 'Spit, do not swallow',
  'exposure-gloves-off': 'Stop, gloves off',
  'exposure-tell-them': 'What they need to know',
  'hepatitis-b-hours': 'Help against hepatitis B is best within',
  'exposure-sharps-box': 'The needle goes in the box',
  'exposure-no-needle-test': 'The needle is not kept for a test',
  'exposure-report': 'Tell who is in charge',
  'exposure-do-not-wait': 'Do not wait for her answer',
  'exposure-no-dressing': 'WHO puts no dressing on',
  'exposure-dressing': 'Wales covers the wound',
  'exposure-her-too': 'Her visit too',
} as const satisfies Readonly<Record<keyof typeof exposureFacts, string>>;
