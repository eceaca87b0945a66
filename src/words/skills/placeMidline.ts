import { notFetched } from '../fetching.ts';
import { fixed } from '../number.ts';
import { practiceFaceLevels } from '../practiceFaces.ts';

/** Where a line crosses the two heights at which it is marked, on the ruler of the picture, mm. */
export type Ends = Readonly<{ browsMm: number; chinMm: number }>;
/** Placed minus true at both heights, mm; positive is too far to the client's left. */
export type Off = Ends;
export type PlaceMidlineSlip = 'followed-nose' | 'brow-fronts' | 'kept-vertical' | 'one-pair';
type BothEnds = Readonly<{ off: Off; browsAreRight: boolean; chinIsRight: boolean }>;
export type PlacedMark = BothEnds &
  Readonly<{ right: true; credit: 1 } | { right: false; credit: number; slipId?: PlaceMidlineSlip }>;

/**
 * What the sentences speak of. Lean: the top of the head towards the client's right is positive. Nose: its
 * base towards the client's left.
 */
export type PlacedOn = Readonly<{
  level: number;
  yours: Ends;
  exact: Ends;
  leanDeg: number;
  noseLeanMm: number;
  higherMm: number;
}>;

export const placeMidlineWords = {
  name: 'Place the midline',
  summary:
    'Stretch the thread down the middle of a drawn face. The nose, the brows and the picture’s edge may all mislead you.',
  question: 'Where does the midline run?',
  pictureLabel:
    'A drawn face on millimetre paper with a ruler above and below, and a thread between two pins',
  pins: { top: 'Top pin', foot: 'Foot pin' },
  across: { top: 'Across at the top', foot: 'Across at the foot' },
  arrows: 'Arrow keys move',
  level: 'Level',
  levels: practiceFaceLevels,
  face: 'Face number',
  faceHint: 'From 0 to 999. The same number is always the same face.',
  badFace: 'Face number: type a whole number from 0 to 999. Until then you see face 1.',
  badFaceTyped: 'Face number: type a whole number from 0 to 999.',
  badLevel: 'The address asks for a level that this page does not have. Choose one from the list.',
  show: 'Show this face',
  another: 'Another face',
  check: 'Check',
  marks: 'Show the marks (counts as a hint)',
  loadFailed: notFetched('The drawing'),
  how: 'How to find it',
  steps: [
    'Mark the pairs: inner eye corners, outer eye corners, pupils. Mark the points that stand alone: the glabella between the brows, and the chin.',
    'Read each pair on the ruler. Add its two numbers and halve them: that is the pair’s middle.',
    'Look for what disagrees. Nose wings and nose base that lie to one side are left out. Brows are left out always.',
    'Lay the thread through the middles that agree and through the chin. If the head leans, the thread leans with it.',
  ],
  noScript:
    'The thread is moved and checked in your browser, which needs JavaScript. You can still read this face on the ruler.',
} as const;

/** What a screen reader hears at a pin. */
export function pinWords(pin: 'top' | 'foot', xMm: number): string {
  return `${placeMidlineWords.pins[pin]}: across ${fixed(xMm)} millimetres. Left and right arrow keys move it.`;
}

/** A typed place that is not a number on the ruler. */
export function badAcross(pin: 'top' | 'foot'): string {
  return `${placeMidlineWords.across[pin]}: type one number between −60 and 60, such as 5.5 or 5,5.`;
}

/** What to do, and how exact it has to be. */
export function placeTask(toleranceMm: number): string {
  return `Stretch the thread down the middle of this face: one pin above the brows, one below the chin. Right within ${fixed(toleranceMm, 0)} mm at the brows and at the chin.`;
}
