import { rangeAround } from '#lib/quantities/closedRange.ts';
import { drawFrom, drawOne, drawWhole, type Draw } from '#lib/quantities/seed.ts';
import { dropsToRatioWords, type DropsToRatioGiven } from '#words/skills/dropsToRatio.ts';
import { areApart } from '../mapping/areApart.ts';
import type { Skill } from '../skill.ts';

type Given = DropsToRatioGiven;
const bottles = [
  'yellow-heavy brown',
  'even brown',
  'red-heavy brown',
  'dark brown',
  'orange',
  'iron black',
] as const;
const whole = ({ firstDrops, secondDrops }: Given) => firstDrops + secondDrops;
const right = (given: Given) =>
  given.asks === 'ratio' ? given.firstDrops / given.secondDrops : (100 * given.secondDrops) / whole(given);
/** A ratio is wanted to a tenth, a share to half a per cent. */
const tolerance = ({ asks }: Given) => (asks === 'ratio' ? 0.1 : 0.6);

const slips: Skill<Given>['slips'] = [
  {
    id: 'inverted',
    credit: 0.5,
    value: (given) =>
      given.asks === 'ratio' ? given.secondDrops / given.firstDrops : (100 * given.firstDrops) / whole(given),
  },
  {
    id: 'share-for-ratio',
    credit: 0.3,
    value: (given) =>
      given.asks === 'ratio' ? given.firstDrops / whole(given) : (100 * given.secondDrops) / given.firstDrops,
  },
  {
    id: 'whole-for-one',
    credit: 0.4,
    value: (given) =>
      given.asks === 'ratio' ? whole(given) / given.secondDrops : given.secondDrops / whole(given),
  },
];

function deal(draw: Draw): Given {
  return {
    first: drawOne(draw, bottles),
    second: drawOne(draw, bottles),
    firstDrops: drawWhole(draw, 1, 9),
    secondDrops: drawWhole(draw, 1, 6),
    asks: drawOne<Given['asks']>(draw, ['ratio', 'share']),
  };
}

/**
 * The ratio of two bottles, or the share of one of them in the mix. Dealt again until no wrong method gives
 * the right answer.
 */
export const dropsToRatio: Skill<Given> = {
  id: 'drops-to-ratio',
  version: 1,
  words: dropsToRatioWords,
  given: (seed) => {
    const draw = drawFrom(seed);
    for (;;) {
      const given = deal(draw);
      const wrong = slips.map(({ value }) => Number(value(given)));
      if (
        given.first !== given.second &&
        given.firstDrops !== given.secondDrops &&
        areApart(right(given), wrong, tolerance(given))
      )
        return given;
    }
  },
  answer: (given) => ({
    kind: 'number',
    range: rangeAround(right(given), tolerance(given), 1),
    exact: right(given),
    unit: given.asks === 'ratio' ? 'drops' : '%',
  }),
  slips,
  steps: (given) => {
    const { firstDrops, secondDrops } = given;
    return given.asks === 'ratio'
      ? [
          { id: 'order', values: { firstDrops, secondDrops } },
          { id: 'ratio', values: { firstDrops, secondDrops, answer: right(given) } },
        ]
      : [
          { id: 'whole', values: { firstDrops, secondDrops, whole: whole(given) } },
          { id: 'share', values: { secondDrops, whole: whole(given), answer: right(given) } },
        ];
  },
  facts: ['recipes-in-drops'],
};
