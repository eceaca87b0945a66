import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { bottles, findRecipe, skinOptics, startAgeing } from '#lib/index.ts';
import { packedLibrary, ran, readmeExample, writeUses } from '#tests/tools/packedLibrary.ts';

let library: ReturnType<typeof packedLibrary>;
beforeAll(() => {
  library = packedLibrary();
}, 600_000);
afterAll(() => library.remove());

test('[hand] npm pack holds compiled JavaScript and its types, no TypeScript, no test and nothing of the site', () => {
  const inside = join(library.folder, 'node_modules/tautline');
  expect(readdirSync(inside).sort()).toEqual(['LICENSE', 'README.md', 'lib', 'node_modules', 'package.json']);
  expect(readdirSync(join(inside, 'node_modules')).sort()).toEqual([
    'martinez-polygon-clipping',
    'pure-rand',
    'quadprog',
    'robust-predicates',
    'splaytree',
    'tinyqueue',
  ]);
  const files = readdirSync(join(inside, 'lib'), { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.includes('.'),
  );
  expect(files.filter((name) => !/\.(?:js|d\.ts)$/.test(name))).toEqual([]);
  const { dependencies, devDependencies, optionalDependencies } = JSON.parse(
    readFileSync(join(inside, 'package.json'), 'utf8'),
  );
  expect([Object.keys(dependencies).length, devDependencies, optionalDependencies]).toEqual([
    3,
    undefined,
    undefined,
  ]);
});

test('[hand] installed from its file without a network, it runs the README’s example: the nose wings weigh nothing, and a recipe is found', () => {
  writeUses(library.folder);
  const said = ran(library.folder, process.execPath, [readmeExample]);
  expect(said).toMatch(/, 0\s*\]/);
  const skin = skinOptics({ l: 63, a: 10, b: 19 });
  if (!skin.ok) throw new Error(skin.reason);
  const found = findRecipe({
    skin,
    bottles,
    target: { l: 50, a: 10, b: 13 },
    times: [0, 2],
    setting: { depthMm: 0.1, coverage: 0.6, veilShare: 0.35 },
    ageing: startAgeing,
    doses: [0.2, 0.3, 0.4],
    mostBottles: 2,
    mostDrops: 4,
    mostWhiteShare: 0.3,
  });
  expect(found.ok && said.includes(`score: ${found.simplest.score}`)).toBe(true);
}, 300_000);

test('[library] a strict TypeScript file outside takes its types as they are, and the compiler finds what does not fit', () => {
  writeFileSync(
    join(library.folder, 'outside.ts'),
    `
import { findRecipe, planCorrections, readFace, toFace, type ApprovedLimits, type Brows, type MarkSet, type NotAccepted, type PlanTask, type ReadingChoices, type RecipeTask } from 'tautline';

export function lean(set: MarkSet, choices: ReadingChoices): number | string {
  const reading = readFace(set, choices);
  if (reading.ok) return reading.rollDeg.value;
  return reading.reason === 'argument-not-accepted' ? reading.at + ' must ' + reading.must : reading.reason;
}
export function raised(brows: Brows, limits: ApprovedLimits): number | undefined {
  const task: PlanTask = { brows, free: 'left', old: {}, limits: { right: limits, left: limits }, marginMm: 0.4, weights: { right: 1, left: 1 } };
  const plan = planCorrections(task, 'quiet', { frontLower: 0.4, frontTop: 0.4, archTop: 0.4, archLower: 0.4, tail: 0.4 });
  return plan.ok ? plan.moves.left.archTop.byMm : undefined;
}
export const refusal = (task: RecipeTask): NotAccepted['reason'] | undefined => {
  const found = findRecipe(task, (share: number) => void share);
  return !found.ok && found.reason === 'argument-not-accepted' ? found.reason : undefined;
};
// @ts-expect-error a point of the face is none of the picture
export const mixedUp = (set: MarkSet) => toFace({ uMm: 1, vMm: 2 }, 'right', set);
`,
  );
  const options = [
    '--noEmit',
    '--strict',
    '--exactOptionalPropertyTypes',
    '--target',
    'es2023',
    '--module',
    'nodenext',
  ];
  expect(ran(library.folder, 'tsc', [...options, 'outside.ts'])).toBe('');
}, 300_000);
