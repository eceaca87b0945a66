import type { OwnBottle } from '#lib/colour/own/ownBottle.ts';
import type { OwnSlot } from '#lib/colour/own/ownSlots.ts';
import { useEffect, useState } from 'preact/hooks';

type Panel = typeof import('./OwnBottles.tsx').OwnBottles;
type Shelf = Readonly<{ shelf: readonly OwnBottle[]; note: string; put: (shelf: readonly OwnBottle[]) => void }>;
type Props = Readonly<{ id: string; shelf: readonly OwnBottle[]; note: string; onShelf: (shelf: readonly OwnBottle[]) => void; onTaken: (slot: OwnSlot) => void }>;

const none: readonly OwnBottle[] = [];
/** Where the bottles of one's own are kept, as the text of their file. */
export const shelfKey = 'tautline-bottles';

/** The bottles kept on this device. What reads and writes them is fetched only where there are some, or when one is added. */
export function useShelf(): Shelf {
  const [shelf, setShelf] = useState(none);
  const [note, setNote] = useState('');
  useEffect(() => {
    const load = () => import('./ownShelf.ts').then(({ loadShelf }) => loadShelf()).then((kept) => {
      setShelf(kept.bottles);
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
    setShelf(next);
    void import('./ownShelf.ts').then(({ keepShelf }) => setNote(keepShelf(next)));
  };
  return { shelf, note, put };
}

/** The fold with the bottles of one's own. What is in it is fetched when it is opened. */
export function OwnPanel(props: Props) {
  const [Inside, setInside] = useState<Panel | undefined>();
  const [isMissing, setMissing] = useState(false);
  const open = () => import('./OwnBottles.tsx').then(({ OwnBottles }) => setInside(() => OwnBottles), () => setMissing(true));
  return (
    <details class="fold numbers own no-print" onToggle={({ currentTarget }) => currentTarget.open && !Inside && void open()}>
      <summary>Your own bottles{props.shelf.length > 0 && ` (${props.shelf.length})`}</summary>
      {Inside ? <Inside {...props} /> : <p class="plain">{isMissing ? 'This part did not arrive. Look at the connection, close it and open it again.' : 'Add a bottle by the pigments on its label or by a swatch. This part needs JavaScript.'}</p>}
    </details>
  );
}
