import { drawFrom, type Draw } from '#lib/quantities/seed.ts';
import {
  outlineParts,
  partOnNothing,
  whereNotToDrawWords,
  type OutlinePart,
  type WhereNotGiven,
} from '#words/skills/whereNotToDraw.ts';
import type { Skill } from '../skill.ts';

type Given = WhereNotGiven;
const toHalf = (mm: number) => Math.round(2 * mm) / 2;

/** Four kinds of brow: bone gives out after the hair, before it, never; or hair to the very end. */
function deal(draw: Draw): Given {
  const outlineMm = toHalf(39 + 6 * draw());
  const kind = draw();
  const early = toHalf(outlineMm * (0.62 + 0.08 * draw()));
  const late = toHalf(outlineMm * (0.76 + 0.1 * draw()));
  const [hairToMm, leavesBoneMm] =
    kind < 0.32
      ? [early, late]
      : kind < 0.64
        ? [late, early]
        : kind < 0.84
          ? [early, outlineMm]
          : [outlineMm, late];
  return {
    outlineMm,
    hairFromMm: toHalf(1.5 + 2 * draw()),
    hairToMm,
    thinFromMm: toHalf(outlineMm * (0.44 + 0.1 * draw())),
    leavesBoneMm,
  };
}

/** Parts that exist on this brow; two ends that are the whole length are no part. */
const offered = ({ outlineMm, hairToMm, leavesBoneMm }: Given): readonly OutlinePart[] =>
  outlineParts.filter(
    (part) =>
      !(part === 'bare-tail' && hairToMm >= outlineMm) && !(part === 'off-bone' && leavesBoneMm >= outlineMm),
  );

const inWords = (given: Given, part: 'hair' | 'bone') => {
  const { outlineMm, hairFromMm, hairToMm, leavesBoneMm } = given;
  const tail = (fromMm: number) => `${fromMm.toFixed(1)} to ${outlineMm.toFixed(1)} mm`;
  if (part === 'bone') return leavesBoneMm >= outlineMm ? 'nowhere' : tail(leavesBoneMm);
  return `0.0 to ${hairFromMm.toFixed(1)} mm${hairToMm >= outlineMm ? '' : ` and ${tail(hairToMm)}`}`;
};

/** The part with neither hair nor bone under it: what two lists of millimetres share. */
export const whereNotToDraw: Skill<Given> = {
  id: 'where-not-to-draw',
  version: 1,
  words: whereNotToDrawWords,
  given: (seed) => deal(drawFrom(seed)),
  answer: (given) => ({ kind: 'choice', correct: partOnNothing(given), options: offered(given) }),
  slips: [
    { id: 'all-bare-skin', credit: 0.4, value: () => 'bare-tail' },
    { id: 'all-off-bone', credit: 0.4, value: () => 'off-bone' },
    { id: 'thin-is-not-bare', credit: 0.2, value: () => 'thin-on' },
    { id: 'front-is-on-bone', credit: 0.2, value: () => 'bare-front' },
    { id: 'saw-nothing', credit: 0, value: () => 'none' },
  ],
  steps: (given) => [
    { id: 'hair', values: { bare: inWords(given, 'hair') } },
    { id: 'bone', values: { off: inWords(given, 'bone') } },
    { id: 'both', values: { answer: whereNotToDrawWords.option(partOnNothing(given), given) } },
  ],
  facts: ['shape-sits-on-something', 'off-bone-moves'],
};
