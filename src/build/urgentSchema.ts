import { z } from 'astro/zod';

const id = z.string().regex(/^[a-z0-9-]+$/, 'An id is small letters, digits and hyphens.');

const line = z.object({
  say: z
    .string()
    .min(10, 'Write one line to be read aloud.')
    .regex(/^[^\d]*$/, 'Type no digit: write {fact-id} where a number of a fact belongs.'),
  facts: z.array(id).min(1, 'Name at least one fact that stands behind this line.'),
});

/**
 * The front matter of a card in content/urgent/. The line about waking and breathing stands in
 * src/words/urgent.ts: every card ends on it.
 */
export const urgentSchema = z.object({
  id,
  title: z.string(),
  /** Place among the five, from 1. */
  order: z.number().int().positive(),
  summary: z.string().min(10, 'Write one whole sentence.'),
  /** What people type or say when they look for it; found, not shown. */
  also: z.array(z.string()).min(5, 'Name at least five words or phrases by which people look for this card.'),
  lines: z
    .array(line)
    .min(3, 'Write at least three lines.')
    .max(5, 'Write at most five lines: the sixth, about waking and breathing, is added to every card.')
    .refine(
      ([first]) => /\b(call|go)\b/i.test(first?.say ?? ''),
      'The first line says when to call, or where to go.',
    ),
});
