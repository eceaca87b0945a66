import { leftOf } from '../healing/uncertainHealing.ts';
import { mixWidth } from './bandRows.ts';
import { mixAxes, pigmentMix, type MixAxis } from './mixAxes.ts';
import { mixBounds, type MixBox } from './mixBounds.ts';
import type { MixCell } from './mixSlopes.ts';
import type { RecipeTask } from './recipeTask.ts';

/** Room for rounding where a mix lies on the edge of a cell. */
const hair = 1e-9;
/** Floors are kept in steps of 1/12, rounded down, 1 and up; 0 stands for not yet worked out. */
const grain = 12;
const mostKept = 255;

/**
 * The space of mixes cut into cells by the shares of the pigments. For each cell and dose one byte holds a
 * floor: no recipe in it comes nearer to the target. Worked out when a recipe first asks. The places of a
 * recipe add up from its bottles', so most recipes are dropped without their colour ever being known. Exact:
 * floors are proven (mixBounds.ts), cells only group.
 */
export type MixCells = Readonly<{
  /** Four numbers a bottle: what one drop adds to the place along each axis. */
  steps: Float64Array;
  /** Slots along each axis. */
  sizes: readonly [number, number, number, number];
  cellCount: number;
  /** The byte of each dose and cell. */
  floors: Uint8Array;
  /** Works out the byte of a cell at a dose. */
  fill: (cell: number, dose: number) => number;
  /** The floor itself, not yet a byte. */
  floorOf: (cell: number, dose: number) => number;
  /** A cell at a time; the same arrays each time. */
  cellAt: (cell: number, time: number) => MixCell;
  /**
   * True where the place of a recipe says all of its mix: no bottle has a spectrum of its own, or anything
   * else beyond the axes.
   */
  isWhole: boolean;
  /**
   * False where the shares of a cell add to more than 1, or hold more white than allowed: no mix lies there.
   */
  isPossible: (cell: number, mostWhiteShare: number) => boolean;
}>;

/** The highest byte that does not rule out a limit. */
export function mostByte(limit: number): number {
  return Math.min(mostKept, Math.floor(limit * grain) + 1);
}

