import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { mappingFacts } from '#lib/mapping/facts.ts';
import { mappingRules } from '#lib/mapping/rules.ts';
import { hairAndBone } from '#calculators/hairAndBone.ts';
import { midlineAndSides } from '#calculators/midlineAndSides.ts';
import { usualDifference } from '#calculators/usualDifference.ts';
import { realOrNot } from '#skills/mapping/realOrNot.ts';
import { bandWords, midlineSays } from '#words/midline.ts';
import { realOrNotWords } from '#words/skills/realOrNot.ts';
import { usualSays } from '#words/usualDifference.ts';
import { startState } from '#calculators/startState.ts';
import { hairAndBoneSays } from '#words/hairAndBone.ts';

const read = (file: string) => readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8');
const lesson = (name: string) => read(`content/lessons/mapping/${name}.mdx`);
const rule = (name: string) => read(`content/rules/${name}.mdx`);
const cautionsOf = (text: string) =>
  [...text.matchAll(/<Caution [^]*?<\/Caution>/g)].map(([caution]) => caution);

test('[hand] off the bone is found by closing the eye and smiling; nothing is said to keep still or tested by raised brows', () => {
  const state = startState(hairAndBone);
  const said = Object.values(hairAndBoneSays(hairAndBone.solve(state), state)).join(' ');
  const says = [
    lesson('hair-and-bone'),
    rule('nothing-under-it-nothing-drawn'),
    said,
    JSON.stringify([mappingFacts['off-bone-moves'], mappingFacts['shape-sits-on-something']]),
    read('content/calculators/hair-and-bone.mdx'),
  ];
  for (const text of says)
    expect(text).not.toMatch(
      /keeps? still|holds it still|brow is raised|raise her brows|shifts when the face/,
    );
  expect(said).toContain('folds when she closes the eye and smiles');
  expect(lesson('hair-and-bone')).toMatch(/close the eye and smile/i);
});

test('[hand] both studies of what moves are printed where the card disagrees', () => {
  const [, disagrees = ''] = rule('nothing-under-it-nothing-drawn').split('## What disagrees');
  expect(disagrees).toContain('id="outer-end-groups"');
  expect(disagrees).toContain('id="brow-against-rim-people"');
  expect(mappingFacts['brow-against-rim-people'].caveat).toContain('tail in women');
  const entry = mappingRules.find(({ id }) => id === 'nothing-under-it-nothing-drawn');
  expect(entry?.disputedBy).toContain('outer-end-groups');
});

test('[hand] points stay off the eye, and opened skin is read without touching it', () => {
  const points = cautionsOf(lesson('midline-when-the-nose-leans')).join(' ');
  for (const part of ['blunt', 'lock', 'away from her face', 'eyes shut', 'skin above', 'lash line'])
    expect(points, part).toContain(part);
  const opened = cautionsOf(lesson('approve-and-measure-again')).join(' ');
  for (const part of ['beside', 'not on', 'without touching', 'single-use'])
    expect(opened, part).toContain(part);
  for (const name of ['take-the-midline-from-many-marks', 'name-the-front-anchor'])
    expect(rule(name), name).toContain('never at the lid or the lash line');
  for (const name of ['add-here-or-stop']) expect(rule(name), name).toContain('without touching');
});

test('[hand] one wording of who sees it: few to 1 mm, some to 3, most from 3, in figures, exercise and lessons', () => {
  const start = startState(usualDifference);
  const usual = (difference: number) =>
    Object.values(usualSays(usualDifference.solve({ ...start, difference }), { ...start, difference })).join(
      ' ',
    );
  expect(
    [usual(1), usual(1.5), usual(2.9), usual(3)].map(
      (text) => /(Few|Some|Most) people see it\./.exec(text)?.[1],
    ),
  ).toEqual(['Few', 'Some', 'Some', 'Most']);
  expect(bandWords).toMatchObject({
    'few-see': 'real, few see it',
    'some-see': 'real, some see it',
    'most-see': 'real, most see it',
  });
  const given = realOrNot.given(0);
  const option = (differenceMm: number) => realOrNotWords.option('few-see@0.80', { ...given, differenceMm });
  expect(option(1)).toContain('few people would see it');
  expect(option(1.5)).toContain('some people would see it, not most');
  // At one and a half millimetres the client is not told that few see it.
  expect(lesson('midline-when-the-nose-leans')).toContain(
    'a millimetre and a half higher. Some people would see that, most would not.',
  );
  const start2 = startState(midlineAndSides);
  expect(
    midlineSays(midlineAndSides.solve(start2)).answer + midlineSays(midlineAndSides.solve(start2)).doubt,
  ).not.toContain('few people see it');
});

test('[hand] no page says that a brow sinks when she lies down: two lessons print that its tail rose', () => {
  expect(lesson('rest-raised-lying')).toContain('the tail of the brow rose');
  for (const name of [
    'how-unequal-is-usual',
    'rest-raised-lying',
    'midline-when-the-nose-leans',
    'approve-and-measure-again',
  ])
    expect(lesson(name), name).not.toMatch(/sinks? when she lies/);
  expect(lesson('how-unequal-is-usual')).toContain('moves when she lies down');
});
