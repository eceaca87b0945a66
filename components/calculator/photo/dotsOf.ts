/** A place in a picture, per cent of its width and height from the top left. */
export type Place = Readonly<{ x: number; y: number }>;
/**
 * A square of a picture: its dots (red, green, blue, opacity), dots along an edge, how many of the picture's
 * own dots one stands for.
 */
export type Square = Readonly<{ dots: Uint8ClampedArray; side: number; step: number; middle: Place }>;

const mostSide = 256;
const leastSide = 8;

/** How many dots of the picture a square's edge has. `share`: per cent of the picture's shorter side. */
export function edgeDots({ width, height }: ImageBitmap, share: number): number {
  return Math.max(leastSide, Math.round((share / 100) * Math.min(width, height)));
}

/**
 * The dots of a square round a place, held inside the picture; every few dots of a large one, never mixed.
 * `middle` comes back in dots.
 */
export function squareOf(picture: ImageBitmap, { x, y }: Place, edge: number): Square | undefined {
  const side = Math.min(edge, mostSide);
  const pen = Object.assign(document.createElement('canvas'), { width: side, height: side }).getContext(
    '2d',
    { willReadFrequently: true, alpha: false },
  );
  if (!pen) return undefined;
  pen.imageSmoothingEnabled = false;
  const from = (percent: number, whole: number) =>
    Math.min(whole - edge, Math.max(0, Math.round((percent / 100) * whole - edge / 2)));
  const [left, top] = [from(x, picture.width), from(y, picture.height)];
  pen.drawImage(picture, left, top, edge, edge, 0, 0, side, side);
  return {
    dots: pen.getImageData(0, 0, side, side).data,
    side,
    step: edge / side,
    middle: { x: left + edge / 2, y: top + edge / 2 },
  };
}
