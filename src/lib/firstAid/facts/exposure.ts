import { commonPractice, published } from '../../evidence/backing.ts';
import type { Fact } from '../../evidence/fact.ts';

const reviewed = '2026-11-30';

/** A needle stuck, blood splashed. */
export const exposureFacts = {
  'exposure-within-hour': {
    value: 'advice',
    unit: '1',
    backing: published(
      'scotland-sharps',
      'first line',
      'start as soon as possible, ideally within 1h of a Significant Exposure',
    ),
    reviewed,
  },
  'hiv-ideal-hours': {
    value: 24,
    unit: 'hours',
    backing: published(
      'who-hiv-2024',
      'overview',
      'as soon as possible, ideally within 24 hours and no later than 72 hours after exposure',
    ),
    reviewed,
  },
  'hiv-edge-hours': {
    value: 72,
    unit: 'hours',
    backing: published(
      'who-hiv-2024',
      'overview',
      'as soon as possible, ideally within 24 hours and no later than 72 hours after exposure',
    ),
    reviewed,
  },
  'exposure-wash': {
    value: 'advice',
    unit: '1',
    backing: published(
      'niosh-2008',
      'what to do',
      'Wash needlesticks, cuts, and all skin exposures with soap and water.',
    ),
    reviewed,
  },
  'exposure-bleed-freely': {
    value: 'advice',
    unit: '1',
    backing: published('who-blood-2010', 'annex, first aid', 'Let the wound bleed freely.'),
    reviewed,
  },
  'exposure-encourage': {
    value: 'advice',
    unit: '1',
    backing: published(
      'hse-exposure',
      'first aid',
      'the wound should be gently encouraged to bleed, but not scrubbed or sucked, and should be washed with soap and water',
    ),
    reviewed,
  },
  'exposure-squeeze-taught': {
    value: 'advice',
    unit: '1',
    backing: published(
      'cardiff-sharps',
      'list',
      'Encourage local bleeding by gently squeezing, do not suck area.',
    ),
    reviewed,
  },
  'exposure-squeeze-no-evidence': {
    value: 'advice',
    unit: '1',
    backing: published(
      'usphs-squeezing-2011',
      'answer',
      'no evidence exists that expressing fluid by squeezing the wound further reduces the risk of bloodborne pathogen transmission',
    ),
    reviewed,
  },
  'exposure-no-bleach': {
    value: 'advice',
    unit: '1',
    backing: published('glasgow-sharps', 'first aid', 'DO NOT USE BLEACH ON THE INJURY'),
    reviewed,
  },
  'blood-rinse-minutes': {
    value: 10,
    unit: 'minutes',
    backing: published(
      'who-blood-2010',
      'annex, first aid',
      'Flush eyes, the nose, the mouth and mucous membranes with water for at least 10 minutes.',
    ),
    reviewed,
  },
  'exposure-lens': {
    value: 'advice',
    unit: '1',
    backing: published(
      'cardiff-sharps',
      'list',
      'If wearing contact lenses irrigate eyes before and after removing them.',
    ),
    reviewed,
  },
  'exposure-spit': {
    value: 'advice',
    unit: '1',
    backing: published('cardiff-sharps', 'list', 'Do not swallow water used for rinsing mouth.'),
    reviewed,
  },
  'exposure-gloves-off': {
    value: 'practice',
    unit: '1',
    backing: commonPractice('Gloves come off and somebody else looks after the client.'),
    reviewed,
  },
  'exposure-tell-them': {
    value: 'practice',
    unit: '1',
    backing: commonPractice(
      'Time, tool, how deep, whose blood if you know, your jabs against hepatitis B and tetanus.',
    ),
    reviewed,
  },
  'hepatitis-b-hours': {
    value: 24,
    unit: 'hours',
    backing: published(
      'cdc-hepatitis-2006',
      'appendix B',
      'as soon as possible after exposure (preferably within 24 hours)',
    ),
    reviewed,
  },
  'exposure-sharps-box': {
    value: 'advice',
    unit: '1',
    backing: published(
      'hse-exposure',
      'first aid',
      'should not be re-sheathed, but disposed of directly into an appropriate container',
    ),
    reviewed,
  },
  'exposure-no-needle-test': {
    value: 'advice',
    unit: '1',
    backing: published(
      'hse-exposure',
      'first aid',
      'It is not necessary to keep any needle or sharp instrument to send to the laboratory',
    ),
    reviewed,
  },
  'exposure-report': {
    value: 'advice',
    unit: '1',
    backing: published(
      'hse-exposure',
      'what workers should do',
      'report any possible exposure incidents to your supervisor, line manager or health and safety adviser and your occupational health department',
    ),
    reviewed,
  },
  'exposure-do-not-wait': {
    value: 'advice',
    unit: '1',
    backing: published(
      'ashm-source',
      'first line',
      'Provision of PEP should not be delayed while establishing the source status.',
    ),
    reviewed,
  },
  'exposure-no-dressing': {
    value: 'advice',
    unit: '1',
    backing: published('who-blood-2010', 'annex, first aid', 'Do not put on a dressing.'),
    reviewed,
  },
  'exposure-dressing': {
    value: 'advice',
    unit: '1',
    backing: published('cardiff-sharps', 'list', 'Cover area with waterproof dressing.'),
    reviewed,
  },
  'exposure-her-too': {
    value: 'practice',
    unit: '1',
    backing: commonPractice('If your blood reached her, she needs the same visit.'),
    reviewed,
  },
} as const satisfies Readonly<Record<string, Fact | Fact<'advice' | 'practice'>>>;
