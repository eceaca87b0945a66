/** Spectra hold 36 bands, 380 to 730 nm in steps of 10: the range in which skin and pigment were measured. */
export const firstBandNm = 380;
export const bandStepNm = 10;
export const bandCount = 36;

/** A reflectance, an absorption or a scattering at each band. */
export type Spectrum = readonly number[];

/** The middle of each band, nm. */
export const bandsNm: Spectrum = Array.from({ length: bandCount }, (_, i) => firstBandNm + i * bandStepNm);

/** The same sum for each band: `make` is given the band's number and its middle. */
export function forBands(make: (band: number, nm: number) => number): Spectrum {
  return bandsNm.map((nm, band) => make(band, nm));
}
