import { bottleIds } from '#lib/colour/pigment/bottleIds.ts';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import { modelValues } from '#lib/colour/numbers/model.ts';
import { farEnough, findRecipe, near } from '#lib/colour/recipe/findRecipe.ts';
import { skinOptics } from '#lib/colour/layers/skinOptics.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';
import type { SimplestCase } from '#skills/colour/simplestCases.ts';

// What the skill "simplest recipe" deals from: the nearest recipe for each number of drops, from a shelf of
// four bottles at one dose, worked out by the search. `node tests/tools/writeColourCases.ts` writes the
// table; a test works rows out again.

const skins = [
  [72, 8, 16],
  [63, 10, 19],
  [54, 11, 18],
  [45, 11, 17],
  [36, 10, 14],
] as const;
const wishes = [
  [0.8, 9, 13],
  [0.84, 11, 15],
  [0.78, 7, 14],
  [0.82, 12, 13],
  [0.88, 10, 14],
  [0.86, 9, 11],
  [0.9, 11, 13],
] as const;
const shelves = [
  [0, 3, 6, 10],
  [2, 3, 9, 10],
  [1, 3, 8, 9],
  [0, 2, 7, 10],
  [1, 7, 8, 10],
  [2, 4, 8, 10],
  [0, 5, 7, 9],
  [3, 4, 5, 10],
] as const;
const dose = 0.2;
const perSkin = 6;
const perWish = 2;
const hundredth = (value: number) => Math.round(value * 100) / 100;

/** One row again, from its skin, its wish and its shelf. */
export function simplestCaseAgain({
  skin,
  wanted,
  shelf,
}: Pick<SimplestCase, 'skin' | 'wanted' | 'shelf'>): SimplestCase {
  const [l, a, b] = skin;
  const optics = skinOptics({ l, a, b });
  if (!optics.ok) throw new Error(optics.reason);
  const own = bottles.filter(({ id }) => shelf.some((one) => one === id));
  const [targetL, targetA, targetB] = wanted;
  const found = findRecipe({
    skin: optics,
    setting: { depthMm: modelValues.depthMm, coverage: 0.6, veilShare: modelValues.veilShare },
    bottles: own,
    ageing: startAgeing,
    doses: [dose],
    times: [0, 2],
    target: { l: targetL, a: targetA, b: targetB },
    mostBottles: 3,
    mostDrops: 8,
    mostWhiteShare: 0.1,
  });
  if (!found.ok) throw new Error(found.reason);
  return {
    skin,
    wanted,
    shelf: own.flatMap(({ id }) => bottleIds.find((one) => one === id) ?? []),
    rows: found.byDrops.map(({ recipe, score }) => ({ recipe, apart: hundredth(score) })),
  };
}

/** Cases whose simplest recipe is neither the smallest nor the nearest, with nothing close to the limit. */
export function simplestCasesOfModel(): readonly SimplestCase[] {
  return skins.flatMap((skin) =>
    wishes
      .flatMap(([share, a, b]) =>
        shelves
          .map((shelf) =>
            simplestCaseAgain({
              skin,
              wanted: [Math.round(skin[0] * share), a, b],
              shelf: shelf.flatMap((at) => bottleIds[at] ?? []),
            }),
          )
          .filter(isTelling)
          .slice(0, perWish),
      )
      .slice(0, perSkin),
  );
}

function isTelling({ rows }: SimplestCase): boolean {
  const all = rows.map(({ apart }) => apart);
  const limit = Math.max(farEnough, hundredth(Math.min(...all) + near));
  const right = all.findIndex((apart) => apart <= limit);
  const nearest = all.indexOf(Math.min(...all));
  return (
    rows.length === 8 &&
    limit <= modelValues.reachedBelow &&
    right > 0 &&
    nearest > right &&
    all.every((apart) => Math.abs(apart - limit) >= 0.04)
  );
}
