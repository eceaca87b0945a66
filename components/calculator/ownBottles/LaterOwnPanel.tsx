import { Later } from '#components/site/Later.tsx';
import { onDemand } from '#components/site/onDemand.ts';
import type { OwnPanelProps } from './OwnPanel.tsx';

const panel = onDemand(() => import('./OwnPanel.tsx'));

/** The bottles of one's own on a calculator's own page, fetched once the page stands. */
export function LaterOwnPanel(props: OwnPanelProps) {
  return (
    <Later
      fetchPart={panel}
      what="The part with your own bottles"
      show={({ OwnPanel }) => <OwnPanel {...props} />}
    />
  );
}
