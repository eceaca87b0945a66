import { fakedHeightMm } from '#lib/mapping/level/fakedHeight.ts';
import { tiltBehind } from '#lib/mapping/level/tiltBehind.ts';
import { rangeAround } from '#lib/quantities/closedRange.ts';
import { drawFrom, drawOne, drawWhole, type Draw } from '#lib/quantities/seed.ts';
import { tiltWords, type TiltGiven } from '#words/skills/tilt.ts';
import type { Skill } from '../skill.ts';
import { areApart } from './areApart.ts';

type Given = TiltGiven;
const tolerance = 0.1;
const degree = Math.PI / 180;

function behindDeg(heightMm: number, spanMm: number): number {
  const tilt = tiltBehind(heightMm, spanMm);
  return tilt.ok ? tilt.tiltDeg : 90;
}

/** The answer with `share` of the span: the right one, or half or twice of it. */
const withShare = (given: Given, share: number): number =>
  given.asks === 'height'
    ? fakedHeightMm(given.spanMm * share, given.tiltDeg)
    : behindDeg(given.heightMm, given.spanMm * share);

const slips: Skill<Given>['slips'] = [
  { id: 'half-span', credit: 0.5, value: (given) => withShare(given, 0.5) },
  { id: 'doubled', credit: 0.5, value: (given) => withShare(given, 2) },
  {
    id: 'per-cent',
    credit: 0.4,
    value: (given) =>
      given.asks === 'height' ? (given.spanMm * given.tiltDeg) / 100 : (100 * given.heightMm) / given.spanMm,
  },
  {
    id: 'as-it-stands',
    credit: 0,
    value: (given) => (given.asks === 'height' ? given.tiltDeg : given.heightMm),
  },
  {
    id: 'radians',
    credit: 0.3,
    value: (given) =>
      given.asks === 'height'
        ? Math.abs(given.spanMm * Math.sin(given.tiltDeg))
        : withShare(given, 1) * degree,
  },
];

function deal(draw: Draw): Given {
  const between = drawOne<Given['between']>(draw, ['fronts', 'arches', 'arches', 'tails']);
  const spanMm =
    between === 'fronts'
      ? drawWhole(draw, 30, 44)
      : between === 'arches'
        ? drawWhole(draw, 74, 92)
        : drawWhole(draw, 104, 122);
  const tiltDeg = drawWhole(draw, 2, 12) / 2;
  if (draw() < 0.6) return { between, spanMm, asks: 'height', tiltDeg };
  return {
    between,
    spanMm,
    asks: 'tilt',
    heightMm: Math.round(fakedHeightMm(spanMm, tiltDeg + 0.6 * draw() - 0.3) * 10) / 10,
  };
}

/** What a tilt fakes between two points, or the tilt behind what was read: span × sine, and back. */
export const tilt: Skill<Given> = {
  id: 'tilt',
  version: 1,
  words: tiltWords,
  given: (seed) => {
    const draw = drawFrom(seed);
    for (;;) {
      const given = deal(draw);
      const right = withShare(given, 1);
      if (
        right > 0.6 &&
        areApart(
          right,
          slips.map(({ value }) => Number(value(given))),
          tolerance,
        )
      )
        return given;
    }
  },
  answer: (given) => ({
    kind: 'number',
    range: rangeAround(withShare(given, 1), tolerance, 1),
    exact: withShare(given, 1),
    unit: given.asks === 'height' ? 'mm' : '°',
  }),
  slips,
  steps: (given) => {
    const { spanMm } = given;
    if (given.asks === 'height') {
      const sine = Math.sin(given.tiltDeg * degree);
      return [
        { id: 'sine', values: { tiltDeg: given.tiltDeg, sine } },
        { id: 'height', values: { spanMm, sine, heightMm: withShare(given, 1) } },
      ];
    }
    const sine = given.heightMm / spanMm;
    return [
      { id: 'slope', values: { heightMm: given.heightMm, spanMm, sine } },
      { id: 'angle', values: { sine, tiltDeg: withShare(given, 1) } },
    ];
  },
  facts: ['arches-apart-mm', 'tilt-1-deg-fakes-mm'],
};
