import type { BrowMark, FacePair, FaceSingle, Side } from '../mapping/marks/markSet.ts';
import type { Spot } from './spot.ts';

/** The five marks of one brow: u straight out from the midline, v above the pupil line, millimetres. */
export type BrowSpots = Readonly<Record<BrowMark, Spot>>;
/** Everything that is marked on one side, same frame. */
export type SideSpots = Readonly<Record<FacePair | BrowMark, Spot>>;

/**
 * Where the marks of a face truly are, before the head is rolled. Origin midway between the pupils.
 * Sides: [out from the true midline, up]. Middle: [towards the client's left, up]. The drawing follows these,
 * never the reverse.
 */
export type Landmarks = Readonly<Record<Side, SideSpots> & { middle: Readonly<Record<FaceSingle, Spot>> }>;

/** +1 where outward is the picture's right: the client's left. */
export function outward(side: Side): 1 | -1 {
  return side === 'left' ? 1 : -1;
}

export function browOf({ frontLower, frontTop, archTop, archLower, tail }: SideSpots): BrowSpots {
  return { frontLower, frontTop, archTop, archLower, tail };
}

/** The brow with every mark moved by one rule. */
export function mapBrow(brow: BrowSpots, move: (spot: Spot) => Spot): BrowSpots {
  return {
    frontLower: move(brow.frontLower),
    frontTop: move(brow.frontTop),
    archTop: move(brow.archTop),
    archLower: move(brow.archLower),
    tail: move(brow.tail),
  };
}

/** The whole brow moved outwards and up. */
export function movedBrow(brow: BrowSpots, outMm: number, upMm: number): BrowSpots {
  return mapBrow(brow, ([u, v]) => [u + outMm, v + upMm]);
}
