import { browMarks } from '#lib/mapping/marks/markSet.ts';
import { includesZero, type Interval } from '#lib/quantities/interval.ts';
import { changeSince } from '#calculators/changeSince.ts';
import type { MidlineAndSidesState } from '#calculators/midlineAndSidesFields.ts';
import { browMarkWords, capital } from '#words/marks.ts';
import { keptSays, takenWords } from '#words/keptReading.ts';
import { signed } from '#words/number.ts';

const cell = (change: Interval) => (
  <td class={includesZero(change) ? undefined : 'is-moved'}>
    {signed(change.value)}
    {includesZero(change) ? '' : ' *'}
  </td>
);

/** What moved since a reading was kept. Its sums are fetched once one is. */
export function KeptChange({ kept, state }: Readonly<Record<'kept' | 'state', MidlineAndSidesState>>) {
  const change = changeSince(kept, state);
  return (
    <>
      <p class="plain">
        Kept: {takenWords(kept)}. Now: {takenWords(state)}.
      </p>
      <p class="plain">
        <b>{keptSays(change)}</b>
      </p>
      {change.ok && (
        <table class="meas">
          <caption>Moved since, mm. A star marks what is real.</caption>
          <thead>
            <tr>
              <th scope="col">Mark</th>
              <th scope="col">Right, up</th>
              <th scope="col">Right, out</th>
              <th scope="col">Left, up</th>
              <th scope="col">Left, out</th>
            </tr>
          </thead>
          <tbody>
            {browMarks.map((mark) => {
              const { right, left } = change.changes[mark];
              return (
                <tr key={mark}>
                  <th scope="row">{capital(browMarkWords[mark])}</th>
                  {cell(right.up)}
                  {cell(right.outward)}
                  {cell(left.up)}
                  {cell(left.outward)}
                </tr>
              );
            })}
          </tbody>
        </table>
      )}
    </>
  );
}
