import { commonPractice, published } from '../../evidence/backing.ts';
import type { Fact } from '../../evidence/fact.ts';

const reviewed = '2026-11-30';

/** What numbing cream can do to the whole body. */
export const numbingFacts = {
  'numbing-heart-fit': {
    value: 'advice',
    unit: '1',
    backing: published(
      'fda-numbing-2007',
      'third paragraph',
      'high levels of these products in the blood causing life-threatening side effects, such as an irregular heartbeat, seizures, and death',
    ),
    reviewed,
  },
  'numbing-first-signs': {
    value: 'advice',
    unit: '1',
    backing: published(
      'lignocaine-overdose',
      'symptoms',
      'circumoral paraesthesia, numbness of the tongue, light-headedness, hyperacusis and tinnitus',
    ),
    reviewed,
    caveat: 'Written for injections.',
  },
  'numbing-sight-twitching': {
    value: 'advice',
    unit: '1',
    backing: published(
      'lignocaine-overdose',
      'symptoms',
      'Visual disturbance and muscular tremors or muscle twitching are more serious and precede the onset of generalised convulsions.',
    ),
    reviewed,
    caveat: 'Written for injections.',
  },
  'numbing-not-nerves': {
    value: 'advice',
    unit: '1',
    backing: published(
      'lignocaine-overdose',
      'symptoms',
      'These signs must not be mistaken for neurotic behaviour.',
    ),
    reviewed,
  },
  'numbing-grey-lips': {
    value: 'advice',
    unit: '1',
    backing: published(
      'fda-benzocaine-2011',
      'signs',
      'pale, gray or blue colored skin, lips, and nail beds',
    ),
    reviewed,
  },
  'numbing-hours-later': {
    value: 'advice',
    unit: '1',
    backing: published(
      'fda-benzocaine-2011',
      'signs',
      'The signs and symptoms usually appear within minutes to hours of using benzocaine.',
    ),
    reviewed,
  },
  'numbing-take-off': {
    value: 'advice',
    unit: '1',
    backing: published(
      'numbing-script-2019',
      'rare effects',
      'If you notice any of these effects, you should remove the cream and contact the doctor at once.',
    ),
    reviewed,
  },
  'numbing-away-from-eyes': {
    value: 'practice',
    unit: '1',
    backing: commonPractice(
      'The film comes off first; the cream is wiped away from the eyes, never towards them.',
    ),
    reviewed,
  },
  'numbing-lie': {
    value: 'practice',
    unit: '1',
    backing: commonPractice(
      'No body read gives a posture for this. Flat; on the side where she is drowsy, sick or pregnant, as in any other faintness.',
    ),
    reviewed,
  },
  'fit-first': {
    value: 'advice',
    unit: '1',
    backing: published('cdc-seizures', 'Do I call', 'The person has never had a seizure before.'),
    reviewed,
  },
  'fit-not-held': {
    value: 'advice',
    unit: '1',
    backing: published(
      'cdc-seizures-2012',
      'list',
      'Do not hold the person down or try to stop his movements.',
    ),
    reviewed,
  },
  'fit-nothing-in-mouth': {
    value: 'advice',
    unit: '1',
    backing: published('cdc-seizures-2012', 'list', 'Do not put anything in the person’s mouth.'),
    reviewed,
  },
  'fit-clear-space': {
    value: 'advice',
    unit: '1',
    backing: published(
      'cdc-seizures-2012',
      'list',
      'Prevent injury by clearing the area around the person of anything hard or sharp.',
    ),
    reviewed,
  },
  'fit-time': {
    value: 'advice',
    unit: '1',
    backing: published('cdc-seizures-2012', 'list', 'Time the seizure with your watch.'),
    reviewed,
  },
  'numbing-for-the-crew': {
    value: 'practice',
    unit: '1',
    backing: commonPractice('Name, strength, how much, when on and when off: the crew needs them.'),
    reviewed,
  },
} as const satisfies Readonly<Record<string, Fact | Fact<'advice' | 'practice'>>>;
