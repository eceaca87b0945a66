import { pictureRefusals } from '#words/photoDesk.ts';
import { render } from 'preact';
import { openPicture } from './openPicture.ts';
import { PhotoDesk } from './PhotoDesk.tsx';

let chosen = 0;

/**
 * Shows a chosen file in its room. Resolves to what is wrong with it, or to nothing; a refused file leaves
 * what is shown. Of two files chosen quickly the later counts.
 */
export async function showPhoto(file: Blob, room: Element): Promise<string> {
  const mine = ++chosen;
  const opened = await openPicture(file);
  if (mine !== chosen) {
    if (opened.ok) opened.picture.close();
    return '';
  }
  if (!opened.ok) return pictureRefusals[opened.reason];
  render(<PhotoDesk key={mine} picture={opened.picture} />, room);
  return '';
}
