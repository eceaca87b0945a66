import type { Path, Step } from '../path.ts';
import { between, distance, type Spot } from '#lib/face/spot.ts';
import type { Hair } from './growth.ts';

/** Hairs as single strokes: for small pictures, where a taper cannot be seen. */
export function hairStrokes(hairs: readonly Hair[], outward: 1 | -1): Path {
  const put = ([u, v]: Spot): Spot => [outward * u, v];
  return hairs.flatMap(({ root, bend, tip }): Step[] => [
    ['M', put(root)],
    ['Q', put(bend), put(tip)],
  ]);
}

/** The rooted part of each hair, drawn a second time and wider: a taper for half the bytes of a sliver. */
export function rootStrokes(hairs: readonly Hair[], outward: 1 | -1, share = 0.6): Path {
  const rooted = hairs.map(({ root, bend, tip, t, s }): Hair => {
    const halfway = between(root, bend, share);
    return { root, bend: halfway, tip: between(halfway, between(bend, tip, share), share), t, s };
  });
  return hairStrokes(rooted, outward);
}

/** Hairs as slivers, for close pictures: widest just past the root, nothing at the tip. */
export function hairSlivers(hairs: readonly Hair[], outward: 1 | -1, widthMm: number): Path {
  return hairs.flatMap(({ root, bend, tip, t }): Step[] => {
    const length = distance(root, tip) || 1;
    const half = (widthMm * (1 - 0.2 * t)) / 2;
    const across: Spot = [(-(tip[1] - root[1]) / length) * half, ((tip[0] - root[0]) / length) * half];
    const put = ([u, v]: Spot, share: number): Spot => [
      outward * (u + share * across[0]),
      v + share * across[1],
    ];
    return [
      ['M', put(root, 0.5)],
      ['Q', put(bend, 1.2), put(tip, 0)],
      ['Q', put(bend, -1.2), put(root, -0.5)],
      ['Z'],
    ];
  });
}
