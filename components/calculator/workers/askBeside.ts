type Waiting<R> = Readonly<{ resolve: (result: R) => void; reject: (reason: Error) => void }>;

/**
 * Asks a worker that answers each state with one result, in order. It is started at the first question and
 * stays for the next. Where it cannot start or fails, everybody who waits is rejected, and the next question
 * starts another.
 */
export function askBeside<S, R>(start: () => Worker): (state: S) => Promise<R> {
  let worker: Worker | undefined;
  let waiting: readonly Waiting<R>[] = [];
  const started = (): Worker => {
    const fresh = start();
    fresh.addEventListener('message', ({ data }: MessageEvent<R>) => {
      const [first, ...rest] = waiting;
      waiting = rest;
      first?.resolve(data);
    });
    fresh.addEventListener('error', () => {
      for (const { reject } of waiting) reject(new Error('The sum could not be worked out.'));
      waiting = [];
      worker = undefined;
    });
    return fresh;
  };
  return (state) => {
    const asked = (worker ??= started());
    return new Promise((resolve, reject) => {
      waiting = [...waiting, { resolve, reject }];
      asked.postMessage(state);
    });
  };
}
