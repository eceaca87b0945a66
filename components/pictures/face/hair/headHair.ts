import { drawFrom, seedFrom } from '#lib/quantities/seed.ts';
import type { Face } from '#lib/face/face.ts';
import type { HeadOutline } from '../headOutline.ts';
import type { Layers } from '../shape.ts';
import { scarf, wrap } from './cloth.ts';
import { crop } from './crop.ts';
import { curlsBack, curlsFront } from './curls.ts';
import { bobFall, fallingBack, fallingFront, longFall } from './falling.ts';
import { hairHeadOf } from './hairHead.ts';
import { locsBack, locsFront } from './locs.ts';
import { short } from './short.ts';
import { bun, tied } from './tied.ts';

/** Hair behind the head. Not mirrored: only what is measured on a face mirrors. */
export function hairBehind(face: Face, seed: number): Layers {
  const head = hairHeadOf(face);
  const draw = drawFrom(seedFrom('hair behind', seed));
  switch (face.form.hair) {
    case 'bob':
      return fallingBack(head, bobFall);
    case 'long':
      return fallingBack(head, longFall);
    case 'tied':
      return bun(draw);
    case 'curls':
      return curlsBack(head, draw);
    case 'locs':
      return locsBack(head, draw);
    default:
      return [];
  }
}

/** Hair or cloth over the head. */
export function hairInFront(face: Face, outline: HeadOutline, seed: number): Layers {
  const head = hairHeadOf(face);
  const draw = drawFrom(seedFrom('hair in front', seed));
  switch (face.form.hair) {
    case 'bald':
      return [];
    case 'crop':
      return crop(head, draw);
    case 'short':
      return short(head, draw);
    case 'tied':
      return tied(head, draw);
    case 'bob':
      return fallingFront(head, bobFall, draw);
    case 'long':
      return fallingFront(head, longFall, draw);
    case 'curls':
      return curlsFront(head, draw);
    case 'locs':
      return locsFront(head, draw);
    case 'scarf':
      return scarf(head, outline);
    case 'wrap':
      return wrap(head);
  }
}

/** Ears show only where neither hair nor cloth lies over them. */
export function earsShow({ form: { hair } }: Face): boolean {
  return hair === 'bald' || hair === 'crop' || hair === 'short' || hair === 'tied' || hair === 'wrap';
}
