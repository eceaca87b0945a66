import { useEffect, useRef, useState } from 'preact/hooks';

/**
 * The result of a heavy sum, and where it stands: `fresh` belongs to the state shown, `late` is being worked
 * out, `missing` could not be fetched.
 */
export type Later<R> = Readonly<{ result: R; is: 'fresh' | 'late' | 'missing' }>;

/**
 * A sum whose code is fetched at the first change. Until then the result made at build stands, so the first
 * render equals the server's. Answers come in the order of the states; an older one never replaces a newer.
 * A state that was overtaken may be answered with nothing.
 */
export function useLater<S, R>(
  state: S,
  start: R,
  load: () => Promise<(state: S) => R | Promise<R | undefined>>,
): Later<R> {
  const [later, setLater] = useState<Later<R>>({ result: start, is: 'fresh' });
  const first = useRef(state);
  const asked = useRef(0);
  useEffect(() => {
    if (state === first.current) {
      setLater((before) =>
        before.is === 'fresh' && before.result === start ? before : { result: start, is: 'fresh' },
      );
      return;
    }
    const mine = ++asked.current;
    setLater((before) => ({ ...before, is: 'late' }));
    // Of quick changes only the last is worked out.
    load()
      .then((solve) => (mine === asked.current ? solve(state) : undefined))
      .then(
        (result) => result !== undefined && mine === asked.current && setLater({ result, is: 'fresh' }),
        () => mine === asked.current && setLater((before) => ({ ...before, is: 'missing' })),
      );
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- `load` always does the same.
  }, [state]);
  return later;
}
