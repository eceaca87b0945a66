import type { ColourQuestion, ColourRuleId } from '#lib/colour/rules.ts';
import type { Jurisdiction, Outcome } from '#lib/evidence/rule.ts';
import type { MappingQuestion, MappingRuleId } from '#lib/mapping/rules.ts';

/** What an outcome asks for. `none` is never "safe" or "all is well". */
export const outcomeWords = {
  refuse: 'Do not use it',
  physician: 'A physician first',
  wait: 'Wait',
  ask: 'Ask first',
  'measure-again': 'Measure again',
  'leave-out': 'Weigh it down, and say so',
  tell: 'Tell the client',
  'leave-as-is': 'Leave it as it is',
  none: 'No rule speaks',
} as const satisfies Readonly<Record<Outcome | 'none', string>>;

export const jurisdictionWords = {
  anywhere: 'Anywhere',
  england: 'England',
  'european-union': 'European Union',
  'united-states': 'United States',
} as const satisfies Readonly<Record<Jurisdiction, string>>;

/** The question in words, as a learner is asked it. */
export const mappingQuestionWords = {
  'midline-uses-brows': 'Was a brow used to find the midline?',
  'midline-marks': 'How many marks was the midline taken from?',
  'marks-not-trusted': 'How many marks disagree with the rest?',
  'level-reference-named': 'Did you say what counts as level?',
  'line-held-level': 'Were both ends of the line checked against something level?',
  'mapped-at-rest': 'Was the face at rest in the reading you map?',
  'mapped-upright': 'Was the client upright?',
  'mapped-on-normal-skin': 'Was the skin normal, neither numb nor swollen?',
  'brows-still-settling': 'May the brows still be moving after toxin?',
  'same-pose': 'Were both readings taken in the same pose?',
  'same-posture': 'Were both readings taken in the same posture?',
  'same-skin': 'Was the skin in the same state both times?',
  'eyes-closed-reading': 'Was there a reading with the eyes closed and the face relaxed?',
  'fronts-measured-from': 'Where was the midline taken for the fronts?',
  'thread-checked': 'Were the levels checked with a taut thread?',
  'front-anchor-named': 'Did you say above which mark the fronts start?',
  'tail-past-the-line': 'Does a tail end past the line from the nose wing over the outer eye corner?',
  'tail-tip-in-the-band': 'Does each tail tip lie between its front’s lower edge and its top?',
  'thickness-measured': 'Was the thickness measured straight across the brow or straight up?',
  'same-stations': 'Was the thickness compared at the same places of both brows?',
  'outline-told-bolder': 'Was the client told that the drawn outline looks bolder than the result?',
  'comparisons-counted': 'Did you count how many comparisons you make?',
  'pigment-ends': 'After the first pass: where does the pigment end, against the approved outline?',
  'skin-swollen-now': 'Is the skin swollen now?',
  'gap-mm': 'How large is the gap to the approved outline?',
  'own-pairs': 'How many pairs of your own readings is your error taken from?',
  band: 'What does the difference show?',
  'read-from': 'Was it read from the skin or from a photo?',
  'read-what': 'Was a height read or a width?',
  'photo-level-and-resting': 'Was the head level and the face at rest in the photo?',
  'nothing-under-a-part': 'Does a part of the outline have neither hair nor bone under it?',
  'skin-changed-or-new-loss':
    'Is the skin raised, scaly, itchy or lumpy, is there a mole, or was hair lost lately?',
  'arches-planned': 'Is there one arch for both sides, or one for each?',
  'arch-rule-named': 'Did you say which rule placed the arch?',
  'mirror-known': 'Do you know whether the picture is mirrored?',
  'approved-limits-written': 'Did she approve how far each mark may move, and is it written down?',
  'old-work-past-the-limits': 'Does old work stand outside what she approved?',
  'growth-told': 'Was she told how much the brow grows?',
  'front-and-tail-opposite': 'Do front and tail differ with opposite signs?',
  'camera-distance-cm': 'How many centimetres was the camera away?',
} as const satisfies Readonly<Record<MappingQuestion, string>>;

