import { glob } from 'astro/loaders';
import { defineCollection } from 'astro:content';
import { z } from 'astro/zod';
import { calculatorSchema } from './build/calculatorSchema.ts';
import { urgentSchema } from './build/urgentSchema.ts';

const id = z.string().regex(/^[a-z0-9-]+$/, 'An id is small letters, digits and hyphens.');
const sentence = z.string().min(10, 'Write one whole sentence.');

const lessons = defineCollection({
  loader: glob({ pattern: '**/*.mdx', base: './content/lessons' }),
  schema: z.object({
    title: z.string(),
    strand: z.enum(['hygiene', 'before-you-start', 'mapping', 'skin-healing', 'colour', 'old-work']),
    /** Place within its strand, from 1. */
    order: z.number().int().positive(),
    question: sentence,
    stand: sentence,
    minutes: z.number().int().min(3).max(20),
    skills: z.array(id),
    rules: z.array(id),
    next: z.array(id).default([]),
    reviewed: z.coerce.date(),
  }),
});

const rules = defineCollection({
  loader: glob({ pattern: '*.{md,mdx}', base: './content/rules' }),
  schema: z.object({
    id,
    title: z.string(),
    summary: sentence,
    strand: id,
    terms: z.array(id).default([]),
    lessons: z.array(id).default([]),
    calculators: z.array(id).default([]),
    urgent: z.boolean().default(false),
  }),
});

const calculators = defineCollection({
  loader: glob({ pattern: '*.mdx', base: './content/calculators' }),
  schema: calculatorSchema,
});

const urgent = defineCollection({
  loader: glob({ pattern: '*.mdx', base: './content/urgent' }),
  schema: urgentSchema,
});

const glossary = defineCollection({
  loader: glob({ pattern: '*.md', base: './content/glossary' }),
  schema: z.object({ id, title: z.string(), also: z.array(z.string()).default([]) }),
});

const pages = defineCollection({
  loader: glob({ pattern: '*.{md,mdx}', base: './content/pages' }),
  schema: z.object({ id, title: z.string(), summary: sentence }),
});

export const collections = { lessons, rules, calculators, urgent, glossary, pages };
