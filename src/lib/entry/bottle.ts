import { bottleOf as insideBottle } from '../colour/pigment/bottles.ts';
import { labelFaultsOf as insideFaults, type InkLabel } from '../colour/label/labelFault.ts';
import { masstone as insideMasstone } from '../colour/layers/masstone.ts';
import { calibrateSpectra as insideSpectra } from '../colour/own/calibrateSpectra.ts';
import {
  calibrateSwatches as insideSwatches,
  finishes,
  type TwoSwatches,
} from '../colour/own/calibrateSwatches.ts';
import { readyBottle as insideReady, type OwnContent } from '../colour/own/ownBottle.ts';
import { ownSlots } from '../colour/own/ownSlots.ts';
import { mixLayer as insideMix } from '../colour/pigment/pigments.ts';
import { swatchTrust as insideTrust } from '../colour/pigment/swatchTrust.ts';
import * as of from './colourDomains.ts';
import {
  above0,
  between,
  either,
  maybe,
  oneOf,
  refusing,
  shape,
  throwing,
  whole,
  yesOrNo,
  type Checked,
} from './domain.ts';

export { bottleIds, type BottleId } from '../colour/pigment/bottleIds.ts';
export { bottles, noPigment, type Bottle, type Parts } from '../colour/pigment/bottles.ts';
export { labelFaults, type InkLabel, type LabelFault } from '../colour/label/labelFault.ts';
export type { Calibrated } from '../colour/own/calibrateSpectra.ts';
export {
  finishes,
  type Finish,
  type FromSwatches,
  type SwatchReason,
  type TwoSwatches,
} from '../colour/own/calibrateSwatches.ts';
export type { OwnBottle, OwnContent, ReadyBottle } from '../colour/own/ownBottle.ts';
export { ownSlots, type OwnSlot } from '../colour/own/ownSlots.ts';
export type { TintReason } from '../colour/own/scatterFromTint.ts';

const { lab, lamp } = of;

const anyLamp = maybe(lamp);

/** A bottle from parts of its pigments, in any unit. */
export const bottleOf: typeof insideBottle = throwing(insideBottle, 'id parts', of.bottleId, of.parts);

/** The layer of a mix at a dose, each pigment strengthened or faded by a factor of its own. */
export const mixLayer: typeof insideMix = throwing(
  insideMix,
  'shares dose factors',
  of.shares,
  of.dose,
  maybe(of.someFactors),
);

/** The colour of a thick layer of a mix. */
export const masstone: typeof insideMasstone = throwing(insideMasstone, 'shares lamp', of.shares, anyLamp);

const finish = oneOf(finishes);

const drops = above0(10_000);

const twoSwatches = {
  masstone: lab,
  tint: lab,
  drops: between(0, 10_000),
  whiteDrops: between(0, 10_000),
  finish,
};

const content = either(
  shape<Extract<OwnContent, { from: 'shares' }>>({ from: oneOf(['shares']), parts: of.parts }),
  either(
    shape<Extract<OwnContent, { from: 'swatch' }>>({ from: oneOf(['swatch']), lab, finish }),
    shape<Extract<OwnContent, { from: 'two-swatches' }>>({ from: oneOf(['two-swatches']), ...twoSwatches }),
  ),
);

/** A bottle of one's own as the model mixes it, or where and why it cannot be. */
export const readyBottle: Checked<typeof insideReady> = refusing(
  insideReady,
  'own',
  shape<Parameters<typeof insideReady>[0]>({ slot: oneOf(ownSlots), content }),
);

/** A pigment's layer from its colour when thick and one tint in white. */
export const calibrateSwatches: Checked<typeof insideSwatches> = refusing(
  insideSwatches,
  'swatches',
  shape<TwoSwatches>(twoSwatches),
);

/** The same from spectra. */
export const calibrateSpectra: Checked<typeof insideSpectra> = refusing(
  insideSpectra,
  'masstone tint white drops whiteDrops',
  of.spectrum,
  of.spectrum,
  of.layerSpectrum,
  drops,
  drops,
);

/** What may be said of a colour known by its swatch alone. */
export const swatchTrust: typeof insideTrust = throwing(insideTrust, 'lab', lab);

const month = shape({ year: whole(1900, 9999), month: whole(1, 12) });

/** What keeps a bottle shut, by its label. */
export const labelFaultsOf: typeof insideFaults = throwing(
  insideFaults,
  'label today',
  shape<InkLabel>({ saysUse: yesOrNo, hasLot: yesOrNo, listsIngredients: yesOrNo, last: month }),
  month,
);
