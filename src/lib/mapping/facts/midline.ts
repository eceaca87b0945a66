import { assumed, computed, published } from '../../evidence/backing.ts';
import type { Fact } from '../../evidence/fact.ts';
import { spreadFloorMm, trustedFromWeight, tukeyConstant } from '../midline/robustMidline.ts';
import { mappingValues } from '../numbers/values.ts';

const reviewed = '2026-11-25';

/** Leaning noses, fronts that follow them, and what a tilted head fakes. */
export const midlineFacts = {
  'fronts-uneven': {
    value: 96,
    unit: '%',
    backing: published(
      'katira-2014',
      'abstract, results',
      '96 patients had measurable eyebrow asymmetry, including 96 percent of men and 96 percent of women',
    ),
    reviewed,
    caveat: '100 people asking for nose surgery; every one had a nose off the midline at some level.',
  },
  'front-shift-men-mm': {
    value: 1.8,
    unit: 'mm',
    backing: published(
      'katira-2014',
      'abstract, results',
      'Mean eyebrow shift distance for male patients (1.8 mm) and female patients (1.3 mm)',
    ),
    reviewed,
    caveat: '27 men asking for nose surgery, life-size photographs.',
  },
  'front-shift-women-mm': {
    value: 1.3,
    unit: 'mm',
    backing: published(
      'katira-2014',
      'abstract, results',
      'Mean eyebrow shift distance for male patients (1.8 mm) and female patients (1.3 mm)',
    ),
    range: [1.3, 1.4],
    reviewed,
    caveat: '73 women asking for nose surgery; the meeting abstract of the same work prints 1.4.',
  },
  'front-shift-with-nose': {
    value: 71.2,
    unit: '%',
    backing: published(
      'gultekin-2020',
      'abstract, results',
      '67 (71.2%) had ipsilateral eyebrow shift with external nasal deviation',
    ),
    reviewed,
    caveat: '94 women asking for nose surgery.',
  },
  'front-shift-second-study-mm': {
    value: 1.18,
    unit: 'mm',
    backing: published('gultekin-2020', 'abstract, results', 'preoperative eyebrow shift was 1.18 ± 1.06 mm'),
    reviewed,
    caveat: '94 women asking for nose surgery; measured from the middle of the inner corners.',
  },
  'nose-off-midline-mm': {
    value: 1.81,
    unit: 'mm',
    backing: published(
      'gultekin-2020',
      'abstract, results',
      'preoperative external nasal deviation amount was 1.81 ± 1.21 mm',
    ),
    reviewed,
    caveat: 'Women asking for nose surgery: more than in the street.',
  },
  'nose-off-midline-spread-mm': {
    value: 1.21,
    unit: 'mm',
    backing: published(
      'gultekin-2020',
      'abstract, results',
      'preoperative external nasal deviation amount was 1.81 ± 1.21 mm',
    ),
    reviewed,
  },
  'head-tilt-repeat-deg': {
    value: 1.15,
    unit: '°',
    backing: published(
      'frontal-head-position',
      'abstract',
      'The reproducibility of the head position with regard to the craniovertical angle was 1.15 degrees',
    ),
    reviewed,
    caveat: '22 dental students holding the head upright, twice, one week apart.',
  },
  'head-tilt-usual-deg': {
    value: 5,
    unit: '°',
    backing: published(
      'frontal-head-position',
      'abstract',
      'Head position varied in the range of +/- 5 degrees with regard to the vertical.',
    ),
    reviewed,
    caveat: 'Healthy students standing as they usually stand.',
  },
  'trusted-from-weight': {
    value: trustedFromWeight,
    unit: '1',
    backing: assumed('A mark that counts for less than a quarter is called not trusted.'),
    range: [0.1, 0.5],
    reviewed,
  },
  'scatter-floor-mm': {
    value: spreadFloorMm,
    unit: 'mm',
    backing: assumed(
      'Marks are never taken to scatter less than this, so that a fair mark is not thrown out by luck.',
    ),
    range: [0.2, 1],
    reviewed,
  },
  'biweight-constant': {
    value: tukeyConstant,
    unit: '1',
    backing: published(
      'statsmodels-biweight',
      'parameters',
      "The tuning constant for Tukey's Biweight. The default value is c = 4.685.",
    ),
    reviewed,
    caveat: 'How many times the usual scatter a mark may lie off before it counts for nothing.',
  },
  'arches-apart-mm': {
    value: mappingValues['arches-apart-mm'],
    unit: 'mm',
    backing: assumed('A round distance from arch to arch, used to say what a tilt does.'),
    range: [70, 95],
    reviewed,
  },
  'tilt-seen-deg': {
    value: 2.31,
    unit: '°',
    backing: published(
      'eye-canting-2015',
      'abstract, results',
      'The degree of recognition for eye-canting and nose deviation was 2.31 and 2.92, respectively.',
    ),
    range: [2.13, 2.31],
    reviewed,
    caveat:
      '160 people, four groups of 40, looking at changed pictures; a tilt to one side was seen a little earlier.',
  },
  'thread-length-mm': {
    value: mappingValues['thread-length-mm'],
    unit: 'mm',
    backing: assumed('A round length of thread from hand to hand across a face.'),
    range: [120, 250],
    reviewed,
  },
  'tilt-1-deg-fakes-mm': {
    value: 1.43,
    unit: 'mm',
    backing: computed('82 mm times the sine of 1 degree', 'arches-apart-mm'),
    reviewed,
  },
  'tilt-2-deg-fakes-mm': {
    value: 2.86,
    unit: 'mm',
    backing: computed('82 mm times the sine of 2 degrees', 'arches-apart-mm'),
    reviewed,
  },
  'tilt-3-deg-fakes-mm': {
    value: 4.29,
    unit: 'mm',
    backing: computed('82 mm times the sine of 3 degrees', 'arches-apart-mm'),
    reviewed,
  },
  'placing-tolerance-mm': {
    value: mappingValues['placing-tolerance-mm'],
    unit: 'mm',
    backing: assumed(
      'Placing a point by hand is marked by about the smallest real difference, not by 0.1 mm.',
    ),
    range: [0.6, 1.5],
    reviewed,
  },
} as const satisfies Readonly<Record<string, Fact>>;
