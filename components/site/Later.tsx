import { notFetched } from '#words/fetching.ts';
import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';

type Props<T> = Readonly<{
  fetchPart: () => Promise<T>;
  /** In words, to say what is missing. */
  what: string;
  isWanted?: boolean;
  /** What stands there until it comes. */
  meanwhile?: ComponentChildren;
  show: (part: T) => ComponentChildren;
}>;

/**
 * A part of the page that is fetched once it is wanted. One that did not come is said, and asked for again
 * when it is wanted anew.
 */
export function Later<T>({ fetchPart, what, isWanted = true, meanwhile, show }: Props<T>) {
  const [part, setPart] = useState<Readonly<{ came: T }>>();
  const [isMissing, setMissing] = useState(false);
  useEffect(() => {
    if (isWanted && !part)
      fetchPart().then(
        (came) => setPart({ came }),
        () => setMissing(true),
      );
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- asked for anew only when wanted anew.
  }, [isWanted]);
  if (part) return <>{show(part.came)}</>;
  return isMissing ? (
    <p class="plain small" role="alert">
      {notFetched(what)}
    </p>
  ) : (
    <>{meanwhile}</>
  );
}
