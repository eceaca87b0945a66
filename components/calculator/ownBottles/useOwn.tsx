import type { OwnBottle } from '#lib/colour/own/ownBottle.ts';
import type { OwnSlot } from '#lib/colour/own/ownSlots.ts';
import type { VNode } from 'preact';
import { useState } from 'preact/hooks';
import { LaterOwnPanel } from './LaterOwnPanel.tsx';

const noShelf: readonly OwnBottle[] = [];

/**
 * The bottles of one's own, where a calculator takes them: on its own page. `room`: their panel, with its
 * place kept free until it comes.
 */
export function useOwn(
  isTaken: boolean,
  id: string,
  onTaken: (slot: OwnSlot) => void = () => undefined,
): Readonly<{ shelf: readonly OwnBottle[]; room: VNode | false }> {
  const [shelf, setShelf] = useState(noShelf);
  return {
    shelf,
    room: isTaken && (
      <div class="own-room">
        <LaterOwnPanel id={`${id}-own`} shelf={shelf} onShelf={setShelf} onTaken={onTaken} />
      </div>
    ),
  };
}
