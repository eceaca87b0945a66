import { useEffect, useState } from 'preact/hooks';
import type { Tables } from './tables.ts';

type Props = Parameters<Tables>[0] & Readonly<{ isOpen: boolean }>;

/** The tables of a lesson's figure: fetched at the first opening, so that the lesson itself stays small. */
export function LaterTables({ isOpen, ...shown }: Props) {
  const [loaded, setLoaded] = useState<Readonly<{ Tables: Tables }> | 'failed' | undefined>();
  useEffect(() => {
    if (!isOpen || loaded) return;
    import('./MidlineTables.tsx').then(
      ({ MidlineTables }) => setLoaded({ Tables: MidlineTables }),
      () => setLoaded('failed'),
    );
  }, [isOpen, loaded]);
  if (loaded === 'failed') return <a href="/calculators/midline-and-sides/">See the calculator’s own page</a>;
  return loaded ? <loaded.Tables {...shown} /> : null;
}
