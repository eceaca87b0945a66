import { hueCosine } from '#lib/colour/spaces/hueCosine.ts';
import { drawFrom, drawOne, type Draw } from '#lib/quantities/seed.ts';
import {
  hueMoveOf,
  neutraliseDirectionWords,
  wayBack,
  type NeutraliseDirectionGiven,
} from '#words/skills/neutraliseDirection.ts';
import { skinClients } from '#words/skills/skinClients.ts';
import type { Skill } from '../skill.ts';
import { hueBottles, oldHueCases } from '#lib/colour/old/oldHueCases.ts';

type Given = NeutraliseDirectionGiven;

/** How well each bottle's move goes the way back, best first. */
function ranked(given: Given): readonly Readonly<{ id: string; cosine: number }>[] {
  const way = wayBack(given);
  return given.bottles
    .map(({ id, move }) => ({ id, cosine: hueCosine(hueMoveOf(move), hueMoveOf(way)) ?? -2 }))
    .toSorted((one, other) => other.cosine - one.cosine);
}

function deal(draw: Draw): Given {
  const { old, skin, today, moves } = drawOne(draw, oldHueCases);
  const all = hueBottles.flatMap((id, i) => (moves[i] ? [{ id, move: moves[i] }] : []));
  const leftOut = [drawOne(draw, hueBottles), drawOne(draw, hueBottles)];
  return {
    client: drawOne(draw, skinClients),
    old,
    skin,
    today,
    bottles: all.filter(({ id }) => !leftOut.includes(id)),
  };
}

/** Three bottles, one of which goes the way back clearly better than the next, and well. */
function isClear(given: Given): boolean {
  const [best, next] = ranked(given);
  return (
    given.bottles.length === 3 &&
    best !== undefined &&
    next !== undefined &&
    best.cosine > 0.65 &&
    best.cosine - next.cosine > 0.06
  );
}

/**
 * Which bottle takes the old hue away: the one whose move in a* and b* points most nearly back to the bare
 * skin.
 */
export const neutraliseDirection: Skill<Given> = {
  id: 'neutralise-direction',
  version: 1,
  words: neutraliseDirectionWords,
  given: (seed) => {
    const draw = drawFrom(seed);
    for (;;) {
      const given = deal(draw);
      if (isClear(given)) return given;
    }
  },
  answer: (given) => ({
    kind: 'choice',
    correct: ranked(given)[0]?.id ?? '',
    options: given.bottles.map(({ id }) => id),
  }),
  slips: [
    { id: 'chose-yellow', credit: 0.2, value: () => 'yellow-oxide-some-white' },
    { id: 'chose-orange', credit: 0.2, value: () => 'orange' },
    { id: 'chose-red', credit: 0.2, value: () => 'red-oxide-some-yellow' },
    { id: 'chose-brown', credit: 0.2, value: () => 'dark-brown-iron' },
    { id: 'chose-black', credit: 0, value: () => 'black-iron' },
  ],
  steps: (given) => {
    const [, a, b] = wayBack(given);
    const order = ranked(given);
    return [
      { id: 'way', values: { a, b } },
      {
        id: 'cosines',
        values: {
          cosines: order
            .map(
              ({ id, cosine }) =>
                `${neutraliseDirectionWords.option(id, given)} ${cosine.toFixed(2).replace('-', '−')}`,
            )
            .join('; '),
        },
      },
      { id: 'choose', values: { answer: neutraliseDirectionWords.option(order[0]?.id ?? '', given) } },
    ];
  },
  facts: [],
};
