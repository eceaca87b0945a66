import type { skinMeasuredFacts } from '#lib/colour/facts/skinMeasured.ts';

/** What each fact about measured skin is, in a few plain words. */
export const skinMeasuredFactNames = {
  'skin-people-measured': 'People whose skin was measured in one study',
  'skin-mean-l': 'Mean L* of the skin of 600 people',
  'skin-mean-a': 'Mean a* of the skin of 600 people',
  'skin-mean-b': 'Mean b* of the skin of 600 people',
  'forehead-l': 'Mean L* of the forehead',
  'inner-arm-l': 'Mean L* of the inner arm',
  'forehead-arm-apart': 'Colour difference of forehead and inner upper arm',
  'forehead-hue-deg': 'Mean hue angle of foreheads',
  'forehead-hue-spread-deg': 'Spread of that hue angle',
  'forearm-hue-deg': 'Mean hue angle of forearms',
  'skin-reading-repeats': 'How far readings of one place of skin repeat',
  'sun-two-weeks-apart': 'What two weeks of sun change',
} as const satisfies Readonly<Record<keyof typeof skinMeasuredFacts, string>>;
