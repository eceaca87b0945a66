import { lineThrough, xAtHeightMm } from '#lib/geometry/crossing.ts';
import type { MidlineMark } from '#lib/mapping/marks/mirrorMarks.ts';
import { placeMidline, type PlaceMidlineGiven } from '#skills/mapping/placeMidline.ts';
import { untrustedNames } from '#words/midline.ts';
import { libraryWords, noLibraryWords, placedFeedback } from '#words/skills/placedFeedback.ts';
import type { PlacedMark } from '#words/skills/placeMidline.ts';
import type { Feedback } from '#words/skills/problemWords.ts';
import { tied } from '#words/skills/say.ts';
import { pinHeightsMm } from './placeView.ts';

/** Where the two pins stand on the ruler, mm. */
export type Across = Readonly<{ top: number; foot: number }>;
/** One judged thread in marks and words, with what the pictures need. */
export type Judged = Readonly<{
  marked: PlacedMark;
  feedback: Feedback;
  library: string;
  notTrusted: readonly MidlineMark[];
  yours: Across;
  truth: Across;
}>;

/** Marks one thread; undefined only where both pins stand on one point, which their heights rule out. */
export function judge(given: PlaceMidlineGiven, yours: Across): Judged | undefined {
  const top = { xMm: yours.top, yMm: pinHeightsMm.top };
  const foot = { xMm: yours.foot, yMm: pinHeightsMm.foot };
  const ends = placeMidline.placed(top, foot, given);
  const { exact, leanDeg } = placeMidline.answer(given);
  const truth = pinsOf(given);
  if (!ends || !truth) return undefined;
  const marked = placeMidline.mark(given, ends);
  const { subnasale } = given.face.landmarks.middle;
  const { right, left } = given.face.landmarks;
  const on = {
    level: given.level,
    yours: ends,
    exact,
    leanDeg,
    noseLeanMm: subnasale[0],
    higherMm: left.archTop[1] - right.archTop[1],
  };
  const { title, text } = placedFeedback(marked, on);
  const reading = placeMidline.libraryReading(given);
  const notTrusted = reading.ok ? reading.notTrusted : [];
  const library = reading.ok
    ? libraryWords(reading.midlineAtBrowsMm, reading.rollDeg, untrustedNames(notTrusted))
    : noLibraryWords;
  return { marked, feedback: { title, text: tied(text) }, library: tied(library), notTrusted, yours, truth };
}

/** Where the true midline passes the heights of the two pins. */
function pinsOf(given: PlaceMidlineGiven): Across | undefined {
  const { exact } = placeMidline.answer(given);
  const line = lineThrough(
    { xMm: exact.browsMm, yMm: given.browHeightMm },
    { xMm: exact.chinMm, yMm: given.chinHeightMm },
  );
  const top = line && xAtHeightMm(line, pinHeightsMm.top);
  const foot = line && xAtHeightMm(line, pinHeightsMm.foot);
  return top === undefined || foot === undefined ? undefined : { top, foot };
}
