import type { FacePicture } from './face/drawFace.ts';
import type { Role, Shape } from './face/shape.ts';
import { hexOf, type FaceInk } from './faceInk.ts';

/**
 * One path of the markup. `class` where the style sheet colours it, `color` where a measured or fixed ink
 * does.
 */
export type FacePath = Readonly<{
  d: string;
  role: Role | 'sheen';
  strokeMm?: number;
  opacity?: number;
  clipId?: string;
  colour?: string;
}>;

export type FaceMarkup = Readonly<{
  clips: readonly Readonly<{ id: string; d: string }>[];
  paths: readonly FacePath[];
}>;

/**
 * Paths in drawing order, clip ids unique by prefix. Skin is left out where nothing lies behind it and it has
 * no colour of its own, so that the millimetre paper stays visible.
 */
export function faceMarkup(
  { view, shapes, oldPigment }: FacePicture,
  prefix: string,
  ink?: FaceInk,
): FaceMarkup {
  const clipIds = new Map<string, string>();
  for (const { clip } of shapes)
    if (clip && !clipIds.has(clip)) clipIds.set(clip, `${prefix}-c${clipIds.size}`);
  const shown = shapes.filter(({ role }) => role !== 'skin' || view === 'whole' || ink !== undefined);
  return {
    clips: [...clipIds].map(([d, id]) => ({ id, d })),
    paths: shown.flatMap((shape) => pathsFor(shape, clipIds, ink, oldPigment && hexOf(oldPigment))),
  };
}

function pathsFor(
  shape: Shape,
  clipIds: ReadonlyMap<string, string>,
  ink: FaceInk | undefined,
  oldColour: string | undefined,
): readonly FacePath[] {
  const clipId = shape.clip === undefined ? undefined : clipIds.get(shape.clip);
  const path: FacePath = {
    d: shape.d,
    role: shape.role,
    ...(shape.strokeMm !== undefined && { strokeMm: shape.strokeMm }),
    ...(shape.opacity !== undefined && { opacity: shape.opacity }),
    ...(clipId !== undefined && { clipId }),
    ...(ink && { colour: ink[shape.role] }),
    // The colour of old work is data; its line and its hatch stay in the ink of their role.
    ...(oldColour !== undefined &&
      shape.role === 'old' &&
      shape.strokeMm === undefined && { colour: oldColour }),
  };
  if (!ink || ink.sheen === 'none' || shape.role !== 'brow') return [path];
  // Dark hair on deep skin: a broad dark bed, then the light core.
  const bed: FacePath = { ...path, strokeMm: (shape.strokeMm ?? 0.1) + 0.25 };
  return [
    bed,
    {
      ...path,
      role: 'sheen',
      colour: ink.sheen,
      strokeMm: shape.strokeMm === undefined ? 0.1 : shape.strokeMm * 0.42,
    },
  ];
}
