import type { ColourQuestion, ColourRuleId } from '#lib/colour/rules.ts';

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
