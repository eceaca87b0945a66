import { Later } from '#components/site/Later.tsx';
import { onDemand } from '#components/site/onDemand.ts';
import type { OwnBottle } from '#lib/colour/own/ownBottle.ts';
import type { OwnSlot } from '#lib/colour/own/ownSlots.ts';
import { notFetched } from '#words/fetching.ts';
import { useEffect, useState } from 'preact/hooks';

export type OwnPanelProps = Readonly<{
  id: string;
  shelf: readonly OwnBottle[];
  onShelf: (shelf: readonly OwnBottle[]) => void;
  onTaken: (slot: OwnSlot) => void;
}>;

/** Where the bottles of one's own are kept, as the text of their file. */
export const shelfKey = 'tautline-bottles';

const keeping = onDemand(() => import('./ownShelf.ts'));
const inside = onDemand(() => import('./OwnBottles.tsx'));

/**
 * The fold with the bottles of one's own. What reads, writes and changes them is fetched only where there are
 * some, or when it is opened.
 */
export function OwnPanel({ shelf, onShelf, ...props }: OwnPanelProps) {
  const [note, setNote] = useState('');
  const [isOpen, setOpen] = useState(false);
  const [isUnread, setUnread] = useState(false);
  const load = async () => {
    const by = await keeping();
    const kept = by.loadShelf();
    onShelf(kept.bottles);
    // Read again, what was set aside is no longer there: what was said about it stays.
    if (kept.note) setNote(kept.note);
    setUnread(false);
    return by;
  };
  /**
   * What is kept must be on the shelf before anything can be added: a shelf that was not read would be
   * written over it.
   */
  const open = async () => {
    const [{ OwnBottles }, { keepShelf }] = await Promise.all([inside(), load()]);
    return { OwnBottles, keepShelf };
  };
  useEffect(() => {
    const read = () => void load().catch(() => setUnread(true));
    const other = ({ key }: StorageEvent) => {
      if (key === shelfKey) read();
    };
    addEventListener('storage', other);
    try {
      if (localStorage.getItem(shelfKey) !== null) read();
    } catch {
      // Storage is denied: nothing is kept.
    }
    return () => removeEventListener('storage', other);
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- read once; then other tabs tell.
  }, []);
  return (
    <>
      <details
        class="fold numbers own no-print"
        onToggle={({ currentTarget }) => setOpen(currentTarget.open)}
      >
        <summary>Your own bottles{shelf.length > 0 && ` (${shelf.length})`}</summary>
        <Later
          fetchPart={open}
          isWanted={isOpen}
          what="The part with your own bottles"
          show={({ OwnBottles, keepShelf }) => (
            <OwnBottles
              {...props}
              shelf={shelf}
              note={note}
              onShelf={(next) => {
                onShelf(next);
                setNote(keepShelf(next));
              }}
            />
          )}
        />
      </details>
      {note && !isOpen && (
        <p class="plain small" role="status">
          {note}
        </p>
      )}
      {isUnread && !isOpen && (
        <p class="plain small" role="alert">
          {notFetched('What reads your own bottles')}
        </p>
      )}
    </>
  );
}
