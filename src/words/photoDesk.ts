import { readingValues } from '#lib/colour/numbers/reading.ts';
import { notFetched } from './fetching.ts';
import { fixed } from './number.ts';

/** Everything the photo desk is labelled with. */
export const photoWords = {
  choose: 'Choose a picture',
  other: 'Choose another picture',
  private: 'The picture stays on this device. It is not stored, and it is gone when you leave the page.',
  notReady: notFetched('What reads pictures'),
  tap: 'A tap points at',
  card: 'Grey card',
  skin: 'Skin beside the brow',
  across: 'Across',
  down: 'Down',
  side: 'Size of the squares',
  reflects: 'The card throws back',
  reflectsHint: `It stands on the card. The usual one: ${fixed(100 * readingValues.usualCard, 0)}\u00a0%.`,
  hint: 'Choose what a tap points at, then tap the picture. Or go to a square with the Tab key: arrow keys move it, with Shift in larger steps, Enter leaves it where it is. Or type its place.',
} as const;

/** What stands above the photo desk. Apart from its labels: the browser does not load it. */
export const ownPhotoWords = {
  title: 'Your own photo, with a grey card',
  how: 'Lay a grey card beside the brow, in the same light and turned the same way. Photograph both, without flash and before anything touches the skin. Then choose the picture and point at the card and at the skin. Without a card no colour is read.',
} as const;

/** What was set beside the picture, for paper: there the fields are left out. */
export function photoOnPaper(reflects: number, size: number): string {
  return `${photoWords.reflects} ${reflects} %. ${photoWords.side}: ${size} % of the picture’s shorter side. A square with a broken edge was not pointed at.`;
}

/** Why a file was not opened as a picture. */
export const pictureRefusals = {
  empty: 'This file is empty. Choose another.',
  'too-large': 'This file is larger than 40 MB. Save the picture smaller, and choose it again.',
  'not-a-picture':
    'This file is not a picture that this browser can open. Save it as JPEG or PNG, and choose it again.',
  'too-many-dots': 'This picture has more than 80 million dots. Save it smaller, and choose it again.',
  'too-small': 'This picture is too small: its shorter side needs at least 40 dots.',
} as const;

/** "Grey card: 25.0 % across, 50.0 % down." for a screen reader. */
export function squareLabel(
  name: string,
  { x, y }: Readonly<{ x: number; y: number }>,
  isPlaced: boolean,
): string {
  return `${name}${isPlaced ? '' : ', not pointed at yet'}: ${fixed(x)} % across, ${fixed(y)} % down. Arrow keys move it.`;
}
