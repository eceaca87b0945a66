import type { WhyItHealed } from '#calculators/whyItHealed.ts';
import type { WhyItHealedState } from '#calculators/whyItHealedFields.ts';

type Waiting = Readonly<{ resolve: (result: WhyItHealed) => void; reject: (reason: Error) => void }>;
let worker: Worker | undefined;
let waiting: readonly Waiting[] = [];

function started(): Worker {
  const fresh = new Worker(new URL('./whyWorker.ts', import.meta.url), { type: 'module' });
  fresh.addEventListener('message', ({ data }: MessageEvent<WhyItHealed>) => {
    const [first, ...rest] = waiting;
    waiting = rest;
    first?.resolve(data);
  });
  // Whatever went wrong, nobody waits on, and the next question starts another worker.
  fresh.addEventListener('error', () => {
    for (const { reject } of waiting) reject(new Error('The map could not be worked out.'));
    waiting = [];
    worker = undefined;
  });
  return fresh;
}

/** The map of one state, worked out beside the page. The worker stays for the next question and answers in order. Rejected where it cannot start. */
export function askWhyWorker(state: WhyItHealedState): Promise<WhyItHealed> {
  const asked = (worker ??= started());
  return new Promise((resolve, reject) => {
    waiting = [...waiting, { resolve, reject }];
    asked.postMessage(state);
  });
}
