/**
 * A part of the site that is fetched when it is first asked for. Rejects where it cannot be fetched; whoever
 * asks next tries again.
 * A browser remembers a script that failed until the page is loaded again. So where it says that it is
 * offline, a small file is asked for first, and the script only if that one came, as it does from the
 * device's own copy of the site.
 */
export function onDemand<T>(load: () => Promise<T>): () => Promise<T> {
  let part: Promise<T> | undefined;
  return () => {
    const asked = (part ??= navigator.onLine
      ? load()
      : fetch('/offline.json', { cache: 'no-store' }).then(load));
    asked.catch(() => (part = undefined));
    return asked;
  };
}
