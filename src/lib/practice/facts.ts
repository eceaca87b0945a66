import { assumed, published } from '../evidence/backing.ts';
import type { Fact } from '../evidence/fact.ts';

const reviewed = '2026-11-25';
const kleij =
  'elaborated feedback (EF; e.g., providing an explanation) produced larger effect sizes (0.49) than feedback regarding the correctness of the answer (KR; 0.05)';

/**
 * What is known about practising; standardised differences (1 = one standard deviation). School results may
 * not carry over.
 */
export const practiceFacts = {
  'worked-examples-help': {
    value: 0.48,
    unit: '1',
    backing: published(
      'barbieri-2023',
      'abstract',
      'the average effect size of worked examples on mathematics performance outcomes was medium with g = 0.48 and p = 0.01',
    ),
    reviewed,
    caveat: '55 studies of school and college mathematics.',
  },
  'beginners-need-help': {
    value: 0.505,
    unit: '1',
    backing: published(
      'tetzlaff-2025',
      'abstract, results',
      'Low prior knowledge learners learn better from high-assistance instruction (d = 0.505).',
    ),
    reviewed,
  },
  'experts-need-less': {
    value: -0.428,
    unit: '1',
    backing: published(
      'tetzlaff-2025',
      'abstract, results',
      'High prior knowledge learners learn better from low-assistance instruction (d = −0.428).',
    ),
    reviewed,
  },
  'mix-what-is-seen': {
    value: 0.67,
    unit: '1',
    backing: published(
      'brunmair-2019',
      'abstract',
      'Interleaved practice was best for studies using paintings (g = 0.67) and other visual materials.',
    ),
    reviewed,
  },
  'mix-sums': {
    value: 0.34,
    unit: '1',
    backing: published(
      'brunmair-2019',
      'abstract',
      'studies using mathematical tasks revealed a small interleaving effect (g = 0.34)',
    ),
    reviewed,
  },
  'keep-words-together': {
    value: -0.39,
    unit: '1',
    backing: published(
      'brunmair-2019',
      'abstract',
      'An advantage of blocking compared with interleaving was found for studies based on words (g = -0.39).',
    ),
    reviewed,
  },
  'space-practice-out': {
    value: 0.74,
    unit: '1',
    backing: published(
      'latimier-2021',
      'abstract',
      'a strong benefit of spaced retrieval practice in comparison with massed retrieval practice (g = 0.74)',
    ),
    reviewed,
  },
  'growing-gaps-no-better': {
    value: 0.034,
    unit: '1',
    backing: published(
      'latimier-2021',
      'abstract',
      'no significant difference between expanding and uniform spacing schedules of retrieval practice (g = 0.034)',
    ),
    reviewed,
  },
  'say-what-went-wrong': {
    value: 0.49,
    unit: '1',
    backing: published('van-der-kleij-2015', 'abstract', kleij),
    reviewed,
  },
  'right-or-wrong-only': {
    value: 0.05,
    unit: '1',
    backing: published('van-der-kleij-2015', 'abstract', kleij),
    reviewed,
  },
  'right-answer-only': {
    value: 0.32,
    unit: '1',
    backing: published('van-der-kleij-2015', 'abstract', 'providing the correct answer (KCR; 0.32)'),
    reviewed,
  },
  'first-review-days': {
    value: 1,
    unit: 'days',
    backing: assumed(
      'The plain schedule of this site is 1, 3, 7 and 21 days; no study chooses between such schedules.',
    ),
    reviewed,
  },
  'last-review-days': {
    value: 21,
    unit: 'days',
    backing: assumed(
      'The plain schedule of this site is 1, 3, 7 and 21 days; no study chooses between such schedules.',
    ),
    reviewed,
  },
} as const satisfies Readonly<Record<string, Fact>>;
