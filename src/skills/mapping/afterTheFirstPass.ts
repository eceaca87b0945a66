import { nextStep } from '#lib/mapping/again/nextStep.ts';
import { shortOfOutlineMm, wayOut } from '#lib/mapping/again/shortOfOutline.ts';
import { chaseFromMm } from '#lib/mapping/again/chaseFrom.ts';
import { intervalAround } from '#lib/quantities/interval.ts';
import type { SkinState } from '#lib/mapping/markSet.ts';
import { drawFrom, drawOne, type Draw } from '#lib/quantities/seed.ts';
import { afterTheFirstPassWords, nextSteps } from '#words/skills/afterTheFirstPass.ts';
import type { AfterTheFirstPassGiven, HeightMark, NextStepCode } from '#words/skills/afterTheFirstPass.ts';
import { skinWords } from '#words/marks.ts';
import type { Skill } from '../skill.ts';

type Given = AfterTheFirstPassGiven;

const tenths = (mm: number) => Math.round(mm * 10) / 10;
const alike = { pose: 'rest', posture: 'sitting' } as const;
const otherwise = [{ pose: 'rest', posture: 'lying' }, { pose: 'raised', posture: 'sitting' }, { pose: 'frown', posture: 'sitting' }] as const;
const heights: Readonly<Record<HeightMark, number>> = { frontTop: 25, archTop: 33, frontLower: 17, archLower: 26 };

const shortMm = ({ mark, approvedMm, pigmentMm }: Given) => tenths(shortOfOutlineMm(mark, { uMm: 0, vMm: approvedMm }, { uMm: 0, vMm: pigmentMm }));
const isAlike = ({ now }: Given) => now.pose === alike.pose && now.posture === alike.posture;

function rightStep(given: Given): NextStepCode {
  if (!isAlike(given)) return 'measure-again';
  const step = nextStep(intervalAround(shortMm(given), given.realFromMm, 1), given.now.skin, given.chaseFromMm);
  return step.do === 'add-here' ? 'add-here' : `stop-${step.because}`;
}

/** A gap in one of five places: plainly short, not shown, past the outline, short but small on swollen skin, or read unlike. */
function deal(draw: Draw): Given {
  const mark = drawOne<HeightMark>(draw, ['frontTop', 'archTop', 'frontLower', 'archLower']);
  const realFromMm = drawOne(draw, [0.6, 0.7, 0.8]);
  const where = draw();
  const swollen = drawOne<SkinState>(draw, ['swollen', 'swollen', 'numb', 'normal']);
  const base = { mark, realFromMm, chaseFromMm, approvedMm: tenths(heights[mark] + 4 * draw() - 2) };
  const at = (outMm: number, now: Given['now']): Given => ({ ...base, pigmentMm: tenths(base.approvedMm + (wayOut(mark) === 'up' ? outMm : -outMm)), now });
  const size = draw();
  if (where < 0.28) return at(-1.2 - 1.3 * size, { ...alike, skin: swollen });
  if (where < 0.46) return at((draw() < 0.5 ? -1 : 1) * (0.1 + (realFromMm - 0.2) * size), { ...alike, skin: swollen });
  if (where < 0.66) return at(realFromMm + 0.1 + 1.2 * size, { ...alike, skin: swollen });
  if (where < 0.83) return at(-(realFromMm + 0.1 + (0.85 - realFromMm) * size), { ...alike, skin: 'swollen' });
  return at((draw() < 0.7 ? -1 : 1) * (1.2 + size), { ...drawOne<Omit<Given['now'], 'skin'>>(draw, otherwise), skin: swollen });
}

/** True when the gap keeps clear of what is real and of what is chased, as printed to tenths. */
function isClear(given: Given): boolean {
  const gap = Math.abs(shortMm(given));
  return gap > 0.05 && Math.abs(gap - given.realFromMm) > 0.05 && Math.abs(gap - given.chaseFromMm) > 0.05;
}

const slip = (id: string, code: NextStepCode, credit: number) => ({ id, credit, value: () => code });

/** The next step at one mark after the first pass: add here, or stop and why; readings taken unlike are refused. */
export const afterTheFirstPass: Skill<Given> = {
  id: 'after-the-first-pass',
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
    slip('read-again', 'measure-again', 0.2),
    slip('hid-it', 'hide-it', 0),
  ],
  steps: (given) => {
    const short = shortMm(given);
    const upper = wayOut(given.mark) === 'up';
    return [
      { id: 'alike', values: { alike: isAlike(given) ? 'Pose and position are those of the approval, so the two readings can be compared.' : 'She is not placed as she was when she approved: the two readings are not compared.' } },
      { id: 'gap', values: { way: upper ? 'At an upper mark, lower is short and higher is over.' : 'At a lower edge, higher is short and lower is over.', gapMm: Math.abs(short), side: short > 0 ? 'short' : 'over' } },
      { id: 'real', values: { realFromMm: given.realFromMm, skin: skinWords[given.now.skin] } },
      { id: 'step', values: { answer: afterTheFirstPassWords.option(rightStep(given), given) } },
    ];
  },
  facts: ['swollen-chase-from-mm', 'add-or-stop', 'factor-95'],
};
