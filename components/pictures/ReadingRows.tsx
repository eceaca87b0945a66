import type { Taken } from '#lib/mapping/marks/markSet.ts';
import type { Interval } from '#lib/quantities/interval.ts';
import { fixed } from '#words/number.ts';
import { isShown, spokenPoses } from '#words/twoReadings.ts';
import { postureWords, skinWords } from '#words/marks.ts';
import { archAcrossMm, rowMm } from './readingView.ts';

const lineMm = 63;

type Row = Readonly<{
  id: string;
  name: string;
  taken: Taken;
  rightMm: number;
  leftMm: number;
  difference: Interval;
}>;

/** One reading: level of the pupils, both brows, the height of each arch and how far they are apart. */
function ReadingRow({ id, name, taken, rightMm, leftMm, difference }: Row) {
  return (
    <g>
      <text class="halo" x="-75" y="-37">
        <tspan class="strong">{name}:</tspan> {spokenPoses[taken.pose]}
      </text>
      <text class="ref halo" x="-75" y="-31">
        {postureWords[taken.posture]}; {skinWords[taken.skin]} skin
      </text>
      <path class="d-ref" d="M-70 0H70" />
      <text class="ref halo" x="0" y="5.4" text-anchor="middle">
        pupils
      </text>
      {[
        { sign: -1, archMm: rightMm },
        { sign: 1, archMm: leftMm },
      ].map(({ sign, archMm }) => (
        <g key={sign} transform={`scale(${sign} 1)`}>
          <use href={`#${id}-${taken.pose === 'eyes-closed' ? 'closed' : 'open'}`} />
          <use href={`#${id}-brow`} y={-archMm} />
        </g>
      ))}
      <path class="d-mark" d={`M${-lineMm} 0V${-rightMm}m-1.5 0h3M${lineMm} 0V${-leftMm}m-1.5 0h3`} />
      <path
        class="d-pair"
        d={`M${-lineMm} ${-rightMm}H${-archAcrossMm}M${lineMm} ${-leftMm}H${archAcrossMm}`}
      />
      <rect class="d-r" x={-archAcrossMm - 1.05} y={-rightMm - 1.05} width="2.1" height="2.1" />
      <circle class="d-l" cx={archAcrossMm} cy={-leftMm} r="1.2" />
      <text class="halo" x={-lineMm - 1.5} y="-4" text-anchor="end">
        {fixed(rightMm)}
      </text>
      <text class="halo" x={lineMm + 1.5} y="-4">
        {fixed(leftMm)}
      </text>
      <text class="v halo" x="0" y="-19" text-anchor="middle">
        {fixed(Math.abs(difference.value))} mm
      </text>
      <text class="ref halo" x="0" y="-13.4" text-anchor="middle">
        {isShown(difference) ? 'real' : 'not shown'}
      </text>
    </g>
  );
}

/**
 * Two readings of the same brows, one above the other. `id` is the prefix of the still picture that holds
 * brow and eyes.
 */
export function ReadingRows({ rows: [first, second] }: Readonly<{ rows: readonly [Row, Row] }>) {
  return (
    <g>
      <ReadingRow {...first} />
      <g transform={`translate(0 ${rowMm})`}>
        <ReadingRow {...second} />
      </g>
    </g>
  );
}
