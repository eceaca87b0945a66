import { browMarks } from '#lib/mapping/marks/markSet.ts';
import { includesZero, type Interval } from '#lib/quantities/interval.ts';
import { changeSince } from '#calculators/changeSince.ts';
import type { MidlineAndSidesState } from '#calculators/midlineAndSidesFields.ts';
import { Icon } from '#components/site/Icon.tsx';
import { saveIcon } from '#components/site/icons.ts';
import { browMarkWords, capital } from '#words/marks.ts';
import { keptSays, takenWords } from '#words/keptReading.ts';
import { signed } from '#words/number.ts';
import { useState } from 'preact/hooks';

const cell = (change: Interval) => (
  <td class={includesZero(change) ? undefined : 'is-moved'}>
    {signed(change.value)}
    {includesZero(change) ? '' : ' *'}
  </td>
);

/**
 * Keeps one reading on the page, in memory only, and says what moved since. This is how measuring again is
 * taught:
 * the same face a second time, or after the first pass. Readings that were not taken alike are refused.
 */
export function KeptReading({ state }: Readonly<{ state: MidlineAndSidesState }>) {
  const [kept, setKept] = useState<MidlineAndSidesState | undefined>();
  const change = kept && changeSince(kept, state);
  return (
    <section class={kept ? 'kept' : 'kept no-print'}>
      <h2>Compare with a second reading</h2>
      <p class="plain small quiet">
        Keep this reading, then mark the face again, or change how it was taken. What moved is shown here. It
        is forgotten when you leave the page.
      </p>
      <div class="btns no-print">
        <button class="btn line" type="button" onClick={() => setKept(state)}>
          <Icon of={saveIcon} /> {kept ? 'Keep this one instead' : 'Keep this reading'}
        </button>
        {kept && (
          <button class="btn text" type="button" onClick={() => setKept(undefined)}>
            Let it go
          </button>
        )}
      </div>
      {kept && change && (
        <div role="status">
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
        </div>
      )}
    </section>
  );
}
