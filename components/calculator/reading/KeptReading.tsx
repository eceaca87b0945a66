import type { MidlineAndSidesState } from '#calculators/midlineAndSidesFields.ts';
import { Icon } from '#components/site/Icon.tsx';
import { saveIcon } from '#components/site/icons.ts';
import { Later } from '#components/site/Later.tsx';
import { onDemand } from '#components/site/onDemand.ts';
import { useState } from 'preact/hooks';

const changes = onDemand(() => import('./KeptChange.tsx'));

/**
 * Keeps one reading on the page, in memory only, and says what moved since. This is how measuring again is
 * taught:
 * the same face a second time, or after the first pass. Readings that were not taken alike are refused.
 */
export function KeptReading({ state }: Readonly<{ state: MidlineAndSidesState }>) {
  const [kept, setKept] = useState<MidlineAndSidesState | undefined>();
  return (
    <section class={kept ? 'kept' : 'kept no-print'}>
      <h2>Compare with a second reading</h2>
      <p class="plain small quiet">
        Keep this reading, then mark the face again, or change how it was taken. What moved is shown here. It
        is forgotten when you leave the page.
      </p>
      <div class="btns no-print">
        <button class="btn line" type="button" onClick={() => setKept(state)}>
          <Icon of={saveIcon} /> {kept ? 'Keep this one instead' : 'Keep this reading'}
        </button>
        {kept && (
          <button class="btn text" type="button" onClick={() => setKept(undefined)}>
            Let it go
          </button>
        )}
      </div>
      {kept && (
        <div role="status">
          <Later
            fetchPart={changes}
            what="What compares readings"
            show={({ KeptChange }) => <KeptChange kept={kept} state={state} />}
          />
        </div>
      )}
    </section>
  );
}
