import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { restOrRaised } from '#skills/mapping/restOrRaised.ts';
import { restOrRaisedWords } from '#words/skills/restOrRaised.ts';
import { emergencySigns } from '#words/emergencySigns.ts';
import { latelyCaution } from '#words/twoReadings.ts';
import { checkSeed } from './skillCheck.ts';

const seeds = Array.from({ length: 1000 }, (_, seed) => seed);
const correctOf = (given: Parameters<typeof restOrRaised.answer>[0]): string => {
  const answer = restOrRaised.answer(given);
  if (answer.kind !== 'choice') throw new Error('not a choice');
  return answer.correct;
};

test('[property] every seed 0 to 999 has one right answer and names every wrong one', () => {
  for (const seed of seeds) checkSeed(restOrRaised, restOrRaisedWords, seed);
});

test('[hand] the right reading is the one whose three words are all good; news of moving brows outranks it', () => {
  for (const seed of seeds) {
    const given = restOrRaised.given(seed);
    const good = given.readings.flatMap(({ pose, posture, skin }, i) =>
      (pose === 'rest' || pose === 'eyes-closed') && posture === 'sitting' && skin === 'normal'
        ? [`reading-${i + 1}`]
        : [],
    );
    expect(good.length, `seed ${seed}`).toBeLessThanOrEqual(1);
    const expected =
      given.news === 'dropped'
        ? 'doctor-first'
        : given.news === 'toxin'
          ? 'not-yet'
          : (good[0] ?? 'read-again');
    expect(correctOf(given), `seed ${seed}`).toBe(expected);
  }
});

test('[property] each of the six answers comes often, and the brows nearest to equal are often the wrong ones to map', () => {
  const counts = new Map<string, number>();
  let tempting = 0;
  for (const seed of seeds) {
    const given = restOrRaised.given(seed);
    const correct = correctOf(given);
    counts.set(correct, (counts.get(correct) ?? 0) + 1);
    const apart = given.readings.map(({ rightMm, leftMm }) => Math.abs(leftMm - rightMm));
    if (correct !== `reading-${apart.indexOf(Math.min(...apart)) + 1}`) tempting++;
  }
  for (const code of ['reading-1', 'reading-2', 'reading-3', 'read-again', 'not-yet', 'doctor-first'])
    expect(counts.get(code) ?? 0, code).toBeGreaterThan(100);
  expect(tempting).toBeGreaterThan(600);
});

test('[hand] a brow that dropped by itself: a doctor first, never "still moving", and the emergency signs under every answer', () => {
  const given = { ...restOrRaised.given(0), news: 'dropped' } as const;
  expect(restOrRaisedWords.option(correctOf(given), given)).toBe('None: a doctor first');
  const feedback = [
    restOrRaisedWords.right(given, 'None: a doctor first'),
    ...restOrRaised.slips.map(({ id }) => {
      const said = restOrRaisedWords.slips[id]?.(given, 'Reading 1');
      return `${said?.title} ${said?.text}`;
    }),
    `${restOrRaisedWords.other(given, 'Reading 1').text}`,
  ];
  for (const text of feedback) {
    expect(text).toContain(
      'a crooked mouth, a weak arm, trouble speaking, double vision, pupils of unequal size or a bad headache: call the emergency number now',
    );
    expect(text).toContain('doctor');
  }
  const steps = restOrRaised
    .steps(given)
    .map(({ id, values }) => restOrRaisedWords.steps[id]?.done(values))
    .join(' ');
  expect(`${feedback.join(' ')} ${steps}`).not.toMatch(/still be moving|still moving|physician/);
  const waited = restOrRaised.slips.find(({ value }) => value(given) === 'not-yet');
  expect(waited?.credit).toBe(0);
  expect(restOrRaisedWords.right({ ...given, news: 'toxin' }, 'None')).not.toContain('emergency');
});

test('[hand] the lesson and the card that speak of a dropped brow hold the same line, and so does the calculator', () => {
  const root = new URL('../../', import.meta.url);
  const read = (file: string) => readFileSync(new URL(file, root), 'utf8');
  for (const file of [
    'content/lessons/mapping/how-unequal-is-usual.mdx',
    'content/lessons/mapping/rest-raised-lying.mdx',
    'content/rules/measure-again-eyes-closed.mdx',
  ])
    expect(read(file), file).toContain(emergencySigns);
  expect(latelyCaution('unexplained')).toContain(emergencySigns);
});

test('[property] heights are those of faces', () => {
  for (const seed of seeds)
    for (const { rightMm, leftMm } of restOrRaised.given(seed).readings) {
      expect(Math.min(rightMm, leftMm)).toBeGreaterThan(13);
      expect(Math.max(rightMm, leftMm)).toBeLessThan(28.5);
    }
});
