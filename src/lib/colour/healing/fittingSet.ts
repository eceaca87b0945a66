import type { HealingCell } from './healingMap.ts';

/** From the lowest to the highest. */
export type Ends = Readonly<{ lo: number; hi: number }>;

/** How one cell fits: with the loss as assumed, with another loss only, or not at all. */
export type CellLook = 'as-assumed' | 'another-loss' | 'none';

/**
 * One depth: how each of its doses fits, in the order of the cells, which fit, and how near the nearest
 * comes.
 */
export type DepthRow = Readonly<{
  depthMm: number;
  looks: readonly CellLook[];
  doses: Ends | undefined;
  losses: Ends | undefined;
  difference: number;
}>;

/** The cells of a map that fit, as ranges; never one cause. */
export type FittingSet = Readonly<{
  /** How many depths with a dose fit, and how many were looked at. */
  count: number;
  of: number;
  /** Undefined where nothing fits. */
  ranges: Readonly<{ depthMm: Ends; dose: Ends; loss: Ends }> | undefined;
  /** Deeper work with more pigment fits as well as shallower work with less. */
  isTied: boolean;
  /** The cell that comes nearest, whether it fits or not. */
  nearest: HealingCell | undefined;
  rows: readonly DepthRow[];
}>;

function endsOf(values: readonly number[]): Ends | undefined {
  return values.length > 0 ? { lo: Math.min(...values), hi: Math.max(...values) } : undefined;
}

function lookOf({ fits }: HealingCell): CellLook {
  if (fits.length === 0) return 'none';
  return fits.includes(1) ? 'as-assumed' : 'another-loss';
}

const smallest = (cells: readonly HealingCell[]) =>
  cells.toSorted((one, other) => one.difference - other.difference)[0];

/** What fits, depth by depth and as a whole. Rows go down, whatever the order of the cells. */
export function fittingSet(cells: readonly HealingCell[]): FittingSet {
  const fitting = cells.filter(({ fits }) => fits.length > 0);
  const rows = [...new Set(cells.map(({ depthMm }) => depthMm))]
    .sort((a, b) => a - b)
    .map((depthMm): DepthRow => {
      const here = cells.filter((cell) => cell.depthMm === depthMm);
      const fitHere = here.filter(({ fits }) => fits.length > 0);
      return {
        depthMm,
        looks: here.map(lookOf),
        doses: endsOf(fitHere.map(({ dose }) => dose)),
        losses: endsOf(fitHere.flatMap(({ fits }) => fits)),
        difference: smallest(here)?.difference ?? Infinity,
      };
    });
  const [depthMm, dose, loss] = [
    endsOf(fitting.map((cell) => cell.depthMm)),
    endsOf(fitting.map((cell) => cell.dose)),
    endsOf(fitting.flatMap(({ fits }) => fits)),
  ];
  // Twice the middle dose of each depth that fits: where it grows, deeper wants more.
  const middles = rows.flatMap(({ doses }) => (doses ? [doses.lo + doses.hi] : []));
  return {
    count: fitting.length,
    of: cells.length,
    ranges: depthMm && dose && loss && { depthMm, dose, loss },
    isTied: (middles.at(-1) ?? 0) > (middles[0] ?? 0),
    nearest: smallest(cells),
    rows,
  };
}
