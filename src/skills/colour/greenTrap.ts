import { drawFrom, drawOne, type Draw } from '#lib/quantities/seed.ts';
import { aAfter, greenTrapWords, sumWords, type GreenTrapGiven } from '#words/skills/greenTrap.ts';
import { coverClients } from '#words/skills/doNotCover.ts';
import type { Skill } from '../skill.ts';
import { trapCases, trapDoses, trapMixes, type TrapMix } from './trapCases.ts';

type Given = GreenTrapGiven;
const skinLightnesses = [72, 63, 54, 45, 36] as const;

function right(given: Given): TrapMix | 'none' {
  return given.mixes.find((mix) => aAfter(given, mix) < 0)?.id ?? 'none';
}

function dealOn(l: number, draw: Draw): Given {
  const [first, ...rest] = trapCases.filter(({ skin }) => skin[0] === l);
  if (!first) throw new Error(`No case on skin of L* ${l}.`);
  const { old, skin, today, moves } = drawOne(draw, [first, ...rest]);
  const leftOut = [drawOne(draw, trapMixes), drawOne(draw, trapMixes)];
  const mixes = trapMixes.flatMap((id, i) => {
    const dose = drawOne(draw, trapDoses);
    const move = moves[i]?.[trapDoses.indexOf(dose)];
    return move && !leftOut.includes(id) ? [{ id, dose, move }] : [];
  });
  return { client: drawOne(draw, coverClients), old, skin, today, mixes };
}

/** Three mixes, none on the edge, and as many below nought as were asked for. */
function isClear(given: Given, green: number): boolean {
  const afters = given.mixes.map((mix) => aAfter(given, mix));
  return (
    afters.length === 3 &&
    afters.every((a) => Math.abs(a) >= 0.1) &&
    afters.filter((a) => a < 0).length === green
  );
}

/**
 * Which mix of yellow and black, at which dose, leaves old work green: a* below nought. Sometimes none does.
 */
export const greenTrap: Skill<Given> = {
  id: 'green-trap',
  version: 1,
  words: greenTrapWords,
  given: (seed) => {
    const draw = drawFrom(seed);
    const green = drawOne(draw, [0, 1, 1, 1]);
    const l = drawOne(draw, skinLightnesses);
    for (;;) {
      const given = dealOn(l, draw);
      if (isClear(given, green)) return given;
    }
  },
  answer: (given) => ({
    kind: 'choice',
    correct: right(given),
    options: [...given.mixes.map(({ id }) => id), 'none'],
  }),
  slips: [
    { id: 'blamed-yellow', credit: 0.2, value: () => 'yellow' },
    { id: 'blamed-little-black', credit: 0.2, value: () => 'little-black' },
    { id: 'blamed-equal-black', credit: 0.2, value: () => 'equal-black' },
    { id: 'blamed-much-black', credit: 0.2, value: () => 'much-black' },
    { id: 'blamed-orange', credit: 0, value: () => 'with-orange' },
    { id: 'saw-no-trap', credit: 0, value: () => 'none' },
  ],
  steps: (given) => [
    { id: 'add', values: { sums: given.mixes.map((mix) => sumWords(given, mix)).join('; ') } },
    { id: 'decide', values: { answer: greenTrapWords.option(right(given), given) } },
  ],
  facts: [],
};
