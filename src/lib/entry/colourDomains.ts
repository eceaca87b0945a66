import { bandCount } from '../colour/spectrum/bands.ts';
import { wholeOf, type Bottle, type Parts } from '../colour/pigment/bottles.ts';
import type { Dots, Strokes } from '../colour/coverage/coverage.ts';
import type { Setting } from '../colour/healing/healedColour.ts';
import type { Layer } from '../colour/layers/kubelkaMunk.ts';
import type { Lab, Xyz } from '../colour/spaces/lab.ts';
import { lamps } from '../colour/spectrum/lamps.ts';
import { pigmentIds, type Factors, type Shares } from '../colour/pigment/pigments.ts';
import type { Surface } from '../colour/layers/saunderson.ts';
import type { SkinOptics } from '../colour/layers/skinOptics.ts';
import type { Rgb } from '../colour/spaces/srgbToLab.ts';
import type { Ageing, Doubts, Plan } from '../colour/healing/uncertainHealing.ts';
import {
  above0,
  also,
  between,
  list,
  maybe,
  ok,
  oneOf,
  shape,
  text,
  yesOrNo,
  type Domain,
} from './domain.ts';
import { lengthMm, share, years } from './units.ts';

/** L* from 0 to 100, with room for rounding; a* and b* as far as any surface reaches. */
export const lab = shape<Lab>({ l: between(-0.001, 100.001), a: between(-200, 200), b: between(-200, 200) });
/** Differences between colours, up to black against white. */
export const difference = between(0, 200);
export const xyz = shape<Xyz>({ x: between(0, 200), y: between(0, 200), z: between(0, 200) });
export const white = shape<Xyz>({ x: above0(200), y: above0(200), z: above0(200) });
export const rgb = shape<Rgb>({ r: share, g: share, b: share });
export const lamp = oneOf(lamps);

/** A share of light that comes back: 0.6, never 60. */
export const reflectance = share;
/** 36 bands. A perfect diffuser is 1; powders read a little over it. */
export const spectrum = list(between(0, 1.2), bandCount, bandCount);
export const layer = shape<Layer>({ k: between(0, 1e6), s: between(0, 1e6) });
export const layerSpectrum = list(layer, bandCount, bandCount);
export const surface = shape<Surface>({ outside: share, inside: share });
const fractions = shape({ melanosomes: between(0, 10), blood: between(0, 10) });
export const skin = shape<SkinOptics>({
  ok,
  reflectance: spectrum,
  isOutsideMeasured: yesOrNo,
  surfaces: list(surface, bandCount, bandCount),
  inside: spectrum,
  fractions,
});

/** Depth in the model, mm: not a needle length. */
export const depthMm = between(0, 2);
export const dose = between(0, 10);
export const coverage = share;
export const setting = shape<Setting>({ depthMm, coverage, veilShare: share });

/** Shares of a bottle may miss 1 by so much: rounded to hundredths they do. */
const sharesOff = 0.02;
const shareParts = shape<Shares>({
  '77891': share,
  '77492': share,
  '77491': share,
  '77499': share,
  '77266': share,
  own: maybe(layerSpectrum),
});
export const shares: Domain<Shares> = also(
  shareParts,
  (given) => {
    const sum = pigmentIds.reduce((all, id) => all + given[id], 0);
    return sum <= 1 + sharesOff && (given.own !== undefined || sum >= 1 - sharesOff);
  },
  'be shares that add to 1 (bottleOf makes them from parts)',
);
/** Pigment that is stronger or fades: 1 as assumed. */
const times = between(0, 100);
export const factors = shape<Factors>({ ...each5(times), ownLeft: maybe(times) });
export const someFactors = shape<Partial<Factors>>({ ...each5(maybe(times)), ownLeft: maybe(times) });
const kept = shape({ keptAtSixWeeks: share, lostPerYear: share });
export const ageing = shape<Ageing>({ ...each5(kept), own: maybe(kept) });
const spread = between(0, 5);
const doubts = shape<Doubts>({
  strength: spread,
  dose: spread,
  depth: spread,
  kept: spread,
  lost: spread,
  veilLo: share,
  veilHi: share,
});
export const plan = shape<Plan>({ shares, dose, setting, ageing, doubts });
export const timeList = list(years, 100, 1);

export const bottleId = text;
const amount = maybe(between(0, 1e6));
/** Parts of each pigment, in any unit; some of one at least. */
export const parts: Domain<Parts> = also(
  shape<Parts>(each5(amount)),
  (given) => wholeOf(given) > 0,
  'hold more than 0 of a pigment',
);
const bottle = shape<Bottle>({ id: text, shares });
export const bottleList = list(bottle, 64, 1);

const count = between(0, 100_000);
export const areaMm2 = between(0, 1e6);
export const strokes = shape<Strokes>({ count, lengthMm, widthMm: lengthMm, areaMm2 });
export const dots = shape<Dots>({ perMm2: between(0, 10_000), diameterMm: lengthMm });

/** The same domain for each of the five pigments. */
function each5<T>(part: Domain<T>) {
  return { '77891': part, '77492': part, '77491': part, '77499': part, '77266': part };
}
