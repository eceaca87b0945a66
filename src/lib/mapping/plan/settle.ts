import type { Side } from '../marks/markSet.ts';
import type { Holder, Row } from './row.ts';
import type { SideRoom } from './sideRoom.ts';

type Sides<T> = Readonly<Record<Side, T>>;
/** Heights of both sides, and the rows that keep them from better ones. */
export type Settled = Readonly<{ heights: Sides<readonly number[]>; heldBy: readonly Holder[] }>;

const sides = ['right', 'left'] as const;
/** Rounds at most; fifteen were the most ever needed. */
const mostRounds = 60;

/**
 * The best heights inside the rows and the levels of each side: those that `best` finds inside rows alone.
 * Where they break a level, its tangents there and where the way there leaves it join the rows, and the best
 * is sought again (cutting planes, Kelley 1960). A side without a room stays out of it.
 */
export function settle(
  rooms: Readonly<Partial<Record<Side, SideRoom>>>,
  best: (rows: Sides<readonly Row[]>) => Settled,
): Settled {
  let rows: Sides<readonly Row[]> = { right: rooms.right?.rows ?? [], left: rooms.left?.rows ?? [] };
  let found = best(rows);
  for (let round = 1; round < mostRounds && sides.some((side) => !fits(rooms[side], found, side)); round++) {
    const cut = (side: Side) => [...rows[side], ...cuts(rooms[side], found.heights[side])];
    rows = { right: cut('right'), left: cut('left') };
    found = best(rows);
  }
  const kept = (side: Side) => {
    const room = rooms[side];
    return room && !fits(room, found, side)
      ? lastInside(room, found.heights[side], 'mostMm2')[0]
      : found.heights[side];
  };
  return { ...found, heights: { right: kept('right'), left: kept('left') } };
}

function fits(room: SideRoom | undefined, { heights }: Settled, side: Side): boolean {
  return !room || isInside(room, heights[side], 'mostMm2');
}

const isInside = ({ levels }: SideRoom, heights: readonly number[], end: 'mostMm2' | 'aimMm2'): boolean =>
  levels.every((level) => level.areaMm2(heights) <= level[end]);

/** The tangents of every broken level, at the heights that break it and where the way there leaves the levels. */
function cuts(room: SideRoom | undefined, heights: readonly number[]): readonly Row[] {
  if (!room || isInside(room, heights, 'mostMm2')) return [];
  const [, leaving] = lastInside(room, heights, 'aimMm2');
  return room.levels.flatMap((level) => [
    ...(level.areaMm2(heights) > level.mostMm2 ? [level.cutAt(heights)] : []),
    ...(level.areaMm2(leaving) > level.aimMm2 - 1e-9 ? [level.cutAt(leaving)] : []),
  ]);
}

/** On the way from the room's own heights: the last that are inside the levels, and the first that are not. */
function lastInside(
  room: SideRoom,
  heights: readonly number[],
  end: 'mostMm2' | 'aimMm2',
): readonly [inside: readonly number[], outside: readonly number[]] {
  const on = (share: number) => room.at.map((mm, i) => mm + share * ((heights[i] ?? mm) - mm));
  let [inside, outside] = [0, 1];
  for (let i = 0; i < 12; i++) {
    const middle = (inside + outside) / 2;
    if (isInside(room, on(middle), end)) inside = middle;
    else outside = middle;
  }
  return [on(inside), on(outside)];
}
