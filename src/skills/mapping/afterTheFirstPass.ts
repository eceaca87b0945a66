import { nextStep } from '#lib/mapping/again/nextStep.ts';
import { acrossFrom, shortOfOutlineMm, wayOut } from '#lib/mapping/again/shortOfOutline.ts';
import { chaseFromMm } from '#lib/mapping/numbers/again.ts';
import { intervalAround } from '#lib/quantities/interval.ts';
import type { SkinState } from '#lib/mapping/marks/markSet.ts';
import { drawFrom, drawOne, type Draw } from '#lib/quantities/seed.ts';
import {
  acrossWords,
  afterTheFirstPassWords,
  nextSteps,
  wayInWords,
} from '#words/skills/afterTheFirstPass.ts';
import type { AfterTheFirstPassGiven, HeightMark, NextStepCode } from '#words/skills/afterTheFirstPass.ts';
import { skinWords } from '#words/marks.ts';
import type { Skill } from '../skill.ts';

type Given = AfterTheFirstPassGiven;

const tenths = (mm: number) => Math.round(mm * 10) / 10;
const alike = { pose: 'rest', posture: 'sitting' } as const;
const otherwise = [
  { pose: 'rest', posture: 'lying' },
  { pose: 'raised', posture: 'sitting' },
  { pose: 'frown', posture: 'sitting' },
] as const;
const heights: Readonly<Record<HeightMark, number>> = {
  frontTop: 25,
  archTop: 33,
  frontLower: 17,
  archLower: 26,
};

/** How far a gap goes outwards, up at an upper edge and down at a lower one, as a number on the ruler. */
const outwards = (mark: HeightMark, outMm: number) => (wayOut(mark) === 'up' ? outMm : -outMm);
const at = (vMm: number) => ({ uMm: 0, vMm });
const shortMm = ({ mark, approvedMm, pigmentMm }: Given) =>
  tenths(shortOfOutlineMm(mark, at(approvedMm), at(pigmentMm)));
const shortAcrossMm = ({ mark, across }: Given) =>
  tenths(shortOfOutlineMm(acrossFrom(mark) ?? mark, at(across.approvedMm), at(across.pigmentMm)));
const isAlike = ({ now }: Given) => now.pose === alike.pose && now.posture === alike.posture;

function rightStep(given: Given): NextStepCode {
  if (!isAlike(given)) return 'measure-again';
  const around = (gapMm: number) => intervalAround(gapMm, given.realFromMm, 1);
  const step = nextStep(
    { short: around(shortMm(given)), across: around(shortAcrossMm(given)) },
    given.now.skin,
    given.chaseFromMm,
  );
  if (step.do === 'read-again') return 'measure-again';
  return step.do === 'add-here' ? 'add-here' : `stop-${step.because}`;
}

/**
 * A gap in one of seven places: plainly short, not shown, past the outline, short but small on swollen skin,
 * read unlike, both edges moved, or short where the other edge is past its line.
 */
function deal(draw: Draw): Given {
  const mark = drawOne<HeightMark>(draw, ['frontTop', 'archTop', 'frontLower', 'archLower']);
  const realFromMm = drawOne(draw, [0.6, 0.7, 0.8]);
  const where = draw();
  const swollen = drawOne<SkinState>(draw, ['swollen', 'swollen', 'numb', 'normal']);
  const approvedMm = tenths(heights[mark] + 4 * draw() - 2);
  const acrossMm = tenths(approvedMm - outwards(mark, 6.6 + 1.6 * draw()));
  const size = draw();
  const beside = draw();
  const dealt = (outMm: number, now: Given['now'], acrossOutMm = 0.4 * beside - 0.2): Given => ({
    mark,
    realFromMm,
    chaseFromMm,
    approvedMm,
    now,
    pigmentMm: tenths(approvedMm + outwards(mark, outMm)),
    across: { approvedMm: acrossMm, pigmentMm: tenths(acrossMm - outwards(mark, acrossOutMm)) },
  });
  const sign = draw() < 0.5 ? -1 : 1;
  /** The whole place moved: out at this edge is in at the other. */
  const shifted = (now: Given['now']) => {
    const by = sign * (1.1 + 0.9 * size);
    return dealt(by, now, -by + 0.6 * beside - 0.3);
  };
  if (where < 0.2) return dealt(-1.2 - 1.3 * size, { ...alike, skin: swollen });
  if (where < 0.34) return dealt(sign * (0.1 + (realFromMm - 0.2) * size), { ...alike, skin: swollen });
  if (where < 0.49) return dealt(realFromMm + 0.1 + 1.2 * size, { ...alike, skin: swollen });
  if (where < 0.63)
    return dealt(-(realFromMm + 0.1 + (0.85 - realFromMm) * size), { ...alike, skin: 'swollen' });
  if (where < 0.75)
    return shifted({ ...drawOne<Omit<Given['now'], 'skin'>>(draw, otherwise), skin: swollen });
  if (where < 0.88) return shifted({ ...alike, skin: swollen });
  return dealt(-2.4 - 0.4 * size, { ...alike, skin: swollen }, realFromMm + 0.1 + 0.15 * beside);
}

/**
 * True when the gaps keep clear of what is real, of what is chased and of half of each other, as printed to
 * tenths.
 */
function isClear(given: Given): boolean {
  const gap = Math.abs(shortMm(given));
  const across = Math.abs(shortAcrossMm(given));
  return (
    gap > 0.05 &&
    [gap, across].every((mm) => Math.abs(mm - given.realFromMm) > 0.05) &&
    Math.abs(gap - given.chaseFromMm) > 0.05 &&
    Math.abs(Math.min(gap, across) - Math.max(gap, across) / 2) > 0.04
  );
}

const slip = (id: string, code: NextStepCode, credit: number) => ({ id, credit, value: () => code });

/**
 * The next step at one mark after the first pass: add here, or stop and why; what was taken unlike, or moved
 * as a whole, is read again.
 */
export const afterTheFirstPass: Skill<Given> = {
  id: 'after-the-first-pass',
  version: 2,
  words: afterTheFirstPassWords,
  given: (seed) => {
    const draw = drawFrom(seed);
    for (;;) {
      const given = deal(draw);
      if (isClear(given)) return given;
    }
  },
  answer: (given) => ({ kind: 'choice', correct: rightStep(given), options: nextSteps }),
  slips: [
    slip('added-it', 'add-here', 0),
    slip('called-not-shown', 'stop-not-shown', 0.4),
    slip('blamed-swelling', 'stop-swollen', 0.4),
    slip('called-over', 'stop-over', 0.2),
    slip('called-thicker', 'stop-thicker', 0.4),
    slip('read-again', 'measure-again', 0.2),
    slip('hid-it', 'hide-it', 0),
  ],
  steps: (given) => {
    const short = shortMm(given);
    return [
      {
        id: 'alike',
        values: {
          alike: isAlike(given)
            ? 'Pose and position are those of the approval, so the two readings can be compared.'
            : 'She is not placed as she was when she approved: the two readings are not compared.',
        },
      },
      {
        id: 'gap',
        values: { way: wayInWords(given.mark), gapMm: Math.abs(short), side: short > 0 ? 'short' : 'over' },
      },
      { id: 'across', values: { across: acrossWords(given) } },
      { id: 'real', values: { realFromMm: given.realFromMm, skin: skinWords[given.now.skin] } },
      { id: 'step', values: { answer: afterTheFirstPassWords.option(rightStep(given), given) } },
    ];
  },
  facts: ['swollen-chase-from-mm', 'add-or-stop', 'factor-95'],
};
