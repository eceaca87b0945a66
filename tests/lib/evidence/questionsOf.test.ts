import { expect, test } from 'vitest';
import { questionsOf } from '#lib/evidence/questionsOf.ts';

test('[hand] a single question, an excluded one, a level and a limit are each asked', () => {
  expect(questionsOf({ question: 'a', is: true })).toEqual(['a']);
  expect(questionsOf({ not: { question: 'a', is: 'x' } })).toEqual(['a']);
  expect(questionsOf({ question: 'b', atLeast: 1 })).toEqual(['b']);
  expect(questionsOf({ question: 'c', below: 4 })).toEqual(['c']);
});

test('[hand] parts keep their order, and a question in two parts is asked once', () => {
  expect(
    questionsOf({
      all: [
        { question: 'b', is: true },
        { any: [{ question: 'a', is: true }, { not: { question: 'b', is: false } }] },
        { question: 'c', below: 2 },
      ],
    }),
  ).toEqual(['b', 'a', 'c']);
});
