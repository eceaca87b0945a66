import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { calculators } from '#calculators/index.ts';
import { findRecipe } from '#calculators/findRecipe.ts';
import { startState } from '#calculators/startState.ts';
import { whichHue } from '#calculators/whichHue.ts';
import { isSkillDue } from '#components/practice/isSkillDue.ts';
import { isAsked } from '#components/practice/isAsked.ts';
import { mixedOrder } from '#components/practice/mixedOrder.ts';
import { mixedSet } from '#lib/practice/mixedSet.ts';
import type { Answered, Progress } from '#lib/practice/progress.ts';
import { standingIn, type Versioned } from '#lib/practice/standing.ts';
import { isIsoDay } from '#lib/quantities/isoDay.ts';
import { skills } from '#skills/index.ts';
import { isBeingMended, mendedIds, mendedWords } from '#words/beingMended.ts';
import { bottleWords } from '#words/bottleWords.ts';
import { recipeToSay } from '#words/findRecipe.ts';
import { hueBottleWords, whichHueToSay } from '#words/whichHue.ts';
import { workedWords } from '#words/worked/index.ts';
import { workedExamples } from '#worked/index.ts';
import { falseAdviceIn } from '#tests/tools/falseAdvice.ts';

const content = new URL('../../content/', import.meta.url);
const readContent = (file: string) => readFileSync(new URL(file, content), 'utf8');
const isIn = (list: object) => (id: string) => Object.hasOwn(list, id);

test('[hand] the list names only what exists', () => {
  expect(mendedIds.calculators.filter((id) => !isIn(calculators)(id))).toEqual([]);
  expect(mendedIds.skills.filter((id) => !isIn(skills)(id))).toEqual([]);
  expect(mendedIds.worked.filter((id) => !isIn(workedExamples)(id))).toEqual([]);
  expect(mendedIds.lessons.filter((id) => !existsSync(new URL(`lessons/${id}.mdx`, content)))).toEqual([]);
  expect(mendedIds.rules.filter((id) => !existsSync(new URL(`rules/${id}.mdx`, content)))).toEqual([]);
});

test('[hand] the notice says what not to do, why, and what to do instead', () => {
  expect(mendedWords.title).toBe('Being mended: do not mix from this page.');
  expect(mendedWords.why).toMatch(/old colours.*wrong/);
  expect(mendedWords.instead).toMatch(/training.*maker.*lighten.*leave/s);
});

describe('problems of what is being mended', () => {
  const day = '2026-11-30';
  if (!isIsoDay(day)) throw new Error('A day.');
  const answered = ({ id, version }: Versioned): Answered => ({
    skill: id,
    version,
    seed: 5,
    day,
    atMs: 1,
    rung: 'bare',
    credit: 1,
    tries: 1,
    hints: 0,
    solved: true,
  });
  const progress: Progress = { schema: 2, answers: Object.values(skills).map(answered) };
  const later = '2027-01-30';
  if (!isIsoDay(later)) throw new Error('A day.');

  test('[hand] are not due, and what was answered is still counted as done', () => {
    for (const { id, version } of Object.values(skills)) {
      const standing = standingIn(progress, { id, version });
      expect(standing.done, id).toBe(1);
      expect(isSkillDue(id, standing.review, later), id).toBe(!isBeingMended('skills', id));
    }
  });

  test('[property] come into no mixed set, whatever was answered and due', () => {
    const asked = mixedOrder(Object.keys(skills));
    expect(asked.toSorted()).toEqual(Object.keys(skills).filter(isAsked).sort());
    expect(asked.length).toBe(Object.keys(skills).length - mendedIds.skills.length);
    for (let done = 0; done < 200; done++)
      for (const { id } of mixedSet(asked, asked.slice(0, done % 9), done, 6))
        expect(isBeingMended('skills', id), id).toBe(false);
    for (const id of mendedIds.skills) expect(mixedOrder([id]), id).not.toContain(id);
  });
});

describe('no bottle is named as the answer', () => {
  const named = [...Object.values(hueBottleWords), ...Object.values(bottleWords)].map((name) =>
    name.replace(/:.*/, '').toLowerCase(),
  );
  const faultsIn = (said: string) => named.filter((name) => said.toLowerCase().includes(name));
  const skinOptions = ['l72', 'l63', 'l54', 'l45', 'l36'] as const;
  const oldOptions = ['grey-blue', 'green', 'violet', 'pink', 'orange'] as const;

  test.each(skinOptions.flatMap((skin) => oldOptions.map((old) => ({ skin, old }))))(
    '[hand] over $old in skin $skin',
    (state) => {
      const said = Object.values(whichHueToSay(whichHue.solve(state))).join(' ');
      expect(faultsIn(said)).toEqual([]);
      expect(said).toMatch(/^The way back to the skin is a\* [+−]?\d/);
    },
  );

  test('[hand] by the search of recipes, which still says how near they come', () => {
    const state = startState(findRecipe);
    const said = Object.values(recipeToSay(findRecipe.solve(state), false)).join(' ');
    expect(faultsIn(said)).toEqual([]);
    expect(said).not.toMatch(/\bdrops? [a-z]|dose/);
    expect(said).toMatch(/\d/);
  });
});

describe('false advice', () => {
  test.each([
    'Old work grey-blue: iron black points back most nearly.',
    'Iron black takes the orange away.',
    'Over grey-blue, lay iron black.',
    'Yellow oxide, some white takes green away.',
    'Pink wants yellow.',
    'What helps is darkness: a brown or a black lets less light come back.',
    'Pigment only darkens.',
    'Pigment darkens.',
  ])('[hand] is found in “%s”', (sentence) => expect(falseAdviceIn(sentence)).not.toEqual([]));

  test.each([
    'Grey-blue wants orange.',
    'Never lay iron black over grey-blue.',
    'Over green, yellow alone keeps it green for longer.',
    'Violet lacks yellow, so it wants yellow to orange.',
    'Yellow oxide darkens more than white.',
    'The real trap is a black in the mix.',
  ])('[hand] is not found in “%s”', (sentence) => expect(falseAdviceIn(sentence)).toEqual([]));

  const texts = [
    ...[
      'lessons/mapping/',
      'lessons/colour/',
      'lessons/skin-healing/',
      'calculators/',
      'rules/',
      'glossary/',
      'pages/',
    ].flatMap((folder) =>
      readdirSync(new URL(folder, content)).map(
        (file) => [`${folder}${file}`, readContent(`${folder}${file}`).replace(/<[^>]+>/g, ' ')] as const,
      ),
    ),
    ...Object.entries(workedExamples).map(([id, { numbers }]) => {
      const words = Object.entries(workedWords).find(([name]) => name === id)?.[1](numbers);
      return [
        `worked/${id}`,
        words ? [words.title, ...words.steps, words.answer, words.after].join('. ') : '',
      ] as const;
    }),
  ];

  test('[hand] stands in no lesson, calculator, rule card, term, page or worked example', () => {
    expect(texts.length).toBeGreaterThan(150);
    expect(
      texts.flatMap(([name, text]) => falseAdviceIn(text).map((sentence) => `${name}: ${sentence}`)),
    ).toEqual([]);
  });
});
