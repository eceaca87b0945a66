import { type Path } from './path.ts';
import { penLine, penThrough, type Widths } from './penLine.ts';
import { onSide, type Spots } from '#lib/face/spot.ts';
import { type Curve } from './curve.ts';

/** What a shape belongs to: a view keeps or drops whole parts. */
export type Part =
  | 'hair'
  | 'neck'
  | 'ear'
  | 'head'
  | 'skinMark'
  | 'eye'
  | 'lid'
  | 'nose'
  | 'mouth'
  | 'age'
  | 'beard'
  | 'oldWork'
  | 'scar'
  | 'pigment'
  | 'brow'
  | 'glasses';

/** What a shape is drawn as. Colour comes later, from the reader's theme or from a measured skin. */
export type Role =
  | 'skin'
  | 'pale'
  | 'line'
  | 'soft'
  | 'white'
  | 'iris'
  | 'pupil'
  | 'lash'
  | 'glint'
  | 'lip'
  | 'mass'
  | 'strand'
  | 'brow'
  | 'paleHair'
  | 'old'
  | 'pigment'
  | 'cloth'
  | 'fold';

/** One finished shape: SVG path data in millimetres, y down. A shape without a stroke width is filled. */
export type Shape = Readonly<{
  part: Part;
  role: Role;
  d: string;
  strokeMm?: number;
  opacity?: number;
  clip?: string;
}>;

/** The same before placing. */
export type Layer = Readonly<{
  part: Part;
  role: Role;
  path: Path;
  strokeMm?: number;
  opacity?: number;
  clip?: Path;
}>;
export type Layers = readonly Layer[];

export function filled(part: Part, role: Role, path: Path): Layer {
  return { part, role, path };
}

export function stroked(part: Part, role: Role, path: Path, strokeMm: number): Layer {
  return { part, role, path, strokeMm };
}

export function drawnLine(part: Part, role: Role, spots: Spots, widths: Widths): Layer {
  return { part, role, path: penThrough(spots, widths) };
}

export function drawnCurve(part: Part, role: Role, curve: Curve, widths: Widths): Layer {
  return { part, role, path: penLine(curve, widths) };
}

/** The same pen line on both sides of x = 0. */
export function drawnTwice(part: Part, role: Role, spots: Spots, widths: Widths): Layers {
  return [drawnLine(part, role, onSide(-1, spots), widths), drawnLine(part, role, onSide(1, spots), widths)];
}
