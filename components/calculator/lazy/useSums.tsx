import type { Calculator, State } from '#calculators/spec.ts';
import type { VNode } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { useKept } from './useKept.ts';

type Fields<S extends State> = Pick<Calculator<S, unknown>, 'id' | 'fields'>;
type Sums<S extends State, R> = (state: S) => R;

/** Asks for the sums once the state is no longer the first one, and keeps it where they do not come. */
function AtFirstChange<S extends State>({
  fields,
  state,
  ask,
  isMissing,
}: Readonly<{ fields: Fields<S>; state: S; ask: () => void; isMissing: boolean }>) {
  useKept({ calculator: fields, state }, isMissing);
  const first = useRef(state);
  useEffect(() => {
    if (state !== first.current) ask();
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- `ask` always does the same.
  }, [state]);
  return null;
}

/**
 * A calculator whose sums are fetched at the first change. Until they are here it shows `start`, made at build;
 * from then on it answers at once.
 */
export function useSums<S extends State, R>(fields: Fields<S>, start: R, load: () => Promise<Sums<S, R>>) {
  const sums = useRef<Sums<S, R>>();
  const [is, setIs] = useState<'first' | 'asked' | 'here' | 'missing'>('first');
  const [calculator] = useState<Calculator<S, R>>(() => ({
    ...fields,
    solve: (state) => sums.current?.(state) ?? start,
  }));
  const ask = () => {
    if (sums.current || is === 'asked') return;
    setIs('asked');
    load().then(
      (came) => {
        sums.current = came;
        setIs('here');
      },
      () => setIs('missing'),
    );
  };
  const isMissing = is === 'missing';
  return {
    calculator,
    is,
    isMissing,
    /** Stands beside the drawing and asks. */
    watch: (state: S): VNode => (
      <AtFirstChange fields={fields} state={state} ask={ask} isMissing={isMissing} />
    ),
  };
}
