import { type Asked, tellPhoto } from './tellPhoto.ts';

/** Reads squares of dots beside the page: each question is answered in its turn, with its number. */
addEventListener(
  'message',
  ({ data: { turn, asked } }: MessageEvent<Readonly<{ turn: number; asked: Asked }>>) =>
    postMessage({ turn, told: tellPhoto(asked) }),
);
