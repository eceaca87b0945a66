import { commonPractice, published } from '../../evidence/backing.ts';
import type { Fact } from '../../evidence/fact.ts';

const reviewed = '2026-11-30';

/** Not waking and not breathing normally: the line under every urgent card, and the side. */
export const wakingFacts = {
  'arrest-signs': {
    value: 'advice',
    unit: '1',
    backing: published(
      'rcuk-2021',
      'key points',
      'Recognise cardiac arrest has occurred in any unresponsive person with absent or abnormal breathing.',
    ),
    reviewed,
  },
  'fetch-defibrillator': {
    value: 'advice',
    unit: '1',
    backing: published(
      'rcuk-2021',
      'key points',
      'Send someone to fetch an AED and bring it to the scene of the cardiac arrest.',
    ),
    reviewed,
  },
  'call-before-breathing': {
    value: 'advice',
    unit: '1',
    backing: published(
      'rcuk-2025',
      'as quoted',
      'initiate the call first, then assess breathing while waiting for the call to be answered',
    ),
    reviewed,
  },
  'cpr-on-the-floor': {
    value: 'practice',
    unit: '1',
    backing: commonPractice(
      'A treatment couch is soft. Trainers move the person to the floor for CPR where they can; no body’s own page on this was read.',
    ),
    reviewed,
  },
  'on-the-side': {
    value: 'advice',
    unit: '1',
    backing: published(
      'rcuk-2021',
      'key points',
      'Use the recovery position, only if a person’s conscious level is reduced and they do not meet the criteria for starting CPR.',
    ),
    reviewed,
  },
} as const satisfies Readonly<Record<string, Fact | Fact<'advice' | 'practice'>>>;
