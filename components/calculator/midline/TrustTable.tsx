import { midlineMarks } from '#lib/mapping/marks/mirrorMarks.ts';
import type { ShownReading } from '#lib/mapping/compare/readFace.ts';
import { facePairWords } from '#words/facePairs.ts';
import { faceSingleWords } from '#words/faceSingles.ts';
import { capital } from '#words/marks.ts';
import { fixed } from '#words/number.ts';

const names: Readonly<Record<(typeof midlineMarks)[number], string>> = {
  ...facePairWords,
  ...faceSingleWords,
};

/** Which marks the midline listened to. */
export function TrustTable({ reading }: Readonly<{ reading: ShownReading }>) {
  const out = new Set(reading.notTrusted);
  return (
    <table class="meas trust">
      <caption>Marks behind the midline</caption>
      <thead>
        <tr>
          <th scope="col">Mark</th>
          <th scope="col" class="d">
            Off by, mm
          </th>
          <th scope="col" class="d">
            Counted
          </th>
        </tr>
      </thead>
      <tbody>
        {midlineMarks.map((mark) => (
          <tr key={mark}>
            <th scope="row">
              {capital(names[mark])}
              {mark in facePairWords ? 's' : ''}
            </th>
            <td class="d">{fixed(reading.marks[mark].residualMm)}</td>
            <td class="d">
              {out.has(mark) ? 'not trusted' : `${fixed(100 * reading.marks[mark].weight, 0)} %`}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
