import type { PracticeLevel } from '#lib/face/disturbance.ts';
import { placeMidline, type PlaceMidlineGiven } from '#skills/mapping/placeMidline.ts';
import { linkNote as noteOn } from '../versionNotes.ts';

// Everything that needs the face itself, in one piece that is fetched after the page stands: drawing and
// marking are most of the weight.

/** What there is to say about the version that a link was made for. */
export const linkNote = (text: string | null): string => noteOn(text, placeMidline.version);
export const deal = (seed: number, level: PracticeLevel): PlaceMidlineGiven =>
  placeMidline.given(seed, level);
export { itemSeed, readSeed } from '#lib/practice/itemSeed.ts';
export { practiceWords, reviewWords } from '#words/practice.ts';
export { AnswerLines } from './AnswerLines.tsx';
export { FaceMarks } from './FaceMarks.tsx';
export { judge } from './judge.ts';
export { PlacedPanel } from './PlacedPanel.tsx';
export { PracticeStill } from './PracticeStill.tsx';
export { keepPins, typedPins } from './typedPins.ts';
