import type { MixFurther as Further } from '#calculators/mixFurther.ts';
import { notFetched } from '#words/fetching.ts';
import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { askBeside } from '../workers/askBeside.ts';
import type { AskedMix } from '../workers/askMixWorker.ts';
import { MixFurther } from './MixFurther.tsx';

const ask = askBeside<AskedMix, Further | undefined>(
  () =>
    new Worker(new URL('../workers/furtherWorker.ts', import.meta.url), {
      type: 'module',
    }),
);

/**
 * The plots of the mix on screen, worked out beside the page. Those of the mix before stay until the next
 * ones come.
 */
export function FurtherBeside({
  id,
  state,
  shelf,
  before,
}: AskedMix &
  Readonly<{
    id: string;
    /** What stood there, until the first answer. */
    before?: ComponentChildren;
  }>) {
  const [further, setFurther] = useState<Further | 'failed' | 'asked' | undefined>('asked');
  useEffect(() => {
    let isCurrent = true;
    ask({ state, shelf }).then(
      (found) => isCurrent && setFurther(found),
      () => isCurrent && setFurther('failed'),
    );
    return () => {
      isCurrent = false;
    };
  }, [state, shelf]);
  if (further === 'asked') return <>{before}</>;
  return further === 'failed' ? (
    <p class="plain small">{notFetched('The plots')}</p>
  ) : (
    <MixFurther id={id} further={further} />
  );
}
