import { commonPractice, published } from '../../evidence/backing.ts';
import type { Fact } from '../../evidence/fact.ts';

const reviewed = '2026-11-30';

/** Severe allergy. */
export const allergyFacts = {
  'allergy-breath': {
    value: 'advice',
    unit: '1',
    backing: published('ascia-2023', 'signs', 'Difficult or noisy breathing'),
    reviewed,
  },
  'allergy-throat': {
    value: 'advice',
    unit: '1',
    backing: published('ascia-2023', 'signs', 'Swelling or tightness in throat'),
    reviewed,
  },
  'allergy-wheeze': {
    value: 'advice',
    unit: '1',
    backing: published('ascia-2023', 'signs', 'Wheeze or persistent cough'),
    reviewed,
  },
  'allergy-dizzy': {
    value: 'advice',
    unit: '1',
    backing: published('ascia-2023', 'signs', 'Persistent dizziness or collapse'),
    reviewed,
  },
  'allergy-face': {
    value: 'advice',
    unit: '1',
    backing: published('red-cross-allergy', 'step 2, starred', 'Face, neck, tongue or lip swelling'),
    reviewed,
  },
  'allergy-face-mild': {
    value: 'advice',
    unit: '1',
    backing: published('ascia-2023', 'mild to moderate', 'Swelling of lips, face, eyes'),
    reviewed,
  },
  'allergy-say-the-word': {
    value: 'advice',
    unit: '1',
    backing: published(
      'anaphylaxis-uk',
      'call',
      'Inform the operator that this is an emergency case of anaphylaxis (ana-fil-axis).',
    ),
    reviewed,
  },
  'allergy-in-doubt': {
    value: 'advice',
    unit: '1',
    backing: published(
      'mhra-2023',
      'first line',
      'should be used without delay if anaphylaxis is suspected, even if in doubt about the severity of the event',
    ),
    reviewed,
  },
  'injector-thigh': {
    value: 'advice',
    unit: '1',
    backing: published(
      'ascia-2023',
      'introduction',
      'adrenaline (epinephrine), which is injected into the outer mid-thigh muscle',
    ),
    reviewed,
  },
  'injector-clothes': {
    value: 'advice',
    unit: '1',
    backing: published(
      'anaphylaxis-uk',
      'auto-injector',
      'It can be given through clothes if necessary, avoiding bulky pockets or seams.',
    ),
    reviewed,
  },
  'injector-note-time': {
    value: 'advice',
    unit: '1',
    backing: published(
      'anaphylaxis-uk',
      'track the time',
      'Make a note of the time you used your first AAI.',
    ),
    reviewed,
  },
  'injector-second-minutes': {
    value: 5,
    unit: 'minutes',
    backing: published(
      'ascia-2021',
      'action 5',
      'Further adrenaline may be given if no response after 5 minutes',
    ),
    reviewed,
  },
  'injector-second-once-minutes': {
    value: 15,
    unit: 'minutes',
    range: [5, 15],
    backing: published(
      'mhra-2014',
      'Drug Safety Update',
      'the second auto-injector should be used 5 to 15 minutes after the first',
    ),
    reviewed,
    caveat: 'Replaced in 2023.',
  },
  'allergy-flat': {
    value: 'advice',
    unit: '1',
    backing: published('ascia-2023', 'action 1', 'LAY PERSON FLAT - do NOT allow them to stand or walk'),
    reviewed,
  },
  'allergy-even-better': {
    value: 'advice',
    unit: '1',
    backing: published(
      'ascia-2024',
      'positions',
      'The person should NOT stand, walk, or be held upright, even if they appear to have recovered.',
    ),
    reviewed,
  },
  'allergy-no-chair': {
    value: 'advice',
    unit: '1',
    backing: published(
      'anaphylaxis-uk',
      'get in position',
      'You must not stand up, or sit in a chair, even if you are feeling better.',
    ),
    reviewed,
  },
  'allergy-legs-out': {
    value: 'advice',
    unit: '1',
    backing: published(
      'ascia-2023',
      'action 1',
      'If breathing is difficult allow them to sit with legs outstretched',
    ),
    reviewed,
  },
  'allergy-down-again': {
    value: 'advice',
    unit: '1',
    backing: published(
      'mhra-2023',
      'positions',
      'don’t change position suddenly; you should then lie down again as soon as you can',
    ),
    reviewed,
  },
  'allergy-left-side': {
    value: 'advice',
    unit: '1',
    backing: published(
      'ascia-2023',
      'action 1',
      'If unconscious or pregnant, place in recovery position - on left side if pregnant',
    ),
    reviewed,
  },
  'allergy-legs-raised': {
    value: 'advice',
    unit: '1',
    backing: published(
      'anaphylaxis-uk',
      'get in position',
      'You should lie flat with your legs raised to help blood flow back to your heart and vital organs.',
    ),
    reviewed,
  },
  'allergy-comfortable': {
    value: 'advice',
    unit: '1',
    backing: published(
      'ifrc-allergy',
      'good practice',
      'The first aid provider should help the person to get into a comfortable position',
    ),
    reviewed,
  },
  'allergy-wipe-off': {
    value: 'advice',
    unit: '1',
    backing: published(
      'ifrc-allergy',
      'good practice',
      'the allergen should be removed (e.g., from the skin)',
    ),
    reviewed,
  },
  'allergy-gloves-off': {
    value: 'practice',
    unit: '1',
    backing: commonPractice('Latex gloves come off with what touched her.'),
    reviewed,
  },
  'allergy-stay': {
    value: 'advice',
    unit: '1',
    backing: published('ascia-2023', 'mild to moderate, actions', 'Stay with person, call for help'),
    reviewed,
  },
  'allergy-not-laboured': {
    value: 'advice',
    unit: '1',
    backing: published(
      'immunisation-2018',
      'table, breathing',
      'Normal breathing; may be shallow, but not laboured',
    ),
    reviewed,
    caveat: 'Written for vaccination.',
  },
  'allergy-no-better-flat': {
    value: 'advice',
    unit: '1',
    backing: published(
      'immunisation-2018',
      'table, heart',
      'Loss of consciousness — no improvement once supine or in head-down position',
    ),
    reviewed,
    caveat: 'Written for vaccination.',
  },
} as const satisfies Readonly<Record<string, Fact | Fact<'advice' | 'practice'>>>;
