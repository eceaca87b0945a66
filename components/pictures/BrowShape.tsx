import type { Side } from '#lib/mapping/marks/markSet.ts';

/** How high above the pupils the arch stands as it is drawn. */
export const drawnArchMm = 21.2;
const outline = 'M16-11.4L16.7-18Q30-21.9 41.3-21.2Q50-20 56.2-14Q49-15.7 40.5-15.3Q28-14.6 16-11.4Z';
const openEye = 'M17 .9Q30-7.4 46.5-1.4Q33 5.6 17 .9Z';
const closedEye = 'M17 .9Q33 6 46.5-1.4';

/**
 * A plain left brow in the face's frame: midline on x = 0, pupil on y = 0, its arch at the height it is
 * drawn.
 */
export const BrowShape = () => <path class="brow-area" d={outline} />;

/** A plain left eye, open with its pupil or closed. */
export const EyeShape = ({ isClosed }: Readonly<{ isClosed: boolean }>) => (
  <>
    <path class="brow-eye" d={isClosed ? closedEye : openEye} />
    {!isClosed && <circle class="brow-eye" cx="31.5" cy="-1" r="3.9" />}
  </>
);

/** One brow over its eye: the whole brow stands so high that its arch has the height given. */
export function BrowOverEye({
  side,
  archMm,
  isClosed,
}: Readonly<{ side: Side; archMm: number; isClosed: boolean }>) {
  return (
    <g transform={side === 'right' ? 'scale(-1 1)' : undefined}>
      <EyeShape isClosed={isClosed} />
      <g transform={`translate(0 ${(drawnArchMm - archMm).toFixed(2)})`}>
        <BrowShape />
      </g>
    </g>
  );
}
