import type { Side } from '#lib/mapping/markSet.ts';
import type { Growth } from '#lib/mapping/plan/growth.ts';
import type { Outside } from '#lib/mapping/plan/outsideOf.ts';
import type { CorrectionPlan } from '#lib/mapping/plan/planCorrections.ts';
import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';

export type CoverTablesProps = Readonly<{ plan: CorrectionPlan; sides: Readonly<Record<Side, Readonly<{ outside: Outside; growth: Growth | undefined }>>> }>;
export type CoverTablesOf = (props: CoverTablesProps) => ComponentChildren;

/** The plan mark by mark in a lesson's figure: fetched at the first opening. */
export function LaterCoverTables({ isOpen, ...shown }: CoverTablesProps & Readonly<{ isOpen: boolean }>) {
  const [loaded, setLoaded] = useState<Readonly<{ Tables: CoverTablesOf }> | 'failed' | undefined>();
  useEffect(() => {
    if (!isOpen || loaded) return;
    import('./CoverTables.tsx').then(
      ({ CoverTables }) => setLoaded({ Tables: CoverTables }),
      () => setLoaded('failed'),
    );
  }, [isOpen, loaded]);
  if (loaded === 'failed') return <a href="/calculators/cover-the-old-shape/">See the calculator’s own page</a>;
  return loaded ? <loaded.Tables {...shown} /> : null;
}
