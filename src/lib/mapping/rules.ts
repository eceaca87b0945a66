import type { Rule } from '../evidence/rule.ts';
import type { MappingFactId } from './facts.ts';
import type { MappingQuestion } from './questions.ts';
import { coverRules } from './plan/rules.ts';
import { chaseFromMm } from './again/chaseFrom.ts';

export { mappingQuestions, type MappingQuestion } from './questions.ts';

type MappingRule = Rule<MappingQuestion, MappingFactId>;

const anywhere = { jurisdiction: 'anywhere' } as const;

/** The rules of the midline thread. Ids are the addresses of their cards. */
export const mappingRules = [
  {
    id: 'brows-never-feed-the-midline', when: { question: 'midline-uses-brows', is: true }, outcome: 'refuse',
    facts: ['fronts-uneven', 'front-shift-men-mm', 'front-shift-women-mm', 'front-shift-with-nose', 'front-shift-second-study-mm'], disputedBy: [], ...anywhere,
  },
  {
    id: 'take-the-midline-from-many-marks', when: { question: 'midline-marks', below: 4 }, outcome: 'measure-again',
    facts: ['nose-off-midline-mm', 'biweight-constant'], disputedBy: [], ...anywhere,
  },
  {
    id: 'which-mark-not-to-trust', when: { question: 'marks-not-trusted', atLeast: 1 }, outcome: 'leave-out',
    facts: ['biweight-constant', 'trusted-from-weight', 'scatter-floor-mm'], disputedBy: [], ...anywhere,
  },
  {
    id: 'name-the-level-reference', when: { question: 'level-reference-named', is: false }, outcome: 'ask',
    facts: ['tilt-1-deg-fakes-mm', 'tilt-2-deg-fakes-mm', 'arches-apart-mm', 'head-tilt-repeat-deg'], disputedBy: ['head-tilt-usual-deg'], ...anywhere,
  },
  {
    id: 'hold-the-line-level', when: { question: 'line-held-level', is: false }, outcome: 'measure-again',
    facts: ['tilt-1-deg-fakes-mm', 'tilt-3-deg-fakes-mm', 'arches-apart-mm', 'thread-length-mm', 'head-tilt-repeat-deg', 'tilt-seen-deg'], disputedBy: [], ...anywhere,
  },
  {
    id: 'compare-like-with-like',
    when: { any: [{ question: 'same-pose', is: false }, { question: 'same-posture', is: false }, { question: 'same-skin', is: false }] },
    outcome: 'refuse', facts: ['upright-to-draw', 'side-marks-moved-lying', 'lying-faces-photographed'], disputedBy: [], ...anywhere,
  },
  {
    id: 'map-at-rest-and-upright',
    when: { any: [{ question: 'mapped-at-rest', is: false }, { question: 'mapped-upright', is: false }, { question: 'mapped-on-normal-skin', is: false }] },
    outcome: 'measure-again',
    facts: ['map-at-rest', 'upright-to-draw', 'brow-raise-least-mm', 'brow-raise-most-mm', 'brow-rise-in-space-mm', 'brow-rise-in-space-people', 'eye-opening-upright-mm', 'eye-opening-lying-mm'],
    disputedBy: ['lying-faces-photographed'], ...anywhere,
  },
  {
    id: 'let-the-brows-settle', when: { question: 'brows-still-settling', is: true }, outcome: 'wait',
    facts: ['settle-after-toxin', 'brow-lower-after-toxin-weeks', 'brow-highest-after-toxin-weeks', 'brow-followed-after-toxin-weeks', 'brow-still-lower-months'], disputedBy: [], ...anywhere,
  },
  {
    id: 'measure-again-eyes-closed', when: { question: 'eyes-closed-reading', is: false }, outcome: 'measure-again',
    facts: ['measure-again-eyes-closed'], disputedBy: [], ...anywhere,
  },
  {
    id: 'fronts-equally-far', when: { not: { question: 'fronts-measured-from', is: 'bridge' } }, outcome: 'measure-again',
    facts: ['fronts-equally-far', 'nose-off-midline-mm', 'client-sees-in-mirror'], disputedBy: ['front-shift-with-nose'], ...anywhere,
  },
  {
    id: 'name-the-front-anchor', when: { question: 'front-anchor-named', is: false }, outcome: 'ask',
    facts: ['front-above-an-anchor', 'nose-wider-men', 'nose-wider-women', 'nose-as-wide-as-gap', 'wing-beyond-corner-first-mm', 'wing-beyond-corner-second-mm'],
    disputedBy: ['nose-as-wide-kenya-men', 'nose-as-wide-kenya-women', 'nose-wider-nigeria'], ...anywhere,
  },
  {
    id: 'tail-inside-the-line',
    when: { any: [{ question: 'tail-past-the-line', is: true }, { question: 'tail-tip-in-the-band', is: false }] },
    outcome: 'tell', facts: ['tail-inside-the-line', 'tail-tip-in-the-band', 'lengths-equal'], disputedBy: ['tail-falls-mm'], ...anywhere,
  },
  {
    id: 'thickness-straight-across', when: { question: 'thickness-measured', is: 'straight-up' }, outcome: 'measure-again',
    facts: ['straight-up-too-thick-20-deg', 'straight-up-too-thick-30-deg'], disputedBy: ['thickness-medium-of-eye'], ...anywhere,
  },
  {
    id: 'equal-thickness-both-brows', when: { question: 'same-stations', is: false }, outcome: 'measure-again',
    facts: ['thickness-equal', 'women-brows-measured', 'brow-sides-go-together'],
    disputedBy: ['own-thickness-raters'], ...anywhere,
  },
  {
    id: 'outline-looks-bolder', when: { question: 'outline-told-bolder', is: false }, outcome: 'tell',
    facts: ['outline-looks-bolder', 'client-sees-in-mirror', 'thickness-women-asked', 'thickness-medium-chosen', 'thickness-thin-of-eye', 'thickness-medium-of-eye', 'thickness-thick-of-eye'], disputedBy: [], ...anywhere,
  },
  {
    id: 'taut-thread-levels', when: { question: 'thread-checked', is: false }, outcome: 'measure-again',
    facts: ['taut-thread-levels', 'one-side-lower', 'right-lower', 'thread-half-width-mm'], disputedBy: ['tilt-1-deg-fakes-mm'], ...anywhere,
  },
  {
    id: 'real-or-not', when: { question: 'comparisons-counted', is: false }, outcome: 'ask',
    facts: ['factor-95', 'ten-comparisons', 'false-alarm-of-ten', 'factor-of-ten', 'family-false-alarm', 'repeat-factor', 'caliper-error-near-eye-mm'],
    disputedBy: ['example-error-mm', 'photo-error-near-eye-mm'], ...anywhere,
  },
  {
    id: 'twenty-pairs-of-your-own', when: { question: 'own-pairs', below: 20 }, outcome: 'measure-again',
    facts: ['pairs-for-own-error', 'own-error-up-to', 'own-error-down-to', 't-of-two-readings', 't-of-three-readings', 'unmarked-disagreement-mm', 'marked-disagreement-mm'],
    disputedBy: ['example-error-mm'], ...anywhere,
  },
  {
    id: 'add-here-or-stop', when: { not: { question: 'pigment-ends', is: 'inside' } }, outcome: 'leave-as-is',
    facts: ['add-or-stop', 'client-sees-in-mirror', 'upright-to-draw', 'factor-95'], disputedBy: [], ...anywhere,
  },
  {
    id: 'swollen-do-not-chase', when: { all: [{ question: 'skin-swollen-now', is: true }, { question: 'gap-mm', below: chaseFromMm }] }, outcome: 'wait',
    facts: ['swollen-chase-from-mm', 'skin-before-numbing-mm', 'skin-after-numbing-mm', 'pale-after-numbing'], disputedBy: [], ...anywhere,
  },
  {
    id: 'who-would-see-it', when: { question: 'band', is: 'most-see' }, outcome: 'tell',
    facts: ['seen-at-1-mm', 'seen-at-6-mm', 'few-see-mm', 'almost-all-see-mm', 'most-see-mm', 'viewers-asked'], disputedBy: ['own-brows-seen-mm'], ...anywhere,
  },
  {
    id: 'not-shown-is-not-equal', when: { question: 'band', is: 'not-shown' }, outcome: 'tell',
    facts: ['unequal-at-front-mm', 'unequal-at-middle-mm', 'unequal-at-tail-mm', 'over-1-mm-somewhere', 'brows-unequal'], disputedBy: [], ...anywhere,
  },
  {
    id: 'change-nothing-is-an-answer', when: { any: [{ question: 'band', is: 'not-shown' }, { question: 'band', is: 'few-see' }, { question: 'band', is: 'some-see' }] }, outcome: 'leave-as-is',
    facts: ['brows-unequal', 'over-1-mm-somewhere', 'few-see-mm'], disputedBy: ['own-brows-seen-mm'], ...anywhere,
  },
  {
    id: 'from-a-photo-heights-only',
    when: {
      all: [
        { question: 'read-from', is: 'photo' },
        { any: [{ question: 'read-what', is: 'width' }, { question: 'photo-level-and-resting', is: false }] },
      ],
    },
    outcome: 'refuse',
    facts: ['photo-measures-tried', 'photo-measures-reliable', 'second-photo-mm', 'same-photo-again-mm', 'photo-error-two-people-mm', 'iris-width-mm', 'iris-width-second-study-mm'],
    disputedBy: ['photo-error-near-eye-mm'], ...anywhere,
  },
  {
    id: 'nothing-under-it-nothing-drawn', when: { question: 'nothing-under-a-part', is: true }, outcome: 'refuse',
    facts: ['shape-sits-on-something', 'off-bone-moves', 'follow-the-cowlick', 'tail-falls-mm'], disputedBy: ['brow-against-rim-people', 'outer-end-groups'], ...anywhere,
  },
  {
    id: 'not-over-changed-skin', when: { question: 'skin-changed-or-new-loss', is: true }, outcome: 'physician',
    facts: ['not-over-changed-skin', 'brow-loss-comes-first'], disputedBy: [], ...anywhere,
  },
  {
    id: 'one-arch-for-both-sides', when: { question: 'arches-planned', is: 'two' }, outcome: 'refuse',
    facts: ['one-arch-for-both', 'example-error-mm'], disputedBy: ['most-see-mm'], ...anywhere,
  },
  {
    id: 'arch-rules-are-starting-points', when: { question: 'arch-rule-named', is: false }, outcome: 'ask',
    facts: ['arch-women-of-eye-width', 'arch-women-spread', 'arch-two-thirds', 'arch-rules-artists', 'arch-rules-faces', 'arch-rules-p-value', 'arch-by-golden-section', 'golden-point-moves-mm'],
    disputedBy: ['arch-four-places-raters', 'arch-near-outer-corner-people'], ...anywhere,
  },
  {
    id: 'ask-if-mirrored', when: { all: [{ question: 'read-from', is: 'photo' }, { question: 'mirror-known', is: false }] }, outcome: 'ask',
    facts: ['ask-if-mirrored', 'consent-before-pictures'], disputedBy: [], ...anywhere,
  },
  {
    id: 'a-turn-fakes-widths', when: { all: [{ question: 'read-from', is: 'photo' }, { question: 'front-and-tail-opposite', is: true }] }, outcome: 'refuse',
    facts: ['turn-3-deg-tail-mm', 'turn-3-deg-front-mm', 'turn-3-deg-near-tail-mm', 'nose-off-like-turn-deg'], disputedBy: ['nose-off-midline-mm'], ...anywhere,
  },
  {
    id: 'near-cameras-shrink', when: { all: [{ question: 'read-from', is: 'photo' }, { question: 'camera-distance-cm', below: 150 }] }, outcome: 'measure-again',
    facts: ['brow-straight-mm', 'brow-from-30-cm-mm', 'near-midface-taller', 'nearest-midface-taller', 'selfie-nose-longer', 'selfie-nose-longer-farther', 'near-nose-base-wider', 'near-nose-tip-wider'],
    disputedBy: ['brow-chord-mm', 'brow-along-skin-mm'], ...anywhere,
  },
  ...coverRules,
] as const satisfies readonly MappingRule[];

export type MappingRuleId = (typeof mappingRules)[number]['id'];
