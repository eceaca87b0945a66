import { ciede2000 as insideDifference } from '../colour/spaces/ciede2000.ts';
import { ita as insideIta } from '../colour/spaces/ita.ts';
import {
  absorptionRatio as insideRatio,
  layerOver as insideOver,
  layerTransmittance as insideThrough,
  thickReflectance as insideThick,
  underLayer as insideUnder,
} from '../colour/layers/kubelkaMunk.ts';
import { labToXyz as insideToXyz, xyzToLab as insideToLab } from '../colour/spaces/lab.ts';
import { labToLch as insideToLch, lchToLab as insideFromLch, type Lch } from '../colour/spaces/lch.ts';
import {
  spectrumToLab as insideSpectrumLab,
  spectrumToXyz as insideSpectrumXyz,
} from '../colour/spectrum/observe.ts';
import {
  seenThroughSurface as insideSeen,
  withinSurface as insideWithin,
} from '../colour/layers/saunderson.ts';
import { smoothSpectrum as insideSmooth } from '../colour/spectrum/smoothSpectrum.ts';
import { labToSrgb as insideToSrgb, srgbToHex as insideHex, type Srgb } from '../colour/spaces/srgb.ts';
import { srgbToLab as insideFromSrgb } from '../colour/spaces/srgbToLab.ts';
import {
  lightnessTooHigh as insideTooHigh,
  lightSlope as insideSlope,
  type LightSlope,
} from '../colour/reading/lightSlope.ts';
import { patchOf as insidePatch } from '../colour/reading/patchOf.ts';
import { photoReading as insidePhoto, type Patch } from '../colour/reading/photoReading.ts';
import { photoSkin as insidePhotoSkin, tintOf as insideTint } from '../colour/reading/photoSkin.ts';
import { skinPlausibility as insidePlausible } from '../colour/reading/skinPlausibility.ts';
import { readSkin as insideSkin } from '../colour/reading/skinReading.ts';
import * as of from './colourDomains.ts';
import {
  between,
  list,
  maybe,
  oneOf,
  refusing,
  shape,
  throwing,
  whole,
  yesOrNo,
  type Checked,
} from './domain.ts';
import { degrees, most, share } from './units.ts';

export type { Spectrum } from '../colour/spectrum/bands.ts';
export { lamps, type Lamp } from '../colour/spectrum/lamps.ts';
export type { Lab, Xyz } from '../colour/spaces/lab.ts';
export type { Lch } from '../colour/spaces/lch.ts';
export type { Srgb } from '../colour/spaces/srgb.ts';
export type { Rgb } from '../colour/spaces/srgbToLab.ts';
export { itaClasses, type Ita, type ItaClass } from '../colour/spaces/ita.ts';
export type { Layer, Under } from '../colour/layers/kubelkaMunk.ts';
export type { Surface } from '../colour/layers/saunderson.ts';
export type { SmoothSpectrum } from '../colour/spectrum/smoothSpectrum.ts';
export type { HueLean } from '../colour/reading/hueLean.ts';
export type { LabBox, Span } from '../colour/reading/labBox.ts';
export type { LightSlope } from '../colour/reading/lightSlope.ts';
export type { Patch, PhotoReading } from '../colour/reading/photoReading.ts';
export type { PhotoSkin } from '../colour/reading/photoSkin.ts';
export type { Plausibility } from '../colour/reading/skinPlausibility.ts';
export type { SkinReading, Touch } from '../colour/reading/skinReading.ts';

/** The colour difference CIEDE2000; both colours in the same light. */
export const ciede2000: typeof insideDifference = throwing(insideDifference, 'one other', of.lab, of.lab);
/** The light a reflectance of 36 bands (380 to 730 nm) sends to the eye under a lamp. */
export const spectrumToXyz: typeof insideSpectrumXyz = throwing(
  insideSpectrumXyz,
  'spectrum lamp',
  of.spectrum,
  maybe(of.lamp),
);
/** CIELAB of such a reflectance, against the lamp's own white. */
export const spectrumToLab: typeof insideSpectrumLab = throwing(
  insideSpectrumLab,
  'spectrum lamp',
  of.spectrum,
  maybe(of.lamp),
);
/** CIELAB to tristimulus values against a white. */
export const labToXyz: typeof insideToXyz = throwing(insideToXyz, 'lab white', of.lab, of.white);
/** Tristimulus values to CIELAB against a white. */
export const xyzToLab: typeof insideToLab = throwing(insideToLab, 'xyz white', of.xyz, of.white);
/** Lightness, chroma and hue angle, degrees. */
export const labToLch: typeof insideToLch = throwing(insideToLch, 'lab', of.lab);
/** The way back. */
export const lchToLab: typeof insideFromLch = throwing(
  insideFromLch,
  'lch',
  shape<Lch>({ l: between(-0.001, 100.001), c: between(0, 283), hDeg: degrees }),
);
/** How a screen shows a colour; `isClipped` where it cannot. */
export const labToSrgb: typeof insideToSrgb = throwing(insideToSrgb, 'lab', of.lab);
/** "#a1b2c3" from red, green and blue, 0 to 1. */
export const srgbToHex: typeof insideHex = throwing(
  insideHex,
  'srgb',
  shape<Srgb>({ r: share, g: share, b: share, isClipped: yesOrNo }),
);
/** What a coded colour of a screen or a picture is, red, green and blue 0 to 1. */
export const srgbToLab: typeof insideFromSrgb = throwing(insideFromSrgb, 'rgb', of.rgb);
/** The individual typology angle of a skin, degrees, and its class. */
export const ita: Checked<typeof insideIta> = refusing(
  insideIta,
  'lab',
  shape({ l: between(-0.001, 100.001), b: between(-200, 200) }),
);