/** The title of a rule's card. */
export const mappingRuleTitles = {
  'brows-never-feed-the-midline': 'The brows never feed the midline',
  'take-the-midline-from-many-marks': 'Take the midline from many marks',
  'which-mark-not-to-trust': 'Say which mark you do not trust',
  'name-the-level-reference': 'Name what counts as level',
  'hold-the-line-level': 'Hold the line level before you read it',
  'compare-like-with-like': 'Compare like with like',
  'map-at-rest-and-upright': 'Map at rest and upright',
  'let-the-brows-settle': 'After toxin, let the brows settle',
  'measure-again-eyes-closed': 'Measure again, eyes closed',
  'fronts-equally-far': 'Fronts equally far, from the bridge',
  'name-the-front-anchor': 'Name the anchor of the front',
  'tail-inside-the-line': 'The tail ends inside its line, level with the front',
  'thickness-straight-across': 'Measure thickness straight across',
  'equal-thickness-both-brows': 'Equal thickness, place by place',
  'outline-looks-bolder': 'The drawn outline looks bolder',
  'taut-thread-levels': 'Check the levels with a taut thread',
  'real-or-not': 'Real, or not shown to be real',
  'add-here-or-stop': 'Add here, or stop',
  'swollen-do-not-chase': 'On swollen skin, do not chase small gaps',
  'twenty-pairs-of-your-own': 'Twenty pairs of your own',
  'who-would-see-it': 'Who would see it?',
  'not-shown-is-not-equal': 'Not shown is not equal',
  'change-nothing-is-an-answer': 'Change nothing is an answer',
  'from-a-photo-heights-only': 'From a photo, heights only',
  'nothing-under-it-nothing-drawn': 'Do not draw where there is nothing under it',
  'not-over-changed-skin': 'Not over lumps, scale, moles or new loss',
  'one-arch-for-both-sides': 'One arch for both sides',
  'arch-rules-are-starting-points': 'Arch rules are places to start',
  'ask-if-mirrored': 'Ask whether a picture is mirrored',
  'a-turn-fakes-widths': 'A turned head fakes widths',
  'near-cameras-shrink': 'Near cameras shorten the brow',
  'approved-limits-stand-above-cover': 'Approved limits stand above cover',
  'never-chase-cover': 'Never chase cover',
  'a-brow-grows-at-every-refresh': 'A covered brow grows at every refresh',
} as const satisfies Readonly<Record<MappingRuleId, string>>;

/** The line under a verdict when questions were not asked. */
export function unaskedText(count: number): string {
  if (count === 0) return 'Nothing is left to ask for these rules.';
  return count === 1
    ? 'One question was not asked. It can still change the verdict.'
    : `${count} questions were not asked. They can still change the verdict.`;
}

/** The questions of colour. */
export const colourQuestionWords = {
  'skin-read-untouched': 'Was the skin read before wiping, drawing or numbing?',
  'class-scheme-named': 'Is the scheme named beside the class of the skin?',
  'skin-colour-taken-from': 'Where was the colour of the skin taken from?',
  'photo-holds-grey-card': 'Does the photo hold a grey card in the same light?',
  'cover-nearest-difference': 'How far does the nearest recipe stay from the wanted colour?',
  'old-work-grey-blue': 'Is the old work grey-blue?',
  'mix-holds-brown': 'Does the mix hold a brown?',
  'widening-planned': 'Were the strokes planned for the width they will have once they have spread?',
  'bare-skin-once-widened': 'Will there be bare skin between the strokes once they have widened?',
  'cause-said-from-colour': 'Was a cause named from the healed colour alone?',
  'white-put-in-to-hide': 'Is white or skin colour put in to hide old work?',
  'old-work-pink-or-salmon': 'Is the old work pink or salmon?',
  'brown-as-dark-as-needed': 'Is the brown dark enough for the remnant, and not darker than needed?',
  'recipe-simplest-of-near': 'Is it the simplest of the recipes that come as near as the nearest?',
  'recipe-written-in-drops': 'Is the recipe written down in drops?',
  'undertone-and-overtone-asked':
    'Was the skin judged at a place with little sun as well as beside the brow?',
  'ink-label-whole':
    'Does the label give the use, a lot, the ingredients and a last day that has not passed?',
  'lot-and-date-written': 'Are lot and date of every bottle in the client’s record?',
  'read-under-one-lamp': 'Were both colours read under one lamp, and is it written down?',
} as const satisfies Readonly<Record<ColourQuestion, string>>;

/** The titles of the cards of colour. */
export const colourRuleTitles = {
  'read-the-skin-untouched': 'Read the skin untouched',
  'name-the-scheme': 'Name the scheme beside a class',
  'a-questionnaire-is-not-a-colour': 'A questionnaire is not a colour',
  'no-card-no-colour': 'No grey card, no colour from a photo',
  'lighten-first-when-cover-fails': 'Where cover fails, lighten first',
  'brown-with-orange-not-orange-alone': 'Brown with orange, not orange alone',
  'plan-for-the-wide-line': 'Plan for the wide line',
  'leave-bare-skin-between': 'Leave bare skin between strokes',
  'many-healings-look-alike': 'Many depths and doses heal alike',
  'white-hides-nothing': 'White and skin colour hide nothing for long',
  'old-red-heals-pink': 'Old red heals pink or salmon',
  'a-brown-dark-enough': 'A brown dark enough, and not darker',
  'choose-the-simplest-recipe': 'Choose the simplest recipe',
  'count-in-drops': 'Count recipes in drops',
  'undertone-and-overtone': 'Undertone and overtone both matter',
  'no-whole-label-no-use': 'No whole label, no use',
  'write-down-the-lot': 'Write down the lot',
  'one-named-lamp-every-time': 'One named lamp, every time',
} as const satisfies Readonly<Record<ColourRuleId, string>>;

/** Every question and every title, whatever the subject. */
export const questionWords = { ...mappingQuestionWords, ...colourQuestionWords } as const;
export const ruleTitles = { ...mappingRuleTitles, ...colourRuleTitles } as const;
