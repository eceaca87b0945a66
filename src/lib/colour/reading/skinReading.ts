import { ita, itaClassAt, itaClasses, type ItaClass } from '../spaces/ita.ts';
import type { Lab } from '../spaces/lab.ts';
import { hueSpan, itaSpan, type LabBox, type Span } from './labBox.ts';
import { hueLean, type HueLean } from './hueLean.ts';
import { readingValues } from '../numbers/reading.ts';

/** Was the skin read before anything touched it? */
export type Touch = 'untouched' | 'touched' | 'not-known';

export type SkinReading =
  | Readonly<{
      ok: true;
      box: LabBox;
      ita: Span;
      hue: Span;
      itaClass: ItaClass;
      classes: readonly ItaClass[];
      lean: HueLean;
    }>
  | Readonly<{ ok: false; reason: 'no-reading' | 'outside-the-scale' }>;

const axes = ['l', 'a', 'b'] as const;
const touchedBy: Lab = { l: readingValues.touchedL, a: readingValues.touchedA, b: readingValues.touchedB };

/**
 * The box of up to three readings: from the lowest to the highest of each coordinate, widened by how far a
 * reading repeats.
 * One reading shows no spread, so it is given an assumed one. Skin that was touched, or may have been, widens
 * the box again.
 */
export function boxOfReadings(readings: readonly Lab[], touch: Touch): LabBox | undefined {
  if (readings.length === 0) return undefined;
  const span = (axis: (typeof axes)[number]): Span => {
    const values = readings.map((reading) => reading[axis]);
    const more =
      (values.length === 1 ? readingValues.oneReading : readingValues.repeat) +
      (touch === 'untouched' ? 0 : touchedBy[axis]);
    const value = values.reduce((sum, one) => sum + one, 0) / values.length;
    return { value, lo: Math.min(...values) - more, hi: Math.max(...values) + more };
  };
  return { l: span('l'), a: span('a'), b: span('b') };
}

/** The classes an interval of the typology angle touches, lightest first. */
export function classesBetween(loDeg: number, hiDeg: number): readonly ItaClass[] {
  return itaClasses.slice(itaClasses.indexOf(itaClassAt(hiDeg)), itaClasses.indexOf(itaClassAt(loDeg)) + 1);
}

/** A skin from the box it lies in: typology angle with every class it may be, and hue angle with its lean. */
export function readBox(box: LabBox): SkinReading {
  const [angle, hue] = [itaSpan(box), hueSpan(box)];
  const middle = ita({ l: box.l.value, b: box.b.value });
  if (!angle.ok || !hue.ok || !middle.ok) return { ok: false, reason: 'outside-the-scale' };
  return {
    ok: true,
    box,
    ita: angle.span,
    hue: hue.span,
    itaClass: middle.itaClass,
    classes: classesBetween(angle.span.lo, angle.span.hi),
    lean: hueLean(hue.span),
  };
}

/** A skin from its readings, and how they were taken. */
export function readSkin(readings: readonly Lab[], touch: Touch): SkinReading {
  const box = boxOfReadings(readings, touch);
  return box ? readBox(box) : { ok: false, reason: 'no-reading' };
}
