import type { Brows } from '#lib/mapping/marks/brow.ts';
import { browMarks } from '#lib/mapping/marks/markSet.ts';
import { browMarkWords, capital } from '#words/marks.ts';
import { fixed } from '#words/number.ts';
import { outlineSheetWords as words } from '#words/sheets.ts';

/** The ten marks in numbers: enough to draw the sheet again by hand. */
export function BrowMarksTable({ brows: { right, left } }: Readonly<{ brows: Brows }>) {
  return (
    <table class="readings brow-marks">
      <caption>{words.marks}</caption>
      <thead>
        <tr>
          <td />
          {words.columns.map((column) => (
            <th key={column} scope="col">
              {column}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {browMarks.map((mark) => (
          <tr key={mark}>
            <th scope="row">{capital(browMarkWords[mark])}</th>
            {[right[mark].uMm, left[mark].uMm, right[mark].vMm, left[mark].vMm].map((mm, i) => (
              <td key={words.columns[i]}>{fixed(mm)}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