export function mixCells(
  task: RecipeTask,
  rows: Float64Array,
  units: Float64Array,
  wanted: number,
): MixCells {
  const { bottles, times, doses, ageing, target } = task;
  const { axes, rest } = mixAxes(task, rows, wanted);
  const sizes = [0, 1, 2, 3].map((i) => (axes[i]?.steps ?? 0) + 1);
  const [size0 = 1, size1 = 1, size2 = 1, size3 = 1] = sizes;
  const cellCount = size0 * size1 * size2 * size3;
  const floors = new Uint8Array(cellCount * doses.length);
  const steps = new Float64Array(4 * bottles.length);
  bottles.forEach(({ shares }, bottle) =>
    axes.forEach(({ pigment, lo, step }, i) => (steps[4 * bottle + i] = (shares[pigment] - lo) / step)),
  );

  const planes = times.map((years, time) => {
    const left = leftOf(ageing, years);
    const base = pigmentMix(rest, left);
    const pigments = axes.map(({ pigment }) => pigmentMix(pigment, left));
    const slopes = [0, 1, 2, 3].map((axis) => base.map((value, i) => (pigments[axis]?.[i] ?? value) - value));
    const half = base.map(
      (_, i) =>
        hair + axes.reduce((sum, { step }, axis) => sum + (step / 2) * Math.abs(slopes[axis]?.[i] ?? 0), 0),
    );
    // What a bottle holds beyond the sum by its axes: shares that are the same in all, and spectra of its
    // own.
    const own = bottles.map((_, bottle) =>
      units.subarray(
        (time * bottles.length + bottle) * mixWidth,
        (time * bottles.length + bottle + 1) * mixWidth,
      ),
    );
    const beyond = own.map((unit, bottle) =>
      unit.map(
        (value, i) =>
          value -
          (base[i] ?? 0) -
          axes.reduce(
            (sum, { pigment }, axis) =>
              sum + (bottles[bottle]?.shares[pigment] ?? 0) * (slopes[axis]?.[i] ?? 0),
            0,
          ),
      ),
    );
    const ends = (of: readonly Float64Array[], end: (...values: number[]) => number) =>
      base.map((_, i) => end(...of.map((one) => one[i] ?? 0)));
    const [beyondLo, beyondHi, least, most] = [
      ends(beyond, Math.min),
      ends(beyond, Math.max),
      ends(own, Math.min),
      ends(own, Math.max),
    ];
    const [slope0 = base, slope1 = base, slope2 = base, slope3 = base] = slopes;
    const halves = axes.map(({ step }, axis) => base.map((_, i) => (step / 2) * (slopes[axis]?.[i] ?? 0)));
    return { base, slope0, slope1, slope2, slope3, half, halves, beyondLo, beyondHi, least, most };
  });
  const bounds = mixBounds(rows, target);
  const box: MixBox = { lo: new Float64Array(mixWidth), hi: new Float64Array(mixWidth) };
  const middles = new Float64Array(mixWidth);

  const slotsOf = (cell: number): readonly [number, number, number, number] => [
    Math.floor(cell / (size1 * size2 * size3)),
    Math.floor(cell / (size2 * size3)) % size1,
    Math.floor(cell / size3) % size2,
    cell % size3,
  ];

  const lay = (
    cell: number,
    { base, slope0, slope1, slope2, slope3, half, beyondLo, beyondHi, least, most }: (typeof planes)[number],
  ): void => {
    const [slot0, slot1, slot2, slot3] = slotsOf(cell);
    const [share0, share1, share2, share3] = [
      middleOf(axes[0], slot0),
      middleOf(axes[1], slot1),
      middleOf(axes[2], slot2),
      middleOf(axes[3], slot3),
    ];
    for (let i = 0; i < mixWidth; i++) {
      const middle =
        (base[i] ?? 0) +
        share0 * (slope0[i] ?? 0) +
        share1 * (slope1[i] ?? 0) +
        share2 * (slope2[i] ?? 0) +
        share3 * (slope3[i] ?? 0);
      middles[i] = middle;
      box.lo[i] = Math.max(0, (least[i] ?? 0) - hair, middle - (half[i] ?? 0) + (beyondLo[i] ?? 0));
      box.hi[i] = Math.max(
        box.lo[i] ?? 0,
        Math.min((most[i] ?? 0) + hair, middle + (half[i] ?? 0) + (beyondHi[i] ?? 0)),
      );
    }
  };
  const floorOf = (cell: number, dose: number): number => {
    let highest = 0;
    for (const plane of planes) {
      lay(cell, plane);
      highest = Math.max(highest, bounds.floor(box, doses[dose] ?? 0));
    }
    return highest;
  };
  const cellAt = (cell: number, time: number): MixCell => {
    const plane = planes[time];
    if (plane) lay(cell, plane);
    return { middle: middles, box, halves: plane?.halves ?? [] };
  };
  const fill = (cell: number, dose: number): number => {
    const byte = 1 + Math.min(mostKept - 1, Math.floor(floorOf(cell, dose) * grain));
    floors[dose * cellCount + cell] = byte;
    return byte;
  };
  const isPossible = (cell: number, mostWhiteShare: number): boolean => {
    const slots = slotsOf(cell);
    const least = axes.map(({ lo, step }, i) => lo + step * (slots[i] ?? 0) - hair);
    return (
      least.reduce((sum, share) => sum + share, 0) <= 1 &&
      axes.every(({ pigment }, i) => pigment !== '77891' || (least[i] ?? 0) <= mostWhiteShare)
    );
  };
  const isWhole = planes.every(
    ({ beyondLo, beyondHi }) =>
      beyondLo.every((value) => value > -hair) && beyondHi.every((value) => value < hair),
  );
  return {
    steps,
    sizes: [size0, size1, size2, size3],
    cellCount,
    floors,
    fill,
    floorOf,
    cellAt,
    isWhole,
    isPossible,
  };
}

function middleOf(axis: MixAxis | undefined, slot: number): number {
  return axis ? axis.lo + (slot + 0.5) * axis.step : 0;
}
