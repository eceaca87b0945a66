import { drawFrom, seedFrom } from '#lib/quantities/seed.ts';
import type { Side } from '#lib/mapping/marks/markSet.ts';
import type { Face } from '#lib/face/face.ts';
import { browOf, outward, type BrowSpots } from '#lib/face/landmarks.ts';
import { mapPath } from '../path.ts';
import { penThrough } from '../penLine.ts';
import { filled, stroked, type Layers } from '../shape.ts';
import { distance, onSide } from '#lib/face/spot.ts';
import { scarLine, type ScarAcross } from './bareness.ts';
import { browHairs } from './browHairs.ts';
import { browOutline } from './browEdges.ts';
import type { Hair } from './growth.ts';
import { hairSlivers, hairStrokes, rootStrokes } from './hairPath.ts';
import { oldWorkLayers } from './oldWork.ts';
import { pigmentStrokes } from './pigmentStrokes.ts';

/**
 * How finely a picture is drawn: far for whole faces and lessons, middle for the band of both brows, near for
 * one brow.
 */
export type Detail = 'far' | 'middle' | 'near';

/** Share of the hairs that are drawn, and their width. */
const hairDetail = {
  far: { share: 0.5, widthMm: 0.34 },
  middle: { share: 0.54, widthMm: 0.15 },
  near: { share: 1, widthMm: 0.25 },
} as const satisfies Readonly<Record<Detail, unknown>>;

const scarWidthMm = 1.9;

/** One brow: first what lies in the skin, then hair (or the pigment plan instead of it). */
export function browLayers(face: Face, side: Side, seed: number, detail: Detail): Layers {
  const brow = browOf(face.landmarks[side]);
  const hand = outward(side);
  const { form } = face;
  const old = form.oldWork?.[side];
  const under = old
    ? oldWorkLayers(old, hand, form.oldPigment !== undefined, drawFrom(seedFrom('old', side, seed)))
    : [];
  if (form.strokes) return [...under, ...planLayers(brow, side, form.strokes, seed)];
  const scar =
    form.scar?.side === side ? { t: form.scar.t, lean: form.scar.lean, widthMm: scarWidthMm } : undefined;
  const count = Math.round(form.browHair.count * hairDetail[detail].share);
  const hairs = browHairs(brow, { ...form.browHair, count }, drawFrom(seedFrom('hair', side, seed)), scar);
  const isPale = (hair: Hair): boolean =>
    (form.vitiligo ?? []).some(
      ({ at, radiusMm }) => distance([hand * hair.root[0], hair.root[1]], at) < radiusMm * 0.92,
    );
  return [
    ...under,
    ...scarLayers(brow, hand, scar),
    ...hairLayers(
      hairs.filter((hair) => !isPale(hair)),
      hand,
      detail,
    ),
    // Hair in a pale patch is white: a thin outline of itself.
    ...nonEmpty(stroked('brow', 'paleHair', hairStrokes(hairs.filter(isPale), hand), 0.14)),
  ];
}

function hairLayers(hairs: readonly Hair[], hand: 1 | -1, detail: Detail): Layers {
  const { widthMm } = hairDetail[detail];
  if (detail === 'near') return nonEmpty(filled('brow', 'brow', hairSlivers(hairs, hand, widthMm)));
  const whole = nonEmpty(stroked('brow', 'brow', hairStrokes(hairs, hand), widthMm));
  if (detail === 'far') return whole;
  return [...whole, ...nonEmpty(stroked('brow', 'brow', rootStrokes(hairs, hand), widthMm + 0.11))];
}

/** A healed scar: a pale spindle with a fine edge. Two loose lines would look like stray hairs. */
function scarLayers(brow: BrowSpots, hand: 1 | -1, scar: ScarAcross | undefined): Layers {
  if (!scar) return [];
  const spindle = penThrough(onSide(hand, scarLine(brow, scar)), [0.1, scar.widthMm * 0.6, 0.1]);
  return [filled('scar', 'pale', spindle), stroked('scar', 'soft', spindle, 0.12)];
}

type Plan = NonNullable<Face['form']['strokes']>;

/** Strokes at their laid width, over their spread width, inside the outline. */
function planLayers(brow: BrowSpots, side: Side, plan: Plan, seed: number): Layers {
  const hand = outward(side);
  const path = hairStrokes(
    pigmentStrokes(brow, plan.count, plan.lengthMm, drawFrom(seedFrom('plan', side, seed))),
    hand,
  );
  const outline = mapPath(browOutline(brow), ([u, v]) => [hand * u, v]);
  const spread = { ...stroked('pigment', 'pigment', path, plan.widthMm + plan.spreadMm), opacity: 0.3 };
  return [
    ...(plan.spreadMm > 0 ? [spread] : []),
    stroked('pigment', 'pigment', path, plan.widthMm),
    stroked('pigment', 'soft', outline, 0.16),
  ];
}

function nonEmpty(layer: Layers[number]): Layers {
  return layer.path.length > 0 ? [layer] : [];
}
