import { useLayoutEffect, useRef } from 'preact/hooks';

/** What the arrow keys ask of a picture, in its own units. */
const keySteps = [0.1, 1] as const;

/**
 * Keys and buttons count from the value last asked for, also before that one has been read and drawn: quick
 * presses all count.
 * `state` is what is drawn now; once it changes while nothing is being read, it is what counts again.
 */
export function useAhead(state: unknown) {
  const asked = useRef<Readonly<Record<string, number>>>({});
  const beingRead = useRef(0);
  useLayoutEffect(() => {
    if (beingRead.current === 0) asked.current = {};
  }, [state]);
  return {
    /** `read` is over once the value has been read, or could not be. */
    ask: (name: string, value: number, read: Promise<void>) => {
      asked.current = { ...asked.current, [name]: value };
      beingRead.current++;
      void read.then(() => beingRead.current--);
    },
    /** The value to step from. */
    from: (name: string, drawn: number) => asked.current[name] ?? drawn,
    /** The step of an arrow key, with its sign, or nothing when the pointer moved the mark. */
    keyed: (byUnits: number) => {
      const size = keySteps.find((step) => Math.abs(Math.abs(byUnits) - step) < 1e-6);
      return size === undefined ? undefined : Math.sign(byUnits) * size;
    },
  };
}
