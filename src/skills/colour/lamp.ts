import { drawFrom, drawOne, drawWhole, type Draw } from '#lib/quantities/seed.ts';
import { fixed } from '#words/number.ts';
import { lampWords, type LampGiven } from '#words/skills/lamp.ts';
import { skinClients } from '#words/skills/skinClients.ts';
import type { Skill } from '../skill.ts';
import { lampCases, type LampCase } from './lampCases.ts';

type Three = LampGiven['wanted'];
type Ranked = readonly Readonly<{ id: string; apart: number }>[];

const apart = ([l, a, b]: Three, [l2, a2, b2]: Three) => Math.hypot(l - l2, a - a2, b - b2);
const other = (lamp: LampGiven['lamp']) => (lamp === 'D65' ? 'A' : 'D65');

/**
 * The mixes by how far they lie from the wanted colour, nearest first, when their numbers under `lamp` are
 * taken.
 */
function ranked({ wanted, mixes }: LampGiven, lamp: LampGiven['lamp']): Ranked {
  return mixes
    .map((mix) => ({ id: mix.id, apart: apart(wanted, mix[lamp]) }))
    .toSorted((one, next) => one.apart - next.apart);
}
const rightOf = (given: LampGiven) => ranked(given, given.lamp)[0]?.id ?? '';
const acrossOf = (given: LampGiven) => ranked(given, other(given.lamp))[0]?.id ?? '';

/**
 * The mix that is neither right nor chosen across lamps, where its a* lies on the asked side of the wanted
 * one.
 */
function thirdIf(given: LampGiven, isRedder: boolean): string {
  const third = given.mixes.find(({ id }) => id !== rightOf(given) && id !== acrossOf(given));
  return third && third[given.lamp][1] > given.wanted[1] === isRedder ? third.id : '';
}

function deal(draw: Draw, { mixes }: LampCase, client: LampGiven['client']): LampGiven {
  const three = [drawOne(draw, mixes), drawOne(draw, mixes), drawOne(draw, mixes)] as const;
  const lamp = drawOne(draw, ['D65', 'A'] as const);
  const near = (value: number) => Math.round(value * 10 + drawWhole(draw, -4, 4)) / 10;
  const [l, a, b] = drawOne(draw, three)[lamp];
  return { client, lamp, wanted: [near(l), near(a), near(b)], mixes: three };
}

/**
 * One mix is clearly nearest under the lamp of the wanted colour, and another one clearly nearest, and near,
 * across lamps.
 */
function isClear(given: LampGiven): boolean {
  const [best, next] = ranked(given, given.lamp);
  const [wrong, later] = ranked(given, other(given.lamp));
  if (!best || !next || !wrong || !later) return false;
  return (
    new Set(given.mixes.map(({ id }) => id)).size === 3 &&
    next.apart - best.apart > 0.9 &&
    wrong.id !== best.id &&
    later.apart - wrong.apart > 0.4 &&
    wrong.apart < 3
  );
}

/**
 * Which of three mixes comes nearest to a wanted colour: only numbers read under one lamp can be compared.
 */
export const lamp: Skill<LampGiven> = {
  id: 'lamp',
  version: 1,
  words: lampWords,
  given: (seed) => {
    const draw = drawFrom(seed);
    const [skin, client] = [drawOne(draw, lampCases), drawOne(draw, skinClients)];
    for (;;) {
      const given = deal(draw, skin, client);
      if (isClear(given)) return given;
    }
  },
  answer: (given) => ({ kind: 'choice', correct: rightOf(given), options: given.mixes.map(({ id }) => id) }),
  slips: [
    { id: 'across-lamps', credit: 0.2, value: acrossOf },
    { id: 'too-red', credit: 0, value: (given) => thirdIf(given, true) },
    { id: 'too-little-red', credit: 0, value: (given) => thirdIf(given, false) },
  ],
  steps: (given) => [
    { id: 'lamp', values: { light: given.lamp === 'D65' ? 'in daylight' : 'under the tungsten lamp' } },
    {
      id: 'distances',
      values: {
        distances: ranked(given, given.lamp)
          .map(({ id, apart: far }) => `${lampWords.option(id, given)} ${fixed(far)}`)
          .join('; '),
      },
    },
    { id: 'choose', values: { answer: lampWords.option(rightOf(given), given) } },
  ],
  facts: ['tungsten-kelvin'],
};
