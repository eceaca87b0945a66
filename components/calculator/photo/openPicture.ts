import type { pictureRefusals } from '#words/photoDesk.ts';

export type Opened =
  | Readonly<{ ok: true; picture: ImageBitmap }>
  | Readonly<{ ok: false; reason: keyof typeof pictureRefusals }>;

const mostBytes = 40_000_000;
const mostDots = 80_000_000;
const leastSide = 40;

/**
 * Opens a file as a picture, in the colours of the web (sRGB). Nothing is sent, nothing is kept: the dots
 * live as long as the page shows them.
 */
export async function openPicture(file: Blob): Promise<Opened> {
  if (file.size === 0) return { ok: false, reason: 'empty' };
  if (file.size > mostBytes) return { ok: false, reason: 'too-large' };
  let picture: ImageBitmap;
  try {
    picture = await createImageBitmap(file);
  } catch {
    return { ok: false, reason: 'not-a-picture' };
  }
  const { width, height } = picture;
  if (width * height <= mostDots && Math.min(width, height) >= leastSide) return { ok: true, picture };
  picture.close();
  return { ok: false, reason: Math.min(width, height) < leastSide ? 'too-small' : 'too-many-dots' };
}
