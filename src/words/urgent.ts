import type { FactId } from '#lib/catalogue.ts';
import { isFactId } from '#lib/catalogue.ts';
import { factText, rangeText } from './evidence.ts';

/** The last line of every urgent card, and the line under all five. */
export const wakingLine =
  'Does not wake, does not breathe normally: **call, floor, start CPR, send for the defibrillator.**';

/** What stands behind it. */
export const wakingFacts = [
  'arrest-signs',
  'call-before-breathing',
  'cpr-on-the-floor',
  'fetch-defibrillator',
] as const satisfies readonly FactId[];

/** "Call" never names one country's number. */
export const callMeans =
  '“Call” means your own emergency number. Know it before you need it: 999, 112, 911 and 000 are some of them.';

/** On paper there is a line to write it on. */
export const numberHere = 'Emergency number here:';

export const ownCourse =
  'Places teach first aid in different ways. What your own first-aid course said comes first. This page does not replace a course.';

/**
 * A line of an urgent card with its numbers in place: `{id}` is the value of a fact, its range where it has
 * one. An unknown fact is an error.
 */
export function urgentLine(say: string): string {
  return say.replace(/\{([a-z0-9-]+)\}/g, (_, id: string) => {
    if (!isFactId(id)) throw new Error(`No fact is called "${id}".`);
    return rangeText(id) || factText(id);
  });
}

export type LinePart = Readonly<{ text: string; isStrong: boolean }>;

/** A line in parts: what stands between two stars is strong. */
export function lineParts(say: string): readonly LinePart[] {
  return urgentLine(say)
    .split('**')
    .map((text, at) => ({ text, isStrong: at % 2 === 1 }))
    .filter(({ text }) => text !== '');
}

/** A line without its stars, as it is read aloud. */
export function spokenLine(say: string): string {
  return urgentLine(say).replaceAll('**', '').replaceAll('\u00a0', ' ');
}
