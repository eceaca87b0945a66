import type { measuringFacts } from '#lib/mapping/facts/measuring.ts';

/** What each fact about errors of measuring is, in a few plain words. */
export const measuringFactNames = {
  'caliper-error-near-eye-mm': 'Technical error by caliper near the eye',
  'photo-error-near-eye-mm': 'Technical error on one photograph, same person',
  'photo-error-two-people-mm': 'Technical error on one photograph, two people',
  'unmarked-disagreement-mm': 'Disagreement when the points were not marked first',
  'marked-disagreement-mm': 'Disagreement when the points were marked first',
  'photo-measures-tried': 'Face measures that can be taken from photographs',
  'photo-measures-reliable': 'Of those, the ones that agree with the face',
  'second-photo-mm': 'Error when a second set of photographs is taken',
  'same-photo-again-mm': 'Error when the same photograph is marked again',
  'factor-95': 'Coverage factor of a single comparison at 95 %',
  'repeat-factor': 'Factor from technical error to repeatability',
  'family-false-alarm': 'Accepted share of false alarms on a page',
  'one-test-level-of-ten': 'Level of each test when ten are made',
  'ten-comparisons': 'Comparisons made on one face',
  'false-alarm-of-ten': 'Symmetric faces on which ten single tests raise a false alarm',
  'factor-of-ten': 'Coverage factor when ten comparisons are made',
  'pencil-half-width-mm': 'Half a pencil line',
  'caliper-half-width-mm': 'Half a caliper step',
  'thread-half-width-mm': 'Half a thread line',
  'example-error-mm': 'Technical error to begin with',
  'pairs-for-own-error': 'Pairs of readings for an own technical error',
} as const satisfies Readonly<Record<keyof typeof measuringFacts, string>>;
