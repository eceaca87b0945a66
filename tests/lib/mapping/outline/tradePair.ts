import type { Brow } from '#lib/mapping/marks/brow.ts';
import {
  tradeChecks,
  type BrowsOnFace,
  type TradeCheck,
  type TradeChoices,
  type TradeReport,
} from '#lib/mapping/outline/tradeChecks.ts';
import { at } from './brows.ts';

export const face = { noseWing: at(20, -40), innerCorner: at(16, -1), outerCorner: at(50, 0) };

export const brow: Brow = {
  frontLower: at(16, 10),
  frontTop: at(17, 17),
  archTop: at(40, 21),
  archLower: at(39, 15),
  tail: at(55, 12),
};

export const choices: TradeChoices = {
  anchor: 'inner-corner',
  ownMm: 18,
  edge: 'frontLower',
  nostrilShare: 0.6,
  readingMm: 0.3,
  k: 2,
  stations: [0.25, 0.5],
};

export function checked(
  right: Partial<BrowsOnFace['right']> = {},
  left: Partial<BrowsOnFace['left']> = {},
  more: Partial<TradeChoices> = {},
): TradeReport {
  const report = tradeChecks(
    { right: { ...face, ...brow, ...right }, left: { ...face, ...brow, ...left } },
    { ...choices, ...more },
  );
  if (!report.ok) throw new Error(report.reason);
  return report;
}

export const find = ({ checks }: TradeReport, id: TradeCheck['id'], of?: string | number): TradeCheck => {
  const found = checks.find(
    (check) =>
      check.id === id &&
      (of === undefined ||
        ('side' in check && check.side === of) ||
        ('share' in check && check.share === of)),
  );
  if (!found) throw new Error(`No check ${id}.`);
  return found;
};
