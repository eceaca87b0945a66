import { expect } from 'vitest';
import type { Skill } from '#skills/skill.ts';
import { isInRange } from '#lib/quantities/closedRange.ts';
import { mark } from '#lib/practice/marking.ts';
import { fixed } from '#words/number.ts';
import type { ProblemWords } from '#words/skills/problemWords.ts';

/** What a learner's reply looks like inside a sentence. */
function replyInWords<G>(skill: Skill<G>, words: ProblemWords<G>, given: G, reply: number | string): string {
  const answer = skill.answer(given);
  return answer.kind === 'number'
    ? `${fixed(Number(reply))} ${answer.unit}`
    : words.option(String(reply), given);
}

/** Everything that must hold for one seed of one skill; failures name the seed. */
export function checkSeed<G>(skill: Skill<G>, words: ProblemWords<G>, seed: number): void {
  const given = skill.given(seed);
  const at = `${skill.id}, seed ${seed}`;
  expect(skill.given(seed), at).toEqual(given);
  expect(JSON.stringify(given), at).not.toMatch(/null|NaN/);
  const answer = skill.answer(given);
  const slips = skill.slips.map(({ id, credit, value }) => ({ id, credit, value: value(given) }));

  const wrong =
    answer.kind === 'number'
      ? slips
      : slips.filter(({ value }) => value !== answer.correct && answer.options.includes(String(value)));
  expect(wrong.length, at).toBeGreaterThanOrEqual(2);
  expect(
    new Set(wrong.map(({ value }) => (typeof value === 'number' ? value.toFixed(1) : value))).size,
    at,
  ).toBe(wrong.length);
  if (answer.kind === 'number') {
    expect(answer.range.hi, at).toBeGreaterThanOrEqual(answer.range.lo);
    expect(isInRange(answer.range, answer.exact), at).toBe(true);
    expect(mark(answer, slips, Number(answer.exact.toFixed(answer.range.decimals))), at).toEqual({
      right: true,
      credit: 1,
    });
  } else {
    expect(
      answer.options.filter((option) => option === answer.correct),
      at,
    ).toHaveLength(1);
    expect(new Set(answer.options).size, at).toBe(answer.options.length);
    expect(new Set(answer.options.map((option) => words.option(option, given))).size, at).toBe(
      answer.options.length,
    );
    expect(new Set(wrong.map(({ value }) => value)), at).toEqual(
      new Set(answer.options.filter((option) => option !== answer.correct)),
    );
  }

  const said: string[] = [];
  for (const { id, value, credit } of wrong) {
    const reply = typeof value === 'number' ? Number(value.toFixed(1)) : value;
    expect(mark(answer, slips, reply), `${at}, ${id}`).toEqual({ right: false, credit, slipId: id });
    expect(credit >= 0 && credit < 1, `${at}, ${id}`).toBe(true);
    const inWords = replyInWords(skill, words, given, reply);
    const feedback = words.slips[id]?.(given, inWords);
    if (!feedback) throw new Error(`${at}: nothing is said about the slip "${id}".`);
    expect(feedback.text, `${at}, ${id}`).toContain(inWords);
    said.push(`${feedback.title} ${feedback.text}`);
  }
  expect(new Set(said).size, at).toBe(wrong.length);

  const correct = answer.kind === 'number' ? Number(answer.exact.toFixed(1)) : answer.correct;
  const right = replyInWords(skill, words, given, correct);
  const steps = skill.steps(given).map(({ id, values }) => {
    const step = words.steps[id];
    if (!step) throw new Error(`${at}: nothing is said about the step "${id}".`);
    return step.done(values);
  });
  expect(steps.length, at).toBeGreaterThanOrEqual(2);
  expect(steps.at(-1), at).toContain(right);
  expect(words.right(given, right), at).toContain(right);
  const sentences = [
    words.question(given),
    ...words.givens(given),
    ...steps,
    ...said,
    ...(words.table?.(given).rows.flat() ?? []),
  ];
  for (const sentence of sentences) {
    expect(sentence, at).not.toMatch(/NaN|undefined|Infinity|\[object|-\d|−0(?!\.\d*[1-9])/);
    expect(sentence.trim().length, at).toBeGreaterThan(0);
  }
}