/** A skin from readings of an instrument, with its interval. */
export const readSkin: Checked<typeof insideSkin> = refusing(
  insideSkin,
  'readings touch',
  list(of.lab, 1000),
  oneOf(['untouched', 'touched', 'not-known']),
);
const byte = between(0, 255);
const dots = list(byte, 64_000_000);
/** A patch from its dots, red, green, blue and opacity of each in turn, 0 to 255. */
export const patchOf: typeof insidePatch = throwing(insidePatch, 'dots', dots);
const patch = shape<Patch>({ mean: of.rgb, spread: of.rgb, clippedShare: share });
/** L*a*b* of skin from a picture that holds a grey card, with its interval. */
export const photoReading: Checked<typeof insidePhoto> = refusing(
  insidePhoto,
  'skin card cardReflectance',
  patch,
  maybe(patch),
  share,
);
/** The same, read as a skin. */
export const photoSkin: Checked<typeof insidePhotoSkin> = refusing(
  insidePhotoSkin,
  'skin card cardReflectance',
  patch,
  maybe(patch),
  share,
);
/** How many times as strong the strongest channel of a patch is as the weakest; Infinity where one gives no light. */
export const tintOf: typeof insideTint = throwing(insideTint, 'patch', patch);
/** How the light on a flat, square card changes from dot to dot. */
export const lightSlope: typeof insideSlope = throwing(insideSlope, 'dots side', dots, whole(0, 8000));
const steep = between(-10, 10);
const away = between(-most, most);
/** How much lighter skin reads than it is because it stands in more light than the card, in L*. */
export const lightnessTooHigh: typeof insideTooHigh = throwing(
  insideTooHigh,
  'lightness slope toSkin',
  between(0, 100),
  shape<LightSlope>({ across: steep, down: steep, off: between(0, 10) }),
  shape({ across: away, down: away }),
);
/** Whether a colour is like the measured skins. */
export const skinPlausibility: typeof insidePlausible = throwing(insidePlausible, 'lab', of.lab);

/** K/S of a thick layer from the share of light it throws back. */
export const absorptionRatio: typeof insideRatio = throwing(insideRatio, 'reflectance', between(1e-6, 1));
/** The share of light a thick layer throws back, from its K/S. */
export const thickReflectance: typeof insideThick = throwing(insideThick, 'ratio', between(0, 1e9));
/** The share of light a layer over a ground throws back (Kubelka–Munk). */
export const layerOver: typeof insideOver = throwing(insideOver, 'layer under', of.layer, of.reflectance);
/** The share of light that passes a layer. */
export const layerTransmittance: typeof insideThrough = throwing(insideThrough, 'layer', of.layer);
/** What must lie under a layer for the whole to be as seen. */
export const underLayer: Checked<typeof insideUnder> = refusing(
  insideUnder,
  'layer seen',
  of.layer,
  of.reflectance,
);
const shine = oneOf(['included', 'excluded']);
/** What is seen of a reflectance within a surface (Saunderson). */
export const seenThroughSurface: typeof insideSeen = throwing(
  insideSeen,
  'within surface shine',
  of.reflectance,
  of.surface,
  maybe(shine),
);
/** The way back. */
export const withinSurface: typeof insideWithin = throwing(
  insideWithin,
  'seen surface shine',
  of.reflectance,
  of.surface,
  maybe(shine),
);
/** A smooth reflectance of a colour under D65, for paint whose spectrum is not known. */
export const smoothSpectrum: Checked<typeof insideSmooth> = refusing(insideSmooth, 'lab', of.lab);
