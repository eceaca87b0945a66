import type { midlineFacts } from '#lib/mapping/facts/midline.ts';

/** What each fact about the midline and the level is, in a few plain words. */
export const midlineFactNames = {
  'fronts-uneven': 'People with a leaning nose whose fronts are uneven',
  'front-shift-men-mm': 'Mean shift of the fronts, men with a leaning nose',
  'front-shift-women-mm': 'Mean shift of the fronts, women with a leaning nose',
  'front-shift-with-nose': 'Women whose fronts had followed the nose',
  'front-shift-second-study-mm': 'Mean shift of the fronts in a second study',
  'nose-off-midline-mm': 'How far a leaning nose stands off the midline, mean',
  'nose-off-midline-spread-mm': 'Spread of that distance',
  'head-tilt-repeat-deg': 'How well a head is held upright twice',
  'head-tilt-usual-deg': 'How far heads usually lean to one side',
  'trusted-from-weight': 'Weight below which a mark is called not trusted',
  'scatter-floor-mm': 'Least scatter of the marks that is believed',
  'biweight-constant': 'Constant of the weights (biweight)',
  'arches-apart-mm': 'Distance from arch to arch used for the tilt',
  'tilt-seen-deg': 'Tilt of the eyes that people begin to see',
  'thread-length-mm': 'Length of a thread from hand to hand',
  'tilt-1-deg-fakes-mm': 'Height difference faked by a tilt of 1°',
  'tilt-2-deg-fakes-mm': 'Height difference faked by a tilt of 2°',
  'tilt-3-deg-fakes-mm': 'Height difference faked by a tilt of 3°',
  'placing-tolerance-mm': 'How near a placed point must be to count as right',
} as const satisfies Readonly<Record<keyof typeof midlineFacts, string>>;
