import { useEffect, useState } from 'preact/hooks';
import type { FrontAndTailTable } from './FrontAndTail.tsx';

type Props = Parameters<FrontAndTailTable>[0] & Readonly<{ isOpen: boolean }>;

/** The tables of a lesson's figure: fetched at the first opening, so that the lesson itself stays small. */
export function LaterFrontAndTail({ isOpen, placing }: Props) {
  const [loaded, setLoaded] = useState<Readonly<{ Tables: FrontAndTailTable }> | 'failed' | undefined>();
  useEffect(() => {
    if (!isOpen || loaded) return;
    import('./FrontAndTailTables.tsx').then(
      ({ FrontAndTailTables }) => setLoaded({ Tables: FrontAndTailTables }),
      () => setLoaded('failed'),
    );
  }, [isOpen, loaded]);
  if (loaded === 'failed') return <a href="/calculators/front-and-tail/">See the calculator’s own page</a>;
  return loaded ? <loaded.Tables placing={placing} /> : null;
}
