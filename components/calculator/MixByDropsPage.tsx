import type { MixByDrops as Result } from '#calculators/mixByDrops.ts';
import type { ComponentChildren } from 'preact';
import { MixByDrops } from './MixByDrops.tsx';
import { OwnPanel, useShelf } from './OwnPanel.tsx';

/** Mix by drops on its own page: with the bottles of one's own. */
export function MixByDropsPage({ id, start, children }: Readonly<{ id: string; start: Result; children?: ComponentChildren }>) {
  const { shelf, note, put } = useShelf();
  return <MixByDrops id={id} start={start} shelf={shelf} panel={(empty) => <OwnPanel id={`${id}-own`} shelf={shelf} note={note} onShelf={put} onTaken={empty} />}>{children}</MixByDrops>;
}
