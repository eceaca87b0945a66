import type { poseFacts, poseHabits } from '#lib/mapping/facts/poses.ts';

/** What each fact about poses and how brows move is, in a few plain words. */
export const posesFactNames = {
  'brow-raise-least-mm': 'How far a brow can be raised, least of three age groups',
  'brow-raise-most-mm': 'How far a brow can be raised, most of three age groups',
  'brow-raise-people': 'People whose raised brows were measured',
  'brow-rise-in-space-mm': 'How far brows rise in space',
  'brow-rise-in-space-people': 'Astronauts whose portraits were measured',
  'brow-rise-weightless-mm': 'How far brows rise in a weightless flight',
  'eye-opening-upright-mm': 'Opening of the eye, upright',
  'eye-opening-lying-mm': 'Opening of the eye, lying on the back',
  'side-marks-moved-lying': 'Side marks of a face that move with the position of the body',
  'lying-faces-photographed': 'Women photographed sitting and lying',
  'brow-lower-after-toxin-weeks': 'After toxin in forehead and frown: brows lower',
  'brow-highest-after-toxin-weeks': 'After toxin in the frown: middle of the brows highest',
  'brow-followed-after-toxin-weeks': 'Brows followed after toxin for',
  'brow-still-lower-months': 'After toxin in forehead and frown: still a little lower',
  'map-at-rest': 'Map at rest',
  'settle-after-toxin': 'Map when brows have settled after toxin',
} as const satisfies Readonly<Record<keyof typeof poseFacts | keyof typeof poseHabits, string>>;
