import type { Asked, Told } from './tellPhoto.ts';

export type PhotoAsker = Readonly<{ ask: (asked: Asked) => void; stop: () => void }>;

/** A reader of squares beside the page. Only the newest question is answered; `onFault` where the reader cannot start. */
export function photoAsker(onTold: (told: Told) => void, onFault: () => void): PhotoAsker {
  const worker = new Worker(new URL('./photoWorker.ts', import.meta.url), { type: 'module' });
  let newest = 0;
  worker.addEventListener('message', ({ data: { turn, told } }: MessageEvent<Readonly<{ turn: number; told: Told }>>) => {
    if (turn === newest) onTold(told);
  });
  worker.addEventListener('error', onFault);
  return { ask: (asked) => worker.postMessage({ turn: ++newest, asked }), stop: () => worker.terminate() };
}
