import type { MixByDropsState } from '#calculators/mixByDropsFields.ts';
import { Later } from '#components/site/Later.tsx';
import { onDemand } from '#components/site/onDemand.ts';
import type { OwnBottle } from '#lib/colour/own/ownBottle.ts';
import type { ComponentChildren } from 'preact';
import { useRef, useState } from 'preact/hooks';

type Props = Readonly<{
  id: string;
  state: MixByDropsState;
  shelf: readonly OwnBottle[];
  /** What the page came with, good for the state it came with. */
  still?: ComponentChildren;
}>;
const plots = onDemand(() => import('./FurtherBeside.tsx'));

/**
 * The plots of a mix, behind a fold: those of the first state may come with the page; others are fetched once
 * somebody opens it.
 * Plots that were looked at stay until the next ones come: the page does not collapse under its reader.
 */
export function LaterMixFurther({ still, ...shown }: Props) {
  const [isOpen, setOpen] = useState(false);
  const [first] = useState(shown.state);
  const wasLookedAt = useRef(false);
  const isStill = still !== undefined && shown.state === first;
  wasLookedAt.current = isOpen && (isStill || wasLookedAt.current);
  const before = wasLookedAt.current ? still : undefined;
  return (
    <details class="fold" onToggle={({ currentTarget: { open } }) => setOpen(open)}>
      <summary>What matters most, spectrum, two years</summary>
      {isStill
        ? still
        : isOpen && (
            <Later
              fetchPart={plots}
              what="The plots"
              meanwhile={before}
              show={({ FurtherBeside }) => <FurtherBeside {...shown} before={before} />}
            />
          )}
    </details>
  );
}
