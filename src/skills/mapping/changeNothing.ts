import { measuringFacts } from '#lib/mapping/facts/measuring.ts';
import { budgetMm, smallestRealDifferenceMm } from '#lib/mapping/uncertainty/budget.ts';
import { familyCoverageFactor } from '#lib/mapping/uncertainty/familyWise.ts';
import { includesZero, intervalAround } from '#lib/quantities/interval.ts';
import { drawFrom, drawNormalWithin, drawOne, drawWhole, type Draw } from '#lib/quantities/seed.ts';
import {
  changeNothingWords,
  comparedThings,
  nextMoves,
  realWords,
  unlikeWords,
  wishes,
} from '#words/skills/changeNothing.ts';
import type {
  ChangeNothingGiven,
  Compared,
  ComparedThing,
  NextMove,
  TakenSide,
  Wish,
} from '#words/skills/changeNothing.ts';
import type { Skill } from '../skill.ts';

type Given = ChangeNothingGiven;
const tenths = (mm: number) => Math.round(mm * 10) / 10;
const alike: TakenSide = { pose: 'rest', posture: 'sitting', skin: 'normal' };
const otherwise: readonly [TakenSide, ...TakenSide[]] = [
  { ...alike, posture: 'lying' },
  { ...alike, pose: 'raised' },
  { ...alike, pose: 'frown' },
  { ...alike, skin: 'swollen' },
];

const isReal = ({ differenceMm, loMm, hiMm }: Compared) =>
  !includesZero({ value: differenceMm, lo: loMm, hi: hiMm, standardUncertainty: 0, k: 1 });
const isAlike = ({ taken: { right, left } }: Given) =>
  right.pose === left.pose && right.posture === left.posture && right.skin === left.skin;

/** The move that the number alone asks for: the lower arch up, the outer front in. */
const archMove = ({ compared }: Given): NextMove =>
  compared['arch-height'].differenceMm > 0 ? 'raise-right-arch' : 'raise-left-arch';
const frontMove = ({ compared }: Given): NextMove =>
  compared['front-place'].differenceMm > 0 ? 'bring-in-left-front' : 'bring-in-right-front';
const otherArch = (given: Given): NextMove =>
  archMove(given) === 'raise-right-arch' ? 'raise-left-arch' : 'raise-right-arch';
const otherFront = (given: Given): NextMove =>
  frontMove(given) === 'bring-in-right-front' ? 'bring-in-left-front' : 'bring-in-right-front';

/** The difference that the readings show; the page deals one at most. */
const realThing = ({ compared }: Given) => comparedThings.find((thing) => isReal(compared[thing]));
/** A real difference in sides that were read alike, and no yes to a change: hers to hear of and to decide. */
const isUntold = (given: Given) =>
  isAlike(given) && realThing(given) !== undefined && given.wish !== 'said-yes';

function rightMove(given: Given): NextMove {
  if (!isAlike(given)) return 'measure-again';
  const real = realThing(given);
  if (!real) return 'change-nothing';
  if (isUntold(given)) return 'ask-first';
  return real === 'arch-height' ? archMove(given) : frontMove(given);
}

function deal(draw: Draw): Given {
  const reading = {
    temMm: drawOne(draw, [0.2, 0.3, 0.4]),
    readings: drawWhole(draw, 2, 3),
    budgetMm: budgetMm([
      { halfWidthMm: measuringFacts['pencil-half-width-mm'].value },
      { halfWidthMm: measuringFacts['caliper-half-width-mm'].value },
    ]),
  };
  const realMm = tenths(smallestRealDifferenceMm(reading, familyCoverageFactor(comparedThings.length)));
  const chance = draw();
  const isUnlike = chance >= 0.86;
  const isShown = chance >= 0.37 && !isUnlike;
  const real: ComparedThing | 'none' = isUnlike
    ? drawOne(draw, ['none', 'arch-height', 'front-place'])
    : isShown
      ? drawOne(draw, ['arch-height', 'front-place'])
      : 'none';
  const wish: Wish = isUnlike
    ? drawOne(draw, wishes)
    : isShown && chance >= 0.57
      ? 'said-yes'
      : drawOne(draw, ['quiet', 'quiet', 'asks']);
  const row = (thing: ComparedThing): Compared => {
    const sign = draw() < 0.5 ? -1 : 1;
    const share =
      thing === real ? 1.25 + 1.2 * draw() : 0.2 + 0.65 * Math.abs(drawNormalWithin(draw, 0.5, 0.4, 0, 1));
    const differenceMm = tenths(sign * realMm * share);
    const { lo, hi } = intervalAround(differenceMm, realMm, 1);
    return { differenceMm, loMm: tenths(lo), hiMm: tenths(hi) };
  };
  const compared = {
    'front-height': row('front-height'),
    'arch-height': row('arch-height'),
    'tail-height': row('tail-height'),
    'front-place': row('front-place'),
  };
  const odd = isUnlike ? drawOne(draw, otherwise) : alike;
  return { compared, wish, taken: draw() < 0.5 ? { right: odd, left: alike } : { right: alike, left: odd } };
}

/** True when no number is 0 and no range ends close to 0. */
function isClear({ compared }: Given): boolean {
  return Object.values(compared).every(
    ({ differenceMm, loMm, hiMm }) =>
      Math.abs(differenceMm) > 0.05 && Math.abs(loMm) > 0.05 && Math.abs(hiMm) > 0.05,
  );
}

/**
 * What to do after measuring: unlike sides are read again; a difference whose range leaves 0 out is told,
 * asked about and drawn; pigment is added only after her yes.
 */
export const changeNothing: Skill<Given> = {
  id: 'change-nothing',
  version: 2,
  words: changeNothingWords,
  given: (seed) => {
    const draw = drawFrom(seed);
    for (;;) {
      const given = deal(draw);
      if (isClear(given)) return given;
    }
  },
  answer: (given) => ({ kind: 'choice', correct: rightMove(given), options: nextMoves }),
  slips: [
    {
      id: 'left-untold',
      credit: 0.6,
      value: (given) => (isUntold(given) ? 'change-nothing' : 'no such move'),
    },
    { id: 'left-it', credit: 0.2, value: (given) => (isUntold(given) ? 'no such move' : 'change-nothing') },
    { id: 'asked-first', credit: 0.4, value: () => 'ask-first' },
    { id: 'measured-again', credit: 0.2, value: () => 'measure-again' },
    { id: 'chased-arch', credit: 0, value: archMove },
    { id: 'chased-front', credit: 0, value: frontMove },
    { id: 'arch-wrong-side', credit: 0, value: otherArch },
    { id: 'front-wrong-side', credit: 0, value: otherFront },
  ],
  steps: (given) => [
    { id: 'alike', values: { unlike: unlikeWords(given) } },
    { id: 'ranges', values: { real: realWords(given) } },
    { id: 'wish', values: { wish: given.wish } },
    { id: 'move', values: { answer: changeNothingWords.option(rightMove(given), given) } },
  ],
  facts: ['pencil-half-width-mm', 'caliper-half-width-mm', 'family-false-alarm'],
};
