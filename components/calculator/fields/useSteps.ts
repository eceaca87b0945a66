import { useRef } from 'preact/hooks';

/** What a picture says to whoever keeps its marks: one was taken, let go, or its drag was broken off. */
export type Hold = Readonly<{ take: () => void; letGo: () => void; putBack: () => void }>;

/**
 * Steps back. Changes of the same thing are one step until something else is changed or the step is closed; a
 * drag is a step of its own.
 */
export function useSteps<T, W extends string = string>() {
  const past = useRef<Readonly<{ what: W | ''; before: T }>[]>([]);
  const open = useRef<W | ''>();
  const heldAt = useRef(0);
  const close = () => (open.current = undefined);
  /** Takes the last step away and gives what stood before it. */
  const back = () => {
    close();
    return past.current.pop()?.before;
  };
  return {
    /** What the last step changed. */
    last: () => past.current.at(-1)?.what,
    remember: (what: W | '', before: T) => {
      if (open.current !== what) past.current.push({ what, before });
      open.current = what;
    },
    close,
    forget: () => {
      past.current = [];
      close();
    },
    back,
    take: () => {
      close();
      heldAt.current = past.current.length;
    },
    /** What stood before the drag, if it changed anything. */
    broken: () => (past.current.length > heldAt.current ? back() : undefined),
  };
}
