import type { Tables } from '../frame/tables.ts';
import { DifferenceTable } from './DifferenceTable.tsx';
import { KeptReading } from '../reading/KeptReading.tsx';
import { TrustTable } from './TrustTable.tsx';
import { WholeBrow } from '../reading/WholeBrow.tsx';

/** Everything the drawing of midline and sides says, as numbers. */
export const MidlineTables: Tables = ({ reading, state }) => (
  <>
    {reading.ok && <DifferenceTable reading={reading} />}
    {reading.ok && <WholeBrow reading={reading} />}
    {reading.ok && <TrustTable reading={reading} />}
    <KeptReading state={state} />
  </>
);
