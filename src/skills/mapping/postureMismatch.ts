import { budgetMm, smallestRealDifferenceMm } from '#lib/mapping/uncertainty/budget.ts';
import { measuringFacts } from '#lib/mapping/facts/measuring.ts';
import { familyCoverageFactor } from '#lib/mapping/uncertainty/familyWise.ts';
import { type Unlike, unlikeParts } from '#lib/mapping/compare/unlikeParts.ts';
import { drawFrom, drawOne, drawWhole, type Draw } from '#lib/quantities/seed.ts';
import { mismatchCodes, mismatchWords, postureMismatchWords } from '#words/skills/postureMismatch.ts';
import type { MismatchCode, PostureMismatchGiven } from '#words/skills/postureMismatch.ts';
import type { TakenSide } from '#words/skills/changeNothing.ts';
import type { Skill } from '../skill.ts';

type Given = PostureMismatchGiven;
const tenths = (mm: number) => Math.round(mm * 10) / 10;
const rest: TakenSide = { pose: 'rest', posture: 'sitting', skin: 'normal' };
const halfWidths = ['pencil-half-width-mm', 'caliper-half-width-mm', 'thread-half-width-mm'] as const;
const exampleBudgetMm = budgetMm(halfWidths.map((id) => ({ halfWidthMm: measuringFacts[id].value })));
const codeOf: Readonly<Record<Unlike, MismatchCode>> = {
  'pose-differs': 'pose',
  'posture-differs': 'posture',
  'skin-differs': 'skin',
};

const changeMm = ({ thenMm, nowMm }: Given) => tenths(nowMm - thenMm);
function right(given: Given): MismatchCode {
  const [unlike] = unlikeParts(given.then, given.now);
  if (unlike !== undefined) return codeOf[unlike];
  return Math.abs(changeMm(given)) > given.realMm ? 'moved' : 'not-shown';
}

/** Another state of the face than the one given, differing in one part. */
function other(draw: Draw, base: TakenSide): TakenSide {
  const part = drawOne(draw, ['pose', 'posture', 'posture', 'skin']);
  if (part === 'posture') return { ...base, posture: base.posture === 'sitting' ? 'lying' : 'sitting' };
  if (part === 'pose')
    return {
      ...base,
      pose: drawOne<TakenSide['pose']>(
        draw,
        base.pose === 'rest' ? ['raised', 'frown', 'eyes-closed'] : ['rest', 'raised'],
      ),
    };
  return {
    ...base,
    skin: drawOne<TakenSide['skin']>(draw, base.skin === 'normal' ? ['numb', 'swollen'] : ['normal']),
  };
}

function deal(draw: Draw): Given {
  const base = drawOne<TakenSide>(draw, [
    rest,
    rest,
    { ...rest, posture: 'lying' },
    { ...rest, pose: 'eyes-closed' },
    { ...rest, skin: 'numb' },
  ]);
  const changed = draw() < 0.55 ? other(draw, base) : base;
  const isTurned = draw() < 0.5;
  const reading = {
    temMm: drawOne(draw, [0.2, 0.3, 0.4, 0.5]),
    readings: drawWhole(draw, 1, 4),
    budgetMm: exampleBudgetMm,
  };
  const realMm = tenths(smallestRealDifferenceMm(reading, familyCoverageFactor(1)));
  const thenMm = tenths(17 + 6 * draw());
  const byMm = (draw() < 0.5 ? -1 : 1) * realMm * (draw() < 0.5 ? 0.15 + 0.65 * draw() : 1.25 + 1.3 * draw());
  return {
    side: drawOne(draw, ['right', 'left']),
    then: isTurned ? changed : base,
    now: isTurned ? base : changed,
    thenMm,
    nowMm: tenths(thenMm + byMm),
    realMm,
  };
}

/**
 * Two readings of one arch: refuse with the reason where they were not taken alike, otherwise real or not
 * shown.
 */
export const postureMismatch: Skill<Given> = {
  id: 'posture-mismatch',
  version: 1,
  words: postureMismatchWords,
  given: (seed) => {
    const draw = drawFrom(seed);
    for (;;) {
      const given = deal(draw);
      if (changeMm(given) !== 0 && Math.abs(Math.abs(changeMm(given)) - given.realMm) > 0.15) return given;
    }
  },
  answer: (given) => ({ kind: 'choice', correct: right(given), options: mismatchCodes }),
  slips: [
    { id: 'said-moved', credit: 0, value: () => 'moved' },
    { id: 'said-not-shown', credit: 0, value: () => 'not-shown' },
    { id: 'blamed-pose', credit: 0.3, value: () => 'pose' },
    { id: 'blamed-posture', credit: 0.3, value: () => 'posture' },
    { id: 'blamed-skin', credit: 0.3, value: () => 'skin' },
  ],
  steps: (given) => {
    const unlike = mismatchWords(given);
    return [
      { id: 'alike', values: { unlike } },
      {
        id: 'change',
        values: {
          nowMm: given.nowMm,
          thenMm: given.thenMm,
          changeMm: changeMm(given),
          realMm: given.realMm,
          use: unlike === 'nothing' ? 'This number decides.' : 'This number may not be used.',
        },
      },
      { id: 'answer', values: { answer: postureMismatchWords.option(right(given), given) } },
    ];
  },
  facts: [
    'upright-to-draw',
    'side-marks-moved-lying',
    'pencil-half-width-mm',
    'caliper-half-width-mm',
    'thread-half-width-mm',
  ],
};
