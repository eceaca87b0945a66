import type { PointMm } from '#lib/geometry/point.ts';
import { readPairs } from './readPairs.ts';
import { readWithin } from './readWithin.ts';
import type { Box, Read } from './spec.ts';

/** Reads a mark written "across_up", both inside the box, millimetres. */
function readPoint(text: string, box: Box): Read<PointMm> {
  const [across, up, rest] = text.split('_');
  if (across === undefined || up === undefined || rest !== undefined)
    return { ok: false, refusal: { code: 'not-a-point' } };
  const x = readWithin(across, { unit: 'mm', lo: box.x[0], hi: box.x[1] });
  if (!x.ok) return x;
  const y = readWithin(up, { unit: 'mm', lo: box.y[0], hi: box.y[1] });
  return y.ok ? { ok: true, value: { xMm: x.value, yMm: y.value } } : y;
}

/**
 * Everything a field needs to read a text. Handed in by the caller, so that a page can fetch it when
 * something is typed.
 */
export const parsers = { readWithin, readPoint, readPairs } as const;
