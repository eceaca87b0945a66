import { bottleMoves as insideMoves } from '../colour/pigment/bottleMoves.ts';
import { drift as insideDrift } from '../colour/healing/drift.ts';
import { healedColour as insideHealed } from '../colour/healing/healedColour.ts';
import { asPutIn as insidePutIn, mixOutlook as insideOutlook } from '../colour/healing/mixOutlook.ts';
import { overOldPigment as insideOver } from '../colour/pigment/oldPigment.ts';
import { partedAt as insideParted, skinOptics as insideOptics } from '../colour/layers/skinOptics.ts';
import { skinSpectrum as insideSkin } from '../colour/layers/skinSpectrum.ts';
import {
  leftOf as insideLeft,
  outcomesAround as insideOutcomes,
  plainPrediction as insidePlain,
  simulatedHealings as insideHealings,
} from '../colour/healing/uncertainHealing.ts';
import { underLamps as insideLamps } from '../colour/spectrum/underLamps.ts';
import { whatMatters as insideMatters, type Mix } from '../colour/healing/whatMatters.ts';
import * as of from './colourDomains.ts';
import { list, maybe, refusing, shape, throwing, type Checked } from './domain.ts';
import { draws, most, seed, share, years } from './units.ts';

export type { BottleMove } from '../colour/pigment/bottleMoves.ts';
export type { LabRanges, Predicted } from '../colour/layers/darkPart.ts';
export type { DriftPoint, Nine } from '../colour/healing/drift.ts';
export type { Setting } from '../colour/healing/healedColour.ts';
export type { Move as ColourMove } from '../colour/spaces/hueCosine.ts';
export type { MixOutlook, Outlook } from '../colour/healing/mixOutlook.ts';
export { modelValues } from '../colour/numbers/model.ts';
export type { OverOldPigment } from '../colour/pigment/oldPigment.ts';
export {
  pigmentIds,
  pigmentLayers,
  type Factors,
  type PigmentId,
  type Shares,
} from '../colour/pigment/pigments.ts';
export type { SkinOptics, VeiledSkin } from '../colour/layers/skinOptics.ts';
export type { NoSkinSpectrum, SkinSpectrum } from '../colour/layers/skinSpectrum.ts';
export type { Triple } from '../algebra/solve3.ts';
export { startAgeing, startDoubts } from '../colour/numbers/ageing.ts';
export type { SwatchTrust } from '../colour/pigment/swatchTrust.ts';
export type { Ageing, AtYears, Doubts, Kept, Outcomes, Plan } from '../colour/healing/uncertainHealing.ts';
export type { TwoLooks, UnderLamps } from '../colour/spectrum/underLamps.ts';
export type { LayerSpectrum, SkinFractions } from '../colour/layers/veil.ts';
export type { Cause, Matter, Mix } from '../colour/healing/whatMatters.ts';

const { lab, lamp } = of;

const anyLamp = maybe(lamp);

/** The spectrum of a skin from its L*a*b* under D65. */
export const skinSpectrum: Checked<typeof insideSkin> = refusing(insideSkin, 'lab', lab);

/** A skin with everything the layers need, from its L*a*b* under D65. */
export const skinOptics: Checked<typeof insideOptics> = refusing(insideOptics, 'lab', lab);

/** A skin with old pigment in it: the bare skin beside it, and what is seen. */
export const overOldPigment: Checked<typeof insideOver> = refusing(insideOver, 'skin seen', lab, lab);

/** The skin parted at a depth in the model, mm. */
export const partedAt: typeof insideParted = throwing(
  insideParted,
  'skin depthMm veilShare',
  of.skin,
  of.depthMm,
  maybe(share),
);

/** The colour of skin with a layer of pigment in it. */
export const healedColour: typeof insideHealed = throwing(
  insideHealed,
  'skin layer setting lamp',
  of.skin,
  of.layerSpectrum,
  of.setting,
  anyLamp,
);

/** What is left of each pigment after so many years; 0 stands for six weeks. */
export const leftOf: typeof insideLeft = throwing(insideLeft, 'ageing years', of.ageing, years);

/** The colour of a plan after so many years, everything as assumed. */
export const plainPrediction: typeof insidePlain = throwing(
  insidePlain,
  'skin plan years lamp',
  of.skin,
  of.plan,
  years,
  anyLamp,
);

/** Seeded healings of a plan, each a colour at each time. */
export const simulatedHealings: typeof insideHealings = throwing(
  insideHealings,
  'skin plan times draws seed lamp',
  of.skin,
  of.plan,
  of.timeList,
  draws,
  seed,
  anyLamp,
);

/** How many of some healings come near a target, end darker, lean red or green, as shares. */
export const outcomesAround: typeof insideOutcomes = throwing(
  insideOutcomes,
  'healings target near',
  list(lab, most),
  lab,
  of.difference,
);

/** What becomes of a mix at several times: plain prediction, ranges, leans. */
export const mixOutlook: typeof insideOutlook = throwing(
  insideOutlook,
  'skin plan times draws seed lamp',
  of.skin,
  of.plan,
  of.timeList,
  draws,
  seed,
  anyLamp,
);

/** The colour of a fresh mix if all of it stayed. */
export const asPutIn: typeof insidePutIn = throwing(
  insidePutIn,
  'skin shares dose setting lamp',
  of.skin,
  of.shares,
  of.dose,
  of.setting,
  anyLamp,
);

/** The colour from fresh on, with the ranges of nine healings in ten. */
export const drift: typeof insideDrift = throwing(
  insideDrift,
  'skin plan times draws seed lamp',
  of.skin,
  of.plan,
  of.timeList,
  draws,
  seed,
  anyLamp,
);

/** What moves a healed colour, largest first. */
export const whatMatters: typeof insideMatters = throwing(
  insideMatters,
  'skin mix lamp',
  of.skin,
  shape<Mix>({ shares: of.shares, dose: of.dose, setting: of.setting, left: of.factors }),
  anyLamp,
);

/** One plan in daylight and under another lamp. */
export const underLamps: typeof insideLamps = throwing(
  insideLamps,
  'skin plan times lamp',
  of.skin,
  of.plan,
  of.timeList,
  lamp,
);

/** Where one small dose of each bottle moves a skin with old pigment, best direction first. */
export const bottleMoves: typeof insideMoves = throwing(
  insideMoves,
  'skin bare bottles dose setting left',
  of.skin,
  lab,
  of.bottleList,
  of.dose,
  of.setting,
  of.factors,
);
