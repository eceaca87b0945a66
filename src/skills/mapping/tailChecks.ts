import { tailAgainstLine, tailLimitAtMm } from '#lib/mapping/placing/tailLine.ts';
import { drawFrom, drawOne, type Draw } from '#lib/quantities/seed.ts';
import {
  type OutUp,
  type TailChecksGiven,
  tailChecksWords,
  tailVerdicts,
  type TailVerdict,
} from '#words/skills/tailChecks.ts';
import type { Skill } from '../skill.ts';

type Given = TailChecksGiven;
const limitMm = 1;
const toTenth = (mm: number) => Math.round(mm * 10) / 10;
const point = ({ outMm, upMm }: OutUp) => ({ uMm: outMm, vMm: upMm });
const lineOf = ({ wing, corner }: Pick<Given, 'wing' | 'corner'>) => ({
  wing: point(wing),
  corner: point(corner),
});

/**
 * Room of each check, mm: minus where it is broken. A kept length has room while the brow is no longer than
 * the other.
 */
function rooms(given: Given): Readonly<Record<Exclude<TailVerdict, 'passes'>, number>> {
  const against = tailAgainstLine(lineOf(given), point(given.tail));
  return {
    'past-line': against.ok ? against.insideLevelMm : 0,
    'too-low': given.tail.upMm - given.frontLower.upMm,
    'too-high': given.frontTop.upMm - given.tail.upMm,
    longer: given.otherLengthMm - (given.tail.outMm - given.frontLower.outMm),
  };
}

const broken = (given: Given) => {
  const room = rooms(given);
  return tailVerdicts.filter((name) => name !== 'passes' && room[name] <= -given.limitMm);
};

function deal(draw: Draw): Given {
  const wanted = drawOne<TailVerdict>(draw, ['past-line', 'too-low', 'too-high', 'longer', 'passes']);
  const about = (lo: number, hi: number) => toTenth(lo + (hi - lo) * draw());
  const wing = { outMm: about(17, 22), upMm: -about(36, 41) };
  const corner = { outMm: about(44, 49), upMm: about(0, 4) };
  const lower = about(9, 13);
  const frontLower = { outMm: about(14, 18), upMm: lower };
  const frontTop = { outMm: toTenth(frontLower.outMm + about(0, 1.2)), upMm: toTenth(lower + about(6, 8)) };
  const upMm =
    wanted === 'too-low'
      ? lower - about(1.4, 3)
      : wanted === 'too-high'
        ? frontTop.upMm + about(1.4, 2.6)
        : lower + about(1.2, 4.6);
  const roomMm = wanted === 'past-line' ? -about(1.4, 4) : about(1, 4);
  const tail = {
    outMm: toTenth(tailLimitAtMm(lineOf({ wing, corner }), upMm) - roomMm),
    upMm: toTenth(upMm),
  };
  const shorterMm = wanted === 'longer' ? about(1.6, 4) : about(-0.5, 0.4);
  return {
    side: draw() < 0.5 ? 'right' : 'left',
    wing,
    corner,
    frontLower,
    frontTop,
    tail,
    otherLengthMm: toTenth(tail.outMm - frontLower.outMm - shorterMm),
    limitMm,
  };
}

/** One tail against four habits of the trade; at most one is broken, and never by a hair. */
export const tailChecks: Skill<Given> = {
  id: 'tail-checks',
  version: 1,
  words: tailChecksWords,
  given: (seed) => {
    const draw = drawFrom(seed);
    for (;;) {
      const given = deal(draw);
      const isClear = Object.values(rooms(given)).every((room) => room > -0.6 || room < -1.3);
      if (isClear && broken(given).length <= 1) return given;
    }
  },
  answer: (given) => ({ kind: 'choice', correct: broken(given)[0] ?? 'passes', options: tailVerdicts }),
  slips: [
    { id: 'said-past-line', credit: 0, value: () => 'past-line' },
    { id: 'said-too-low', credit: 0, value: () => 'too-low' },
    { id: 'said-too-high', credit: 0, value: () => 'too-high' },
    { id: 'said-longer', credit: 0, value: () => 'longer' },
    { id: 'said-passes', credit: 0, value: () => 'passes' },
  ],
  steps: (given) => {
    const { wing, corner, frontLower, frontTop, tail, otherLengthMm } = given;
    const slope = (corner.outMm - wing.outMm) / (corner.upMm - wing.upMm);
    return [
      {
        id: 'line',
        values: {
          slope,
          upMm: tail.upMm,
          limitMm: tailLimitAtMm(lineOf(given), tail.upMm),
          outMm: tail.outMm,
        },
      },
      { id: 'level', values: { upMm: tail.upMm, lowerMm: frontLower.upMm, topMm: frontTop.upMm } },
      {
        id: 'length',
        values: {
          outMm: tail.outMm,
          frontMm: frontLower.outMm,
          lengthMm: tail.outMm - frontLower.outMm,
          otherMm: otherLengthMm,
        },
      },
      { id: 'decide', values: { answer: tailChecksWords.option(broken(given)[0] ?? 'passes', given) } },
    ];
  },
  facts: ['tail-inside-the-line', 'tail-tip-in-the-band', 'lengths-equal'],
};
