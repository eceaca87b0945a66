import type { MappingQuestion } from '#lib/mapping/rules.ts';
import type { picturesRules } from '#lib/mapping/rules/pictures.ts';

/** The titles of the cards. */
export const picturesRuleTitles = {
  'from-a-photo-heights-only': 'From a photo, heights only',
  'ask-if-mirrored': 'Ask whether a picture is mirrored',
  'a-turn-fakes-widths': 'A turned head fakes widths',
  'near-cameras-shrink': 'Near cameras shorten the brow',
} as const satisfies Readonly<Record<(typeof picturesRules)[number]['id'], string>>;

/** What these rules ask, as a learner is asked it. */
export const picturesQuestionWords = {
  'read-from': 'Was it read from the skin or from a photo?',
  'read-what': 'Was a height read or a width?',
  'photo-level-and-resting': 'Was the head level and the face at rest in the photo?',
  'mirror-known': 'Do you know whether the picture is mirrored?',
  'front-and-tail-opposite': 'Do front and tail differ with opposite signs?',
  'camera-distance-cm': 'How many centimetres was the camera away?',
} as const satisfies Readonly<Partial<Record<MappingQuestion, string>>>;
