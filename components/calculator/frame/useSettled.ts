import { useEffect, useState } from 'preact/hooks';

/** So long nothing must change, ms. */
const quietMs = 150;

/**
 * What is shown once the hand rests: tables below the picture are most of a page, and nobody reads them while a
 * mark is pulled. They say that they are behind (`isBehind`) until they follow.
 */
export function useSettled<T>(
  now: T,
  changed: readonly unknown[],
): Readonly<{ value: T; isBehind: boolean }> {
  const [settled, setSettled] = useState({ value: now, changed });
  const isBehind = settled.changed.some((part, i) => part !== changed[i]);
  useEffect(() => {
    if (!isBehind) return undefined;
    const timer = setTimeout(() => setSettled({ value: now, changed }), quietMs);
    return () => clearTimeout(timer);
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- what is shown follows from what changed.
  }, changed);
  return { value: settled.value, isBehind };
}
