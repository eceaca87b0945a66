/**
 * The bare numbers of the colour model that pages compute with: written here once, and given their sources in
 * facts/.
 * Those marked assumed have sliders or ranges; none is a measured property of a person or a bottle.
 */
export const modelValues = {
  /** Share of light a skin's surface throws back before it enters, refractive index 1.4. */
  surfaceOutside: 0.028,
  /** Share of the light on its way out that the surface throws back in. */
  surfaceInside: 0.53,
  /** Epidermis above the pigment, mm (assumed; histology and ultrasound differ four-fold). */
  epidermisMm: 0.06,
  /** Interior of a melanosome, cm⁻¹: this times the wavelength in nm to this power, below zero. */
  melanosomeTimes: 1.7e12,
  melanosomePower: 3.48,
  /** Skin without melanin and blood, cm⁻¹: constant part, and the part that rises towards blue. */
  baselinePerCm: 0.244,
  baselineBluePerCm: 85.3,
  /** Reduced scattering at 500 nm, cm⁻¹, falling with this power: mean of eight studies of skin. */
  scatteringPerCm: 46,
  scatteringPower: 1.421,
  /** What fits to 100 measured skins ask of those two (computed). */
  scatteringTimes: 1.37,
  baselineTimes: 0.21,
  /** Haemoglobin in blood, g/l, and its molar mass. */
  bloodGramsPerLitre: 150,
  haemoglobinGramsPerMol: 66500,
  /** Share of blood that carries oxygen (assumed). */
  saturation: 0.75,
  /** Share of textbook backscatter that a thin layer above the pigment gives (assumed), and its range. */
  veilShare: 0.35,
  veilShareLo: 0.25,
  veilShareHi: 0.45,
  /** Depth of the pigment under the surface in the model, mm (assumed): not a needle length. */
  depthMm: 0.1,
  /** Colour difference (CIEDE2000) below which a recipe counts as reaching its target (assumed). */
  reachedBelow: 3,
} as const;
