import type { opticsFacts } from '#lib/colour/facts/optics.ts';

/** What each fact about light in skin is, in a few plain words. */
export const colourOpticsFactNames = {
  'blood-haemoglobin': 'Haemoglobin in a litre of blood',
  'haemoglobin-molar-mass': 'Molar mass of haemoglobin',
  'skin-baseline': 'Absorption of skin without melanin and blood, constant part',
  'melanosome-power': 'How steeply melanin’s absorption falls towards red (power)',
  'melanosome-at-500-nm': 'Absorption inside a melanosome at 500 nm',
  'skin-scattering-at-500-nm': 'Reduced scattering of skin at 500 nm',
  'surface-outside': 'Share of light a skin’s surface throws back',
  'surface-inside': 'Share of light on its way out that the surface throws back in',
  'epidermis-mm': 'Epidermis above the pigment, in the model',
  'blood-saturation': 'Share of blood that carries oxygen, in the model',
  'veil-share': 'Share of textbook backscatter above the pigment',
  'model-depth-mm': 'Depth of the pigment, in the model',
} as const satisfies Readonly<Record<keyof typeof opticsFacts, string>>;
