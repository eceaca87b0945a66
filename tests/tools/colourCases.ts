import { ciede2000 } from '#lib/colour/spaces/ciede2000.ts';
import { bottleIds, type BottleId } from '#lib/colour/pigment/bottleIds.ts';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import { healedColour } from '#lib/colour/healing/healedColour.ts';
import type { Lab } from '#lib/colour/spaces/lab.ts';
import { modelValues } from '#lib/colour/numbers/model.ts';
import { overOldPigment } from '#lib/colour/pigment/oldPigment.ts';
import { mixLayer } from '#lib/colour/pigment/pigments.ts';
import { findRecipe } from '#lib/colour/recipe/findRecipe.ts';
import { colourerOf, sharesOf } from '#lib/colour/recipe/recipeTask.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';
import { leftOf } from '#lib/colour/healing/uncertainHealing.ts';
import type { CoverCase } from '#skills/colour/coverCases.ts';
import { trapDoses, trapMixes, type TrapCase, type TrapMix } from '#skills/colour/trapCases.ts';

// What the skills "do not cover" and "green trap" deal from, worked out by the model: kept as tables, so that
// a problem needs no model on a phone. `node tests/tools/writeColourCases.ts` writes the tables; a test works
// rows out again.

type Three = readonly [number, number, number];
const skins: readonly Three[] = [
  [72, 8, 16],
  [63, 10, 19],
  [54, 11, 18],
  [45, 11, 17],
  [36, 10, 14],
];
const setting = { depthMm: modelValues.depthMm, coverage: 0.6, veilShare: modelValues.veilShare };
const tenth = (value: number) => Math.round(value * 10) / 10 + 0;
const tenths = ([l, a, b]: Three): Three => [tenth(l), tenth(a), tenth(b)];
const labOf = ([l, a, b]: Three): Lab => ({ l, a, b });
const toward = (from: Three, to: Three, share: number): Three =>
  tenths([
    from[0] + share * (to[0] - from[0]),
    from[1] + share * (to[1] - from[1]),
    from[2] + share * (to[2] - from[2]),
  ]);

/** Old work at its full strength, by its look. */
const looks: readonly Readonly<{ old: string; at: (l: number) => Three }>[] = [
  { old: 'grey-blue', at: (l) => [l * 0.74, 0, -2] },
  { old: 'ash-grey', at: (l) => [l * 0.72, 1, 4] },
  { old: 'green', at: (l) => [l * 0.74, -2, 9] },
  { old: 'violet', at: (l) => [l * 0.74, 7, -1] },
  { old: 'pink', at: (l) => [l * 0.84, 19, 12] },
  { old: 'orange', at: (l) => [l * 0.84, 17, 25] },
];
const strengths = [1, 0.6, 0.35];
/** An old brown that is still near the brown she wants, each by so much. */
const stillGood: readonly Three[] = [
  [1.6, 0.4, -1],
  [-1.4, 0.6, 1],
  [1, -0.8, 1.2],
];

/** The ordinary brown she wants on a skin. */
export const wantedOn = ([l]: Three): Three => tenths([l * 0.8, 9, 13]);

function coverCase(skin: Three, old: string, today: Three): CoverCase {
  const wanted = wantedOn(skin);
  const target = labOf(wanted);
  const optics = overOldPigment(labOf(skin), labOf(today));
  if (!optics.ok) throw new Error(`${old} on L* ${skin[0]}: ${optics.reason}`);
  const task = {
    skin: optics,
    setting,
    bottles,
    ageing: startAgeing,
    doses: [0.1, 0.2, 0.3, 0.45, 0.65],
    target,
    times: [0, 2],
    mostBottles: 3,
    mostDrops: 4,
    mostWhiteShare: 0.1,
  };
  const [found, white] = [findRecipe(task), findRecipe({ ...task, mostWhiteShare: 1 })];
  if (!found.ok || !white.ok) throw new Error('No recipe is allowed.');
  const [six = 0, two = 0] = colourerOf(task)(found.best.recipe, found.best.dose).map((lab) =>
    tenth(ciede2000(lab, target)),
  );
  return {
    old,
    skin,
    today,
    wanted,
    now: tenth(ciede2000(labOf(today), target)),
    six,
    two,
    white: tenth(white.best.score),
  };
}

const isClear = ({ now, six, two }: CoverCase) => {
  const [limit, worst] = [modelValues.reachedBelow, Math.max(six, two)];
  return Math.abs(now - limit) >= 0.4 && (now < limit || Math.abs(worst - limit) >= 0.3);
};

/** Every old work in every skin, and whether a recipe reaches the brown; near the limit left out. */
export function coverCasesOfModel(): readonly CoverCase[] {
  return skins
    .flatMap((skin) => [
      ...looks.flatMap(({ old, at }) =>
        strengths.map((share) =>
          coverCase(
            skin,
            share === 1 ? old : share === 0.6 ? `paler ${old}` : `faint ${old}`,
            toward(skin, at(skin[0]), share),
          ),
        ),
      ),
      ...stillGood.map((off) =>
        coverCase(
          skin,
          'brown',
          tenths([wantedOn(skin)[0] + off[0], wantedOn(skin)[1] + off[1], wantedOn(skin)[2] + off[2]]),
        ),
      ),
    ])
    .filter(isClear);
}

/** One row again, from its colours. */
export const coverCaseAgain = ({ skin, old, today }: CoverCase): CoverCase => coverCase(skin, old, today);

const trapOlds: readonly Readonly<{ old: string; at: (l: number) => Three }>[] = [
  ...looks.filter(({ old }) => ['grey-blue', 'ash-grey', 'green'].includes(old)),
  { old: 'blue', at: (l) => [l * 0.74, -1, -5] },
];
const drops: Readonly<Record<TrapMix, Partial<Readonly<Record<BottleId, number>>>>> = {
  yellow: { 'yellow-oxide-some-white': 1 },
  'little-black': { 'yellow-oxide-some-white': 3, 'black-iron': 1 },
  'equal-black': { 'yellow-oxide-some-white': 1, 'black-iron': 1 },
  'much-black': { 'yellow-oxide-some-white': 1, 'black-iron': 2 },
  'with-orange': { 'yellow-oxide-some-white': 1, 'black-iron': 1, orange: 1 },
};

/** What mixes of yellow and black do to a* and b* over blue, grey and green old work, at several doses. */
export function trapCasesOfModel(): readonly TrapCase[] {
  const left = leftOf(startAgeing, 0);
  return skins.flatMap((skin) =>
    trapOlds.map(({ old, at }): TrapCase => {
      const today = tenths(at(skin[0]));
      const optics = overOldPigment(labOf(skin), labOf(today));
      if (!optics.ok) throw new Error(`${old} on L* ${skin[0]}: ${optics.reason}`);
      const moves = trapMixes.map((mix) => {
        const shares = sharesOf(
          bottleIds.map((id) => drops[mix][id] ?? 0),
          bottles,
        );
        return trapDoses.map((dose) => {
          const { a, b } = healedColour(optics, mixLayer(shares, dose, left), setting);
          return [tenth(a - today[1]), tenth(b - today[2])] as const;
        });
      });
      return { old, skin, today, moves };
    }),
  );
}
