import type { Tables } from './tables.ts';
import { DifferenceTable } from './DifferenceTable.tsx';
import { KeptReading } from './KeptReading.tsx';
import { TrustTable } from './TrustTable.tsx';
import { WholeBrow } from './WholeBrow.tsx';

/** Everything the drawing of midline and sides says, as numbers. */
export const MidlineTables: Tables = ({ reading, state }) => (
  <>
    {reading.ok && <DifferenceTable reading={reading} />}
    {reading.ok && <WholeBrow reading={reading} />}
    {reading.ok && <TrustTable reading={reading} />}
    <KeptReading state={state} />
  </>
);
