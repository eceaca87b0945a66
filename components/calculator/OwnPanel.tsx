import type { OwnBottle } from '#lib/colour/own/ownBottle.ts';
import type { OwnSlot } from '#lib/colour/own/ownSlots.ts';
import { useEffect, useState } from 'preact/hooks';

type Panel = typeof import('./OwnBottles.tsx').OwnBottles;
type Props = Readonly<{ id: string; shelf: readonly OwnBottle[]; onShelf: (shelf: readonly OwnBottle[]) => void; onTaken: (slot: OwnSlot) => void }>;

/** Where the bottles of one's own are kept, as the text of their file. */
export const shelfKey = 'tautline-bottles';

/** The fold with the bottles of one's own. What reads, writes and changes them is fetched only where there are some, or when it is opened. */
export function OwnPanel({ shelf, onShelf, ...props }: Props) {
  const [note, setNote] = useState('');
  const [Inside, setInside] = useState<Panel>();
  const [isMissing, setMissing] = useState(false);
  useEffect(() => {
    const load = () => import('./ownShelf.ts').then(({ loadShelf }) => loadShelf()).then((kept) => {
      onShelf(kept.bottles);
      setNote(kept.note);
    }, () => undefined);
    const other = ({ key }: StorageEvent) => {
      if (key === shelfKey) void load();
    };
    addEventListener('storage', other);
    try {
      if (localStorage.getItem(shelfKey) !== null) void load();
    } catch {
      // Storage is denied: nothing is kept.
    }
    return () => removeEventListener('storage', other);
  }, []);
  const put = (next: readonly OwnBottle[]) => {
    onShelf(next);
    void import('./ownShelf.ts').then(({ keepShelf }) => setNote(keepShelf(next)));
  };
  const open = () => import('./OwnBottles.tsx').then(({ OwnBottles }) => setInside(() => OwnBottles), () => setMissing(true));
  return (
    <details class="fold numbers own no-print" onToggle={({ currentTarget }) => currentTarget.open && !Inside && void open()}>
      <summary>Your own bottles{shelf.length > 0 && ` (${shelf.length})`}</summary>
      {Inside ? <Inside {...props} shelf={shelf} note={note} onShelf={put} /> : <p class="plain">{isMissing ? 'This part did not arrive. Look at the connection, close it and open it again.' : 'One moment.'}</p>}
    </details>
  );
}
