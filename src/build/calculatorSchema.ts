import { z } from 'astro/zod';
import { typedDigits } from './typedDigits.ts';

const id = z.string().regex(/^[a-z0-9-]+$/, 'An id is small letters, digits and hyphens.');

/** What front matter holds where a sentence with a colon has no quotes is no text. */
const sentences = z
  .string({ error: 'Write a sentence, in quotes where it holds a colon.' })
  .min(10, 'Write one whole sentence.')
  .regex(/[.?!]$/, 'End the sentence.')
  .refine(
    (text) => typedDigits(text.replace(/\{[^}]*\}/g, '')).length === 0,
    'Type no digit: write {id} where the number of a fact or of a sum belongs.',
  );

const assumption = z
  .strictObject({
    says: sentences,
    /** What stands behind it, where no fact does. */
    grade: z.enum(['assumed', 'computed'], { error: 'A grade is assumed or computed.' }).optional(),
    fact: id.optional(),
  })
  .refine(
    ({ grade, fact }) => grade === undefined || fact === undefined,
    'Name a grade or a fact, not both.',
  );

/**
 * The front matter of a calculator's words in content/calculators/. Title and line stand in
 * src/words/calculators.ts: other pages show them, too. In sentences, `{id}` is the value of a fact or of a
 * sum, or leads to a calculator.
 */
export const calculatorSchema = z.strictObject({
  id,
  /** The sheet on which its marks are printed at true size. */
  sheet: id.optional(),
  /** What its answer assumes, besides the facts it rests on. */
  assumes: z.array(assumption).default([]),
  doesNotCheck: z
    .array(sentences, {
      error: 'Say under doesNotCheck what the calculator does not check, one sentence a line.',
    })
    .min(1, 'Say at least one thing that the calculator does not check.'),
});
