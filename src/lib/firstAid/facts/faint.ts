import { commonPractice, published } from '../../evidence/backing.ts';
import type { Fact } from '../../evidence/fact.ts';

const reviewed = '2026-11-30';

/** A faint, and feeling faint. */
export const faintFacts = {
  'faint-not-recovered': {
    value: 'advice',
    unit: '1',
    backing: published(
      'nhs-wales-fainting',
      'Call 999 if',
      'have not fully recovered or have difficulty with speech or movement',
    ),
    reviewed,
  },
  'faint-chest-pain': {
    value: 'advice',
    unit: '1',
    backing: published(
      'nhs-wales-fainting',
      'Call 999 if',
      'have chest pain or a pounding, fluttering or irregular heartbeat (heart palpitations)',
    ),
    reviewed,
  },
  'faint-fit': {
    value: 'advice',
    unit: '1',
    backing: published(
      'nhs-wales-fainting',
      'Call 999 if',
      'are shaking or jerking because of a seizure or fit',
    ),
    reviewed,
  },
  'faint-lying-down': {
    value: 'advice',
    unit: '1',
    backing: published('nhs-faint-retold', 'list', 'Fainted while lying down'),
    reviewed,
    caveat: 'Read only as a news site retells the list.',
  },
  'faint-one-minute': {
    value: 'advice',
    unit: '1',
    backing: published('nhs-wales-fainting', 'Call 999 if', 'cannot be woken up within 1 minute'),
    reviewed,
  },
  'faint-lie-down': {
    value: 'advice',
    unit: '1',
    backing: published('st-john-fainting', 'What to do, 1', 'Ask them to lie down.'),
    reviewed,
  },
  'faint-no-pillow': {
    value: 'practice',
    unit: '1',
    backing: commonPractice('With the pillow out and the couch flat her head is level with her heart.'),
    reviewed,
  },
  'faint-legs-up': {
    value: 'advice',
    unit: '1',
    backing: published(
      'st-john-fainting',
      'What to do, 3',
      'Kneel down next to them and raise their legs, supporting their ankles on your shoulders to help blood flow back to the brain.',
    ),
    reviewed,
  },
  'faint-legs-if-sound': {
    value: 'practice',
    unit: '1',
    backing: commonPractice('Legs stay down where something hurts, and where she is pregnant.'),
    reviewed,
  },
  'faint-pregnant-side': {
    value: 'advice',
    unit: '1',
    backing: published(
      'nhs-wales-fainting',
      'If you see someone faint',
      'it’s better to lay them on their side',
    ),
    reviewed,
  },
  'faint-pregnant-not-back': {
    value: 'advice',
    unit: '1',
    backing: published(
      'nhs-pregnant-fainting',
      'advice for those around',
      'Ensure they are not lying on their back.',
    ),
    reviewed,
  },
  'faint-left-side': {
    value: 'practice',
    unit: '1',
    backing: commonPractice(
      'Bodies that name a side for pregnancy name the left, for allergy; for a faint no page read names one.',
    ),
    reviewed,
  },
  'faint-no-better-minutes': {
    value: 2,
    unit: 'minutes',
    range: [1, 2],
    backing: published(
      'heart-red-cross-2019',
      'recommendations',
      'If no improvement occurs within 1 to 2 minutes, or if symptoms worsen or reoccur, providers should initiate a call for additional help.',
    ),
    reviewed,
  },
  'faint-fresh-air': {
    value: 'advice',
    unit: '1',
    backing: published('st-john-fainting', 'What to do, 4', 'Make sure that they have plenty of fresh air.'),
    reviewed,
  },
  'faint-up-slowly': {
    value: 'advice',
    unit: '1',
    backing: published(
      'st-john-fainting',
      'What to do, 5',
      'Reassure the casualty and help them to sit up slowly.',
    ),
    reviewed,
  },
  'nothing-to-drink-yet': {
    value: 'practice',
    unit: '1',
    backing: commonPractice('Nothing to eat or drink until she is fully awake.'),
    reviewed,
  },
  'faint-no-chair': {
    value: 'advice',
    unit: '1',
    backing: published(
      'st-john-column',
      'sixth paragraph',
      'Never advise a casualty who feels faint to sit on a chair with their head between their knees',
    ),
    reviewed,
  },
  'faint-head-down-offered': {
    value: 'advice',
    unit: '1',
    backing: published(
      'nhs-wales-fainting',
      'Things you can do',
      'if you cannot do this then sit with your head lowered between your knees',
    ),
    reviewed,
  },
  'no-bag-no-slap': {
    value: 'practice',
    unit: '1',
    backing: commonPractice(
      'A bag to breathe into, a slap, smelling salts and sugar are not in any first-aid text read here.',
    ),
    reviewed,
  },
} as const satisfies Readonly<Record<string, Fact | Fact<'advice' | 'practice'>>>;
