import { drawFrom, seedFrom } from '#lib/quantities/seed.ts';
import type { Face } from '#lib/face/face.ts';
import { rolled } from '#lib/face/roll.ts';
import { viewBoxOf, type FaceView, type ViewBox } from './view.ts';
import { ageLayers } from './age.ts';
import { beardLayers } from './beard.ts';
import { browLayers, type Detail } from './brow/brows.ts';
import { eyeLayers } from './eye.ts';
import { glassesLayers } from './glasses.ts';
import { earsShow, hairBehind, hairInFront } from './hair/headHair.ts';
import { earLayers, headLayers, neckLayers } from './head.ts';
import { headOutline } from './headOutline.ts';
import { lidLayers } from './lids.ts';
import { mouthLayers } from './mouth.ts';
import { noseLayers } from './nose.ts';
import { pathText } from './pathText.ts';
import type { Layer, Layers, Shape } from './shape.ts';
import { skinMarkLayers } from './skinMarks.ts';
import type { Spot } from '#lib/face/spot.ts';

/** A finished drawing: shapes from back to front, in the view's own millimetres (y down). */
export type FacePicture = Readonly<{
  view: FaceView;
  viewBox: ViewBox;
  hairTone: number;
  shapes: readonly Shape[];
  oldPigment?: Face['form']['oldPigment'];
}>;

/**
 * Draws a face. The picture stands exactly on the face's landmarks; `seed` changes hair and other loose lines
 * only.
 * Each part has its own stream of numbers, so leaving a part out changes no other.
 */
export function drawFace(face: Face, view: FaceView, seed = 1): FacePicture {
  const detail = detailOf[view];
  const place = ([x, v]: Spot): Spot => {
    const [turnedX, turnedY] = rolled([x, v], face.rollDeg);
    return [turnedX, -turnedY];
  };
  const layers = merged(layersFor(face, view, seed, detail));
  return {
    view,
    viewBox: viewBoxOf(view, face.landmarks),
    hairTone: face.form.hairTone,
    ...(face.form.oldPigment && { oldPigment: face.form.oldPigment }),
    shapes: layers.map((layer) => shapeOf(layer, place, detail)),
  };
}

const detailOf = {
  whole: 'far',
  midline: 'far',
  band: 'middle',
  right: 'near',
  left: 'near',
} as const satisfies Readonly<Record<FaceView, Detail>>;

function layersFor(face: Face, view: FaceView, seed: number, detail: Detail): Layers {
  const outline = headOutline(face);
  const stream = (part: string) => drawFrom(seedFrom(part, seed));
  const brows = (['right', 'left'] as const).filter(
    (side) => view === side || (view !== 'right' && view !== 'left'),
  );
  const browParts = brows.flatMap((side) => browLayers(face, side, seed, detail));
  const skinMarks = skinMarkLayers(face, outline, seed);
  if (view === 'right' || view === 'left') return [...skinMarks, ...browParts];
  const eyes = (['right', 'left'] as const).flatMap((side) => [
    ...eyeLayers(face, side, seed, detail),
    ...lidLayers(face, side, seed),
  ]);
  if (view === 'band')
    return [
      ...skinMarks,
      ...eyes,
      ...noseLayers(face, stream('nose'), false),
      ...browParts,
      ...glassesLayers(face),
    ];
  const middle = [
    ...headLayers(face, outline, view === 'whole'),
    ...skinMarks,
    ...eyes,
    ...noseLayers(face, stream('nose'), true),
    ...mouthLayers(face),
    ...ageLayers(face, outline, stream('age')),
    ...beardLayers(face, outline, stream('beard')),
    ...browParts,
  ];
  if (view === 'midline') return [...middle, ...glassesLayers(face)];
  return [
    ...hairBehind(face, seed),
    ...neckLayers(face, stream('neck')),
    ...(earsShow(face) ? earLayers(face, outline) : []),
    ...middle,
    ...hairInFront(face, outline, seed),
    ...glassesLayers(face),
  ];
}

/** Neighbours of one kind become one path. Pen lines all wind the same way, so overlaps never cancel. */
function merged(layers: Layers): Layers {
  return layers.reduce<Layer[]>((kept, layer) => {
    const last = kept.at(-1);
    const joins =
      last &&
      last.part === layer.part &&
      last.role === layer.role &&
      last.strokeMm === layer.strokeMm &&
      last.opacity === layer.opacity &&
      last.clip === layer.clip &&
      ['line', 'soft', 'strand', 'fold', 'lash'].includes(layer.role);
    if (joins) kept[kept.length - 1] = { ...last, path: [...last.path, ...layer.path] };
    else kept.push(layer);
    return kept;
  }, []);
}

/** Thin slivers need a hundredth of a millimetre; outlines and single strokes a tenth. */
function shapeOf(
  { part, role, path, strokeMm, opacity, clip }: Layer,
  place: (spot: Spot) => Spot,
  detail: Detail,
): Shape {
  const decimals = strokeMm === undefined && isFine(role, detail) ? 2 : 1;
  return {
    part,
    role,
    d: pathText(path, place, decimals),
    ...(strokeMm !== undefined && { strokeMm }),
    ...(opacity !== undefined && { opacity }),
    ...(clip && { clip: pathText(clip, place, 1) }),
  };
}

function isFine(role: Layer['role'], detail: Detail): boolean {
  return detail === 'near' || (detail === 'middle' && role !== 'skin');
}
