import type { Pull } from './midlineInfluence.ts';
import {
  browMarks,
  facePairs,
  faceSingles,
  type BrowMark,
  type FacePair,
  type Side,
} from '../marks/markSet.ts';

/**
 * What each coordinate of a mark set adds to one number, coordinate by coordinate: how the number follows it
 * times how uncertain it is. 8 paired points, 4 single points, 10 brow points, x then y each.
 */
export type MarkRow = readonly number[];

const browStart = 2 * facePairs.length + faceSingles.length;
const coordinateCount = 2 * (browStart + 2 * browMarks.length);

/** Place of a point in a row. */
export function facePlace(index: number, side: Side): number {
  if (index >= facePairs.length) return facePairs.length + index;
  return 2 * index + (side === 'left' ? 1 : 0);
}

export function pairPlace(name: FacePair, side: Side): number {
  return facePlace(facePairs.indexOf(name), side);
}

export function browPlace(mark: BrowMark, side: Side): number {
  return browStart + 2 * browMarks.indexOf(mark) + (side === 'left' ? 1 : 0);
}

/** A row of zeros to be filled. */
export function emptyRow(): number[] {
  return new Array<number>(coordinateCount).fill(0);
}

/** Adds factor × pull at one point of a row. */
export function addPull(row: number[], place: number, pull: Pull, factor: number): void {
  row[2 * place] = (row[2 * place] ?? 0) + factor * pull.x;
  row[2 * place + 1] = (row[2 * place + 1] ?? 0) + factor * pull.y;
}

/** Adds factor × another row. */
export function addRow(row: number[], other: MarkRow, factor: number): void {
  for (let i = 0; i < row.length; i++) row[i] = (row[i] ?? 0) + factor * (other[i] ?? 0);
}

/**
 * Standard uncertainty of the number behind a row: its entries are independent parts, so √(Σ part²) (GUM
 * 5.1.2).
 */
export function rowUncertainty(row: MarkRow): number {
  return Math.sqrt(row.reduce((sum, part) => sum + part * part, 0));
}
