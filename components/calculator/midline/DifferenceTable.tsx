import { browMarks } from '#lib/mapping/marks/markSet.ts';
import type { Difference, ShownReading } from '#lib/mapping/compare/readFace.ts';
import { browMarkWords, capital } from '#words/marks.ts';
import { bandWords } from '#words/midline.ts';
import { fixed, signed } from '#words/number.ts';

const spanMm = 4;
const held = (value: number) => Math.max(-spanMm, Math.min(spanMm, value));

/** The doubt, drawn: a bar for the range, a tick for the reading, a line at "equal". */
function RangeBar({ value, lo, hi, band }: Difference) {
  return (
    <svg class={`range ${band}`} viewBox="-4.4 -1 8.8 2" aria-hidden="true">
      <path class="range-zero" d="M0-1v2" />
      <path class="range-bar" d={`M${held(lo).toFixed(2)},0H${held(hi).toFixed(2)}`} />
      <circle class="range-ring" cx={held(value).toFixed(2)} cy="0" r=".38" />
    </svg>
  );
}

function Row({
  name,
  right,
  left,
  difference,
}: Readonly<{ name: string; right: number; left: number; difference: Difference }>) {
  return (
    <tr class={difference.band === 'not-shown' ? undefined : 'is-real'}>
      <th scope="row">{name}</th>
      <td>{fixed(right)}</td>
      <td>{fixed(left)}</td>
      <td class="d">{signed(difference.value)}</td>
      <td class="bar">
        <RangeBar {...difference} />
      </td>
      <td class="rng">
        {fixed(difference.lo)} to {fixed(difference.hi)}
      </td>
      <td class="verd">{bandWords[difference.band]}</td>
    </tr>
  );
}

/** Left against right for every brow mark: height above the pupils, distance from the midline. */
export function DifferenceTable({ reading }: Readonly<{ reading: ShownReading }>) {
  const head = (
    <tr>
      <th scope="col">mm</th>
      <th scope="col">Right</th>
      <th scope="col">Left</th>
      <th scope="col" class="d">
        L − R
      </th>
      <th scope="col" class="bar">
        <span class="vh">Range drawn</span>
      </th>
      <th scope="col" class="rng">
        Range
      </th>
      <th scope="col" class="verd">
        Real?
      </th>
    </tr>
  );
  return (
    <div class="diffs">
      <table class="meas">
        <caption>Height above the pupils</caption>
        <thead>{head}</thead>
        <tbody>
          {browMarks.map((mark) => {
            const { right, left, up } = reading.brows[mark];
            return (
              <Row
                key={mark}
                name={capital(browMarkWords[mark])}
                right={right.vMm}
                left={left.vMm}
                difference={up}
              />
            );
          })}
        </tbody>
      </table>
      <table class="meas">
        <caption>Distance from the midline</caption>
        <thead>{head}</thead>
        <tbody>
          {browMarks.map((mark) => {
            const { right, left, outward } = reading.brows[mark];
            return (
              <Row
                key={mark}
                name={capital(browMarkWords[mark])}
                right={right.uMm}
                left={left.uMm}
                difference={outward}
              />
            );
          })}
        </tbody>
      </table>
    </div>
  );
}
