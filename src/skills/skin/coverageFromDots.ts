import { shareOfDots } from '#lib/colour/coverage/coverage.ts';
import { rangeAround } from '#lib/quantities/closedRange.ts';
import { drawFrom, drawWhole, type Draw } from '#lib/quantities/seed.ts';
import { coverageFromDotsWords, type CoverageFromDotsGiven } from '#words/skills/coverageFromDots.ts';
import { areApart } from '../mapping/areApart.ts';
import type { Skill } from '../skill.ts';

type Given = CoverageFromDotsGiven;

const tolerance = 0.5;
const right = ({ dotsPerMm2, acrossMm }: Given) =>
  100 * shareOfDots({ perMm2: dotsPerMm2, diameterMm: acrossMm });
const discMm2 = ({ acrossMm }: Given) => (Math.PI * acrossMm * acrossMm) / 4;

function deal(draw: Draw): Given {
  return { dotsPerMm2: drawWhole(draw, 40, 150) / 10, acrossMm: drawWhole(draw, 14, 32) / 100 };
}

const slips: Skill<Given>['slips'] = [
  {
    id: 'radius',
    credit: 0.4,
    value: ({ dotsPerMm2, acrossMm }) => 100 * shareOfDots({ perMm2: dotsPerMm2, diameterMm: 2 * acrossMm }),
  },
  { id: 'no-overlap', credit: 0.5, value: (given) => 100 * given.dotsPerMm2 * discMm2(given) },
  {
    id: 'square',
    credit: 0.4,
    value: ({ dotsPerMm2, acrossMm }) => 100 * -Math.expm1(-dotsPerMm2 * acrossMm * acrossMm),
  },
  { id: 'bare', credit: 0.5, value: (given) => 100 - right(given) },
];

/**
 * Share of skin that dots cover, set as chance has it. Dealt again until no wrong method gives the right
 * answer.
 */
export const coverageFromDots: Skill<Given> = {
  id: 'coverage-from-dots',
  version: 1,
  words: coverageFromDotsWords,
  given: (seed) => {
    const draw = drawFrom(seed);
    for (;;) {
      const given = deal(draw);
      if (
        right(given) < 65 &&
        areApart(
          right(given),
          slips.map(({ value }) => Number(value(given))),
          tolerance,
        )
      )
        return given;
    }
  },
  answer: (given) => ({
    kind: 'number',
    range: rangeAround(right(given), tolerance, 1),
    exact: right(given),
    unit: '%',
  }),
  slips,
  steps: (given) => {
    const load = given.dotsPerMm2 * discMm2(given);
    return [
      {
        id: 'disc',
        values: { acrossMm: given.acrossMm, radiusMm: given.acrossMm / 2, disc: discMm2(given) },
      },
      { id: 'all', values: { dots: given.dotsPerMm2, disc: discMm2(given), load } },
      { id: 'overlap', values: { load, bare: Math.exp(-load), answer: right(given) } },
    ];
  },
  facts: ['lines-widen'],
};
