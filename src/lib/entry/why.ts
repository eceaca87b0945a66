import { fittingSet as insideFitting } from '../colour/healing/fittingSet.ts';
import { dosesBetween as insideDoses } from '../colour/healing/healingAxes.ts';
import {
  healingMap as insideMap,
  type HealedReading,
  type HealedWork,
  type HealingAxes,
  type HealingCell,
} from '../colour/healing/healingMap.ts';
import * as of from './colourDomains.ts';
import { above0, between, list, shape, throwing } from './domain.ts';
import { share, years } from './units.ts';

export type { CellLook, DepthRow, Ends, FittingSet } from '../colour/healing/fittingSet.ts';
export { depthsLookedAt, lossesLookedAt } from '../colour/healing/healingAxes.ts';
export type { HealedReading, HealedWork, HealingAxes, HealingCell } from '../colour/healing/healingMap.ts';

const { lab } = of;

const loss = between(0, 100);

const readings = list(shape<HealedReading>({ years, seen: lab }), 100, 1);

const work = shape<HealedWork>({
  skin: of.skin,
  shares: of.shares,
  setting: shape({ coverage: of.coverage, veilShare: share }),
  ageing: of.ageing,
  readings,
  error: of.difference,
});

const axes = shape<HealingAxes>({
  depthsMm: list(of.depthMm, 1000, 1),
  doses: list(of.dose, 1000, 1),
  losses: list(loss, 100, 1),
});

/** Doses from one to another, each the same share above the last. */
export const dosesBetween: typeof insideDoses = throwing(insideDoses, 'lo hi', above0(10), above0(10));

/** How each depth and dose fits what was seen of healed work. */
export const healingMap: typeof insideMap = throwing(insideMap, 'work axes', work, axes);

const cell = shape<HealingCell>({
  depthMm: of.depthMm,
  dose: of.dose,
  fits: list(loss, 100),
  loss,
  difference: of.difference,
});

/** What of such a map fits, as ranges; never one cause. */
export const fittingSet: typeof insideFitting = throwing(insideFitting, 'cells', list(cell, 1_000_000));
