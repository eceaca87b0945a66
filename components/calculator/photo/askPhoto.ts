import type { Asked, Told } from './tellPhoto.ts';

export type PhotoAsker = Readonly<{ ask: (asked: Asked) => void; stop: () => void }>;

/**
 * A reader of squares beside the page. Only the newest question is answered; `onFault` where the reader
 * cannot start: the next question starts another.
 */
export function photoAsker(onTold: (told: Told) => void, onFault: () => void): PhotoAsker {
  let worker: Worker | undefined;
  let newest = 0;
  const started = (): Worker => {
    const fresh = new Worker(new URL('./photoWorker.ts', import.meta.url), { type: 'module' });
    fresh.addEventListener(
      'message',
      ({ data: { turn, told } }: MessageEvent<Readonly<{ turn: number; told: Told }>>) => {
        if (turn === newest) onTold(told);
      },
    );
    fresh.addEventListener('error', () => {
      worker = undefined;
      onFault();
    });
    return fresh;
  };
  return {
    ask: (asked) => (worker ??= started()).postMessage({ turn: ++newest, asked }),
    stop: () => worker?.terminate(),
  };
}
