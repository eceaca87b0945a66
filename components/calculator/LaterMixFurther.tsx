import type { MixByDropsState } from '#calculators/mixByDropsFields.ts';
import type { OwnBottle } from '#lib/colour/own/ownBottle.ts';
import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';

type Loaded = Readonly<{ FurtherBeside: (props: Readonly<{ id: string; state: MixByDropsState; shelf: readonly OwnBottle[] }>) => ComponentChildren }>;
type Props = Readonly<{ id: string; state: MixByDropsState; shelf: readonly OwnBottle[]; /** What the page came with, good for the state it came with. */ still?: ComponentChildren }>;

/** The plots of a mix, behind a fold: those of the first state may come with the page; others are fetched once somebody opens it. */
export function LaterMixFurther({ id, state, shelf, still }: Props) {
  const [isOpen, setOpen] = useState(false);
  const [loaded, setLoaded] = useState<Loaded | 'failed'>();
  const [first] = useState(state);
  const isStill = still !== undefined && state === first;
  useEffect(() => {
    if (!isOpen || isStill || loaded) return;
    import('./FurtherBeside.tsx').then(setLoaded, () => setLoaded('failed'));
  }, [isOpen, isStill, loaded]);
  return (
    <details class="fold" onToggle={({ currentTarget: { open } }) => setOpen(open)}>
      <summary>What matters most, spectrum, two years</summary>
      {isStill ? still : loaded === 'failed' ? <a href="/calculators/mix-by-drops/">See the calculator’s own page</a> : isOpen && loaded ? <loaded.FurtherBeside id={id} state={state} shelf={shelf} /> : null}
    </details>
  );
}
