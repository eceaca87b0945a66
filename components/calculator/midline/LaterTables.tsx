import { Later } from '#components/site/Later.tsx';
import { onDemand } from '#components/site/onDemand.ts';
import type { Tables } from '../frame/tables.ts';

type Props = Parameters<Tables>[0] & Readonly<{ isOpen: boolean }>;
const tables = onDemand(() => import('./MidlineAndSidesPage.tsx'));

/** The tables of a lesson's figure: fetched at the first opening, so that the lesson itself stays small. */
export function LaterTables({ isOpen, ...shown }: Props) {
  return (
    <Later
      fetchPart={tables}
      isWanted={isOpen}
      what="The tables"
      show={({ MidlineTables }) => <MidlineTables {...shown} />}
    />
  );
}
