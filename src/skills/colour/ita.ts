import { hueDeg } from '#lib/colour/spaces/lch.ts';
import { rangeAround } from '#lib/quantities/closedRange.ts';
import { drawFrom, drawOne, drawWhole } from '#lib/quantities/seed.ts';
import { itaWords, type ItaGiven } from '#words/skills/ita.ts';
import { skinClients } from '#words/skills/skinClients.ts';
import { areApart } from '../mapping/areApart.ts';
import type { Skill } from '../skill.ts';

const tolerance = 0.3;
const degrees = (tangent: number) => (Math.atan(tangent) * 180) / Math.PI;

/**
 * The library's sum, written out: a lesson that shows the calculator as well then asks for one file less. A
 * test holds them together.
 */
const angle = ({ skinL, skinB }: ItaGiven): number => degrees((skinL - 50) / skinB);

const slips: Skill<ItaGiven>['slips'] = [
  { id: 'forgot-fifty', credit: 0.3, value: ({ skinL, skinB }) => degrees(skinL / skinB) },
  { id: 'used-red', credit: 0.3, value: ({ skinL, skinA }) => degrees((skinL - 50) / skinA) },
  { id: 'upside-down', credit: 0.4, value: ({ skinL, skinB }) => degrees(skinB / (skinL - 50)) },
  { id: 'no-angle', credit: 0.5, value: ({ skinL, skinB }) => (skinL - 50) / skinB },
  { id: 'hue-angle', credit: 0, value: ({ skinA, skinB }) => hueDeg(skinA, skinB) },
];

/** The typology angle of one reading, from L* 34 to 74. */
export const ita: Skill<ItaGiven> = {
  id: 'ita',
  version: 1,
  words: itaWords,
  given: (seed) => {
    const draw = drawFrom(seed);
    for (;;) {
      const given = {
        client: drawOne(draw, skinClients),
        skinL: drawWhole(draw, 68, 148) / 2,
        skinA: drawWhole(draw, 14, 28) / 2,
        skinB: drawWhole(draw, 22, 44) / 2,
      };
      if (
        given.skinL !== 50 &&
        areApart(
          angle(given),
          slips.map(({ value }) => Number(value(given))),
          tolerance,
        )
      )
        return given;
    }
  },
  answer: (given) => ({
    kind: 'number',
    range: rangeAround(angle(given), tolerance, 1),
    exact: angle(given),
    unit: '°',
  }),
  slips,
  steps: (given) => {
    const { skinL, skinB } = given;
    return [
      { id: 'above', values: { skinL, above: skinL - 50 } },
      { id: 'over', values: { above: skinL - 50, skinB, over: (skinL - 50) / skinB } },
      { id: 'angle', values: { over: (skinL - 50) / skinB, angle: angle(given) } },
    ];
  },
  facts: ['ita-light-above-deg', 'ita-intermediate-above-deg'],
};
