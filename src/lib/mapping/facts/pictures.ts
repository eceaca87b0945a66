import { commonPractice, computed, published } from '../../evidence/backing.ts';
import type { Fact, Practice } from '../../evidence/fact.ts';

const reviewed = '2026-11-25';
const paskhover =
  'the nasal base appear approximately 30 percent wider and the nasal tip 7 percent wider than if the photograph had been taken at 5 feet';
const derakhshan =
  'The same features were distorted when a smartphone camera was used at 8 inches (18% increase, p < 0.01) and 12 inches (12% increase';
const pressler =
  'Nasal length was, on average, 6.4 percent longer in 12-inch selfies compared to clinical photography, and 4.3 percent longer in 18-inch selfies';
const pirayesh =
  'mean absolute percentage error (MAPE) of 2.9% and 4.3% in horizontal and vertical measurements';
const head =
  'recorded on the first and second occasions were 2.43 and 1.75 degrees, respectively, around the x-axis';
const onModel = 'One neutral model head, read as a picture is read; no mean of people.';

/** What a turned, nodded, tilted or near picture does. */
export const pictureFacts = {
  'near-nose-base-wider': {
    value: 30,
    unit: '%',
    backing: published('paskhover-2018', 'university’s summary', paskhover),
    reviewed,
    caveat: 'A model of flat planes, 12 inches against 5 feet; measured selfies show less.',
  },
  'near-nose-tip-wider': {
    value: 7,
    unit: '%',
    backing: published('paskhover-2018', 'university’s summary', paskhover),
    reviewed,
    caveat: 'A model of flat planes, 12 inches against 5 feet.',
  },
  'near-midface-taller': {
    value: 12,
    unit: '%',
    backing: published('derakhshan-2024', 'abstract, results', derakhshan),
    reviewed,
    caveat: '12 people, phone at 12 inches, against a camera at 60 inches.',
  },
  'nearest-midface-taller': {
    value: 18,
    unit: '%',
    backing: published('derakhshan-2024', 'abstract, results', derakhshan),
    reviewed,
    caveat: '12 people, phone at 8 inches, against a camera at 60 inches.',
  },
  'selfie-nose-longer': {
    value: 6.4,
    unit: '%',
    backing: published('pressler-2022', 'abstract, results', pressler),
    reviewed,
    caveat: '30 volunteers, front camera at 12 inches, against 5 feet.',
  },
  'selfie-nose-longer-farther': {
    value: 4.3,
    unit: '%',
    backing: published('pressler-2022', 'abstract, results', pressler),
    reviewed,
    caveat: '30 volunteers, front camera at 18 inches, against 5 feet.',
  },
  'iris-scale-error-across': {
    value: 2.9,
    unit: '%',
    backing: published('pirayesh-2023', 'abstract', pirayesh),
    reviewed,
    caveat: '94 people, lengths scaled by the iris taken as 12.2 mm.',
  },
  'iris-scale-error-up': {
    value: 4.3,
    unit: '%',
    backing: published('pirayesh-2023', 'abstract', pirayesh),
    reviewed,
    caveat: '94 people, lengths scaled by the iris taken as 12.2 mm.',
  },
  'head-nod-drift-deg': {
    value: 2.43,
    unit: '°',
    backing: published('head-position-2019', 'abstract, results', head),
    reviewed,
    caveat: '40 students; head held by the mirror against head held by feel.',
  },
  'head-nod-weeks-deg': {
    value: 3,
    unit: '°',
    reviewed,
    backing: published(
      'head-position-2019',
      'abstract, results',
      'The average changes in NHP around the x-axis between the self-balanced and mirror balanced positions exceeded 3 degrees at the two-week interval.',
    ),
    caveat: '40 students; "exceeded".',
  },
  'turn-3-deg-tail-mm': {
    value: 1.83,
    unit: 'mm',
    backing: computed('the model head turned by 3 degrees, far camera, read by its own midline'),
    caveat: onModel,
    reviewed,
  },
  'turn-3-deg-front-mm': {
    value: 0.79,
    unit: 'mm',
    backing: computed('the model head turned by 3 degrees, far camera, read by its own midline'),
    caveat: onModel,
    reviewed,
  },
  'turn-3-deg-near-tail-mm': {
    value: 2.93,
    unit: 'mm',
    backing: computed('the same before a camera at 30 cm'),
    caveat: onModel,
    reviewed,
  },
  'turn-3-deg-near-height-mm': {
    value: 0.52,
    unit: 'mm',
    backing: computed('the same before a camera at 30 cm, heights of arch and tail'),
    caveat: onModel,
    reviewed,
  },
  'nose-off-like-turn-deg': {
    value: 4.6,
    unit: '°',
    backing: computed(
      'the turn that shows the nose base 2 mm off the middle of the eyes: arcsine of 2 over 24.7',
    ),
    caveat: onModel,
    reviewed,
  },
  'nod-up-tail-mm': {
    value: 5.6,
    unit: 'mm',
    backing: computed('chin up by 10 degrees: lower end of the tail below the lower front'),
    caveat: onModel,
    reviewed,
  },
  'nod-none-tail-mm': {
    value: 2.6,
    unit: 'mm',
    backing: computed('head level: lower end of the tail below the lower front'),
    caveat: onModel,
    reviewed,
  },
  'nod-down-tail-mm': {
    value: 0.5,
    unit: 'mm',
    backing: computed('chin down by 10 degrees: lower end of the tail above the lower front'),
    caveat: onModel,
    reviewed,
  },
  'brow-straight-mm': {
    value: 43.3,
    unit: 'mm',
    backing: computed('the model head’s upper edge, front to tail, across the face'),
    caveat: onModel,
    reviewed,
  },
  'brow-chord-mm': {
    value: 50.5,
    unit: 'mm',
    backing: computed('the same from end to end, as a caliper reads it'),
    caveat: onModel,
    reviewed,
  },
  'brow-along-skin-mm': {
    value: 53.1,
    unit: 'mm',
    backing: computed('the same along the skin, as a tape reads it'),
    caveat: onModel,
    reviewed,
  },
  'brow-from-30-cm-mm': {
    value: 40.7,
    unit: 'mm',
    backing: computed('the same across the face, seen by a camera at 30 cm'),
    caveat: onModel,
    reviewed,
  },
  'iris-scale-doubt-mm': {
    value: 3.2,
    unit: 'mm',
    backing: computed(
      '45 mm times twice the spread over the width of the iris',
      'iris-width-mm',
      'iris-width-spread-mm',
    ),
    reviewed,
  },
  'iris-scale-small-doubt-mm': {
    value: 0.1,
    unit: 'mm',
    backing: computed(
      '1.5 mm times twice the spread over the width of the iris',
      'iris-width-mm',
      'iris-width-spread-mm',
    ),
    reviewed,
  },
  'ask-if-mirrored': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice(
      'Front cameras may save a picture as a mirror shows it. Ask, or look for writing, a parting or a mark whose side is known.',
    ),
  },
  'consent-before-pictures': {
    value: 'practice',
    unit: '1',
    reviewed,
    backing: commonPractice(
      'The client agrees in writing before a picture is taken: what for, who sees it, how long it is kept.',
    ),
  },
} as const satisfies Readonly<Record<string, Fact | Practice>>;
