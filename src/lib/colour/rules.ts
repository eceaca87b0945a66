import type { Rule } from '../evidence/rule.ts';
import type { ColourFactId } from './facts.ts';
import { modelValues } from './numbers/model.ts';

/** What the rules of colour ask. Answers: yes/no, a number, or one of the words given. */
export const colourQuestions = [
  'skin-read-untouched',
  'class-scheme-named',
  'skin-colour-taken-from',
  'photo-holds-grey-card',
  'cover-nearest-difference',
  'old-work-grey-blue',
  'mix-holds-brown',
  'widening-planned',
  'bare-skin-once-widened',
  'cause-said-from-colour',
  'white-put-in-to-hide',
  'old-work-pink-or-salmon',
  'brown-as-dark-as-needed',
  'recipe-written-in-drops',
  'undertone-and-overtone-asked',
  'recipe-simplest-of-near',
  'ink-label-whole',
  'lot-and-date-written',
  'read-under-one-lamp',
] as const;
export type ColourQuestion = (typeof colourQuestions)[number];

const anywhere = { jurisdiction: 'anywhere' } as const;

/** The rules of colour. Ids are the addresses of their cards. */
export const colourRules = [
  {
    id: 'read-the-skin-untouched',
    when: { question: 'skin-read-untouched', is: false },
    outcome: 'measure-again',
    facts: ['read-skin-untouched', 'numbing-blanches', 'blanching-gone-hours'],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'name-the-scheme',
    when: { question: 'class-scheme-named', is: false },
    outcome: 'ask',
    facts: ['ita-light-above-deg', 'ita-intermediate-above-deg'],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'a-questionnaire-is-not-a-colour',
    when: { question: 'skin-colour-taken-from', is: 'sun-questions' },
    outcome: 'measure-again',
    facts: ['types-not-classified', 'types-asked', 'type-looks-people'],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'no-card-no-colour',
    when: {
      all: [
        { question: 'skin-colour-taken-from', is: 'photo' },
        { question: 'photo-holds-grey-card', is: false },
      ],
    },
    outcome: 'refuse',
    facts: ['camera-difference-taken-away', 'camera-doubt'],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'lighten-first-when-cover-fails',
    when: { question: 'cover-nearest-difference', atLeast: modelValues.reachedBelow },
    outcome: 'refuse',
    facts: ['cover-counts-below', 'laser-lightened', 'laser-tattoos-biopsied', 'laser-darkened'],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'brown-with-orange-not-orange-alone',
    when: {
      all: [
        { question: 'old-work-grey-blue', is: true },
        { question: 'mix-holds-brown', is: false },
      ],
    },
    outcome: 'ask',
    facts: ['brown-with-orange'],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'plan-for-the-wide-line',
    when: { question: 'widening-planned', is: false },
    outcome: 'tell',
    facts: ['lines-widen', 'stroke-spread-mm', 'fine-detail-lost-years'],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'leave-bare-skin-between',
    when: { question: 'bare-skin-once-widened', is: false },
    outcome: 'leave-as-is',
    facts: ['leave-bare-skin', 'lines-widen'],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'many-healings-look-alike',
    when: { question: 'cause-said-from-colour', is: true },
    outcome: 'refuse',
    facts: [
      'model-depth-mm',
      'one-reading-doubt',
      'pigment-put-in-least',
      'pigment-put-in-most',
      'losses-looked-at',
    ],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'white-hides-nothing',
    when: { question: 'white-put-in-to-hide', is: true },
    outcome: 'refuse',
    facts: ['white-hides-for-a-while', 'laser-darkened', 'laser-tattoos-biopsied'],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'old-red-heals-pink',
    when: { question: 'old-work-pink-or-salmon', is: true },
    outcome: 'tell',
    facts: ['old-red-heals-pink'],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'a-brown-dark-enough',
    when: {
      all: [
        { question: 'old-work-pink-or-salmon', is: true },
        { question: 'brown-as-dark-as-needed', is: false },
      ],
    },
    outcome: 'ask',
    facts: ['remnant-brown-dark-enough', 'cover-counts-below'],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'count-in-drops',
    when: { question: 'recipe-written-in-drops', is: false },
    outcome: 'ask',
    facts: ['recipes-in-drops'],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'choose-the-simplest-recipe',
    when: { question: 'recipe-simplest-of-near', is: false },
    outcome: 'ask',
    facts: ['recipes-in-drops', 'cover-counts-below'],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'undertone-and-overtone',
    when: { question: 'undertone-and-overtone-asked', is: false },
    outcome: 'measure-again',
    facts: ['overtone-and-undertone', 'sun-two-weeks-apart'],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'no-whole-label-no-use',
    when: { question: 'ink-label-whole', is: false },
    outcome: 'refuse',
    facts: ['label-before-opening', 'label-names-the-batch', 'label-inks-wrong', 'label-inks-looked-at'],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'write-down-the-lot',
    when: { question: 'lot-and-date-written', is: false },
    outcome: 'ask',
    facts: ['lot-in-the-record', 'pigments-recalled-by-lot'],
    disputedBy: [],
    ...anywhere,
  },
  {
    id: 'one-named-lamp-every-time',
    when: { question: 'read-under-one-lamp', is: false },
    outcome: 'measure-again',
    facts: ['tungsten-kelvin', 'tungsten-adds-to-skin', 'judging-light-least-lx', 'judging-light-most-lx'],
    disputedBy: [],
    ...anywhere,
  },
] as const satisfies readonly Rule<ColourQuestion, ColourFactId>[];

export type ColourRuleId = (typeof colourRules)[number]['id'];
