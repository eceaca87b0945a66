import { commonPractice, published } from '../../evidence/backing.ts';
import type { Fact } from '../../evidence/fact.ts';

const reviewed = '2026-11-30';

/** Something in the eye. */
export const eyeFacts = {
  'eye-call-burning': {
    value: 'advice',
    unit: '1',
    backing: published(
      'healthinfo-eye-2022',
      'first line',
      'Phone 111 immediately and ask for an ambulance if the chemical is causing burning or stinging in the person’s eyes.',
    ),
    reviewed,
  },
  'eye-rinse-goes-on': {
    value: 'advice',
    unit: '1',
    backing: published(
      'nz-poisons-eye',
      'second line',
      'should be consulted as soon as possible while flushing continues',
    ),
    reviewed,
  },
  'eye-shut-or-blurred': {
    value: 'practice',
    unit: '1',
    backing: commonPractice('An eye that will not open or sees differently is a call.'),
    reviewed,
  },
  'eye-lens-out': {
    value: 'advice',
    unit: '1',
    backing: published('nz-poisons-eye', 'third line', 'Remove contact lenses before flushing.'),
    reviewed,
  },
  'eye-lens-washes-out': {
    value: 'advice',
    unit: '1',
    backing: published(
      'healthinfo-eye-2022',
      'helping',
      'Take out any contact lenses if they do not wash out when rinsing.',
    ),
    reviewed,
  },
  'eye-nose-to-ear': {
    value: 'advice',
    unit: '1',
    backing: published(
      'nz-poisons-eye',
      'list',
      'Pour water continuously across the eye from the nose to the ear.',
    ),
    reviewed,
  },
  'eye-lower': {
    value: 'advice',
    unit: '1',
    backing: published(
      'nhs-eye-2018',
      'flushing',
      'slant your head so the injured eye is lower than the unaffected eye',
    ),
    reviewed,
  },
  'eye-lids-open': {
    value: 'advice',
    unit: '1',
    backing: published(
      'st-john-eye',
      'what to do, 1',
      'If the casualty’s eye is shut due to pain, gently but firmly open it so it can be washed out.',
    ),
    reviewed,
  },
  'eye-rinse-minutes': {
    value: 20,
    unit: 'minutes',
    backing: published(
      'st-john-eye',
      'emergency advice, 2',
      'Keep the eye under running water for at least 20 minutes.',
    ),
    reviewed,
  },
  'eye-rinse-short-minutes': {
    value: 15,
    unit: 'minutes',
    backing: published(
      'nz-poisons-eye',
      'flushing',
      'Flushing should continue for at least 15 minutes, and may be required for much longer, depending on medical advice',
    ),
    reviewed,
  },
  'eye-no-rubbing': {
    value: 'advice',
    unit: '1',
    backing: published('healthinfo-eye-2022', 'first lines', 'Do not rub the affected eye(s).'),
    reviewed,
  },
  'eye-no-drops': {
    value: 'advice',
    unit: '1',
    backing: published(
      'nz-poisons-eye',
      'should not be used',
      'Eye baths and drops do not contain enough fluid to successfully flush an eye',
    ),
    reviewed,
  },
  'eye-doctor': {
    value: 'advice',
    unit: '1',
    backing: published(
      'nhs-eye-2018',
      'flushing',
      'All eye injuries caused by chemical exposure should be seen by an eye doctor or nurse as soon as possible after flushing.',
    ),
    reviewed,
  },
  'eye-numb-guard': {
    value: 'practice',
    unit: '1',
    backing: commonPractice(
      'A numbed eye feels nothing: it is not touched and stays closed until feeling is back.',
    ),
    reviewed,
  },
  'eye-pain-comes-back': {
    value: 'advice',
    unit: '1',
    backing: published(
      'numbing-eye-1999',
      'case',
      'This caused immediate discomfort that subsided, only to recur several hours later.',
    ),
    reviewed,
  },
  'eye-cream-water': {
    value: 'advice',
    unit: '1',
    backing: published(
      'royal-free-cream',
      'what you need to know',
      'It may cause irritation and you should wash it out immediately with water or salt water solution (sodium chloride).',
    ),
    reviewed,
  },
  'eye-chlorhexidine': {
    value: 'advice',
    unit: '1',
    backing: published(
      'chlorhexidine-1989',
      'first sentence',
      'has resulted in irreversible corneal damage in at least four patients',
    ),
    reviewed,
  },
  'eye-pass-it-on': {
    value: 'advice',
    unit: '1',
    backing: published(
      'st-john-eye',
      'what to do, 4',
      'If you know what chemicals might have been involved in the accident, pass this information on to the medical professionals.',
    ),
    reviewed,
  },
  'eye-pad': {
    value: 'advice',
    unit: '1',
    backing: published(
      'st-john-eye',
      'what to do, 3',
      'Ask the casualty to hold a clean non-fluffy pad over the injured eye and bandage in place.',
    ),
    reviewed,
  },
} as const satisfies Readonly<Record<string, Fact | Fact<'advice' | 'practice'>>>;
