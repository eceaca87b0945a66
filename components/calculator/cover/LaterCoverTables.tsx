import { Later } from '#components/site/Later.tsx';
import { onDemand } from '#components/site/onDemand.ts';
import type { Side } from '#lib/mapping/marks/markSet.ts';
import type { Growth } from '#lib/mapping/plan/growth.ts';
import type { Outside } from '#lib/mapping/plan/outsideOf.ts';
import type { CorrectionPlan } from '#lib/mapping/plan/planCorrections.ts';
import type { ComponentChildren } from 'preact';

export type CoverTablesProps = Readonly<{
  plan: CorrectionPlan;
  sides: Readonly<Record<Side, Readonly<{ outside: Outside; growth: Growth | undefined }>>>;
}>;
export type CoverTablesOf = (props: CoverTablesProps) => ComponentChildren;

const tables = onDemand(() => import('./CoverTheOldShapePage.tsx'));

/** The plan mark by mark in a lesson's figure: fetched at the first opening. */
export function LaterCoverTables({ isOpen, ...shown }: CoverTablesProps & Readonly<{ isOpen: boolean }>) {
  return (
    <Later
      fetchPart={tables}
      isWanted={isOpen}
      what="The plan"
      show={({ CoverTables }) => <CoverTables {...shown} />}
    />
  );
}
