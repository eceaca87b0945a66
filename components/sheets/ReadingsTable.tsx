import { browMarks } from '#lib/mapping/marks/markSet.ts';
import { practiceSheetWords as words, readingName } from '#words/sheets.ts';

const readings = browMarks.flatMap((mark) =>
  (['right', 'left'] as const).flatMap((side) =>
    (['across', 'up'] as const).map((way) => readingName(mark, side, way)),
  ),
);

/** Twenty readings of five marks on two brows, both ways, with room for two passes. */
export function ReadingsTable() {
  return (
    <>
      <p>{words.tableTask}</p>
      <table class="readings">
        <thead>
          <tr>
            <td />
            <td />
            {words.columns.map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {readings.map((name, i) => (
            <tr key={name}>
              <td class="num">{i + 1}</td>
              <th scope="row">{name}</th>
              {words.columns.map((column) => (
                <td key={column} class="blank-cell" />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <p class="sheet-sum">
        <span>
          {words.sum} <i class="blank" />
        </span>{' '}
        <span>
          {words.shared} <i class="blank" />
        </span>{' '}
        <span>
          {words.root} <i class="blank" />
        </span>
      </p>
      <p>{words.why}</p>
    </>
  );
}
