import type { Calculator, State } from '#calculators/spec.ts';
import { onDemand } from '#components/site/onDemand.ts';
import { useEffect } from 'preact/hooks';

type Kept<S extends State> = Readonly<{ calculator: Pick<Calculator<S, unknown>, 'fields'>; state: S }>;
const reading = onDemand(() => import('../frame/reading.ts'));

/**
 * Where something is missing, it may take a new load of the page to get it: the numbers go into the address,
 * which outlives that.
 */
export function useKept<S extends State>({ calculator, state }: Kept<S>, isMissing: boolean): void {
  useEffect(() => {
    if (isMissing)
      void reading().then(
        (by) => by.keepInAddress(calculator, state),
        () => undefined,
      );
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- a calculator never changes under its page.
  }, [isMissing, state]);
}
