import type { ShownReading } from '#lib/mapping/compare/readFace.ts';
import { decomposeBrows } from '#lib/mapping/compare/decomposeBrows.ts';
import { wholeBrowSays } from '#words/wholeBrow.ts';

/** The left brow as the mirrored right one, moved, turned and sized: where a difference comes from. */
export function WholeBrow({ reading }: Readonly<{ reading: ShownReading }>) {
  const { lines, says } = wholeBrowSays(decomposeBrows(reading.brows));
  return (
    <section class="kept">
      <h2>The brow as a whole</h2>
      <p class="plain">{says}</p>
      {lines.length > 0 && (
        <table class="meas trust">
          <caption class="vh">Left brow against the mirrored right brow</caption>
          <tbody>
            {lines.map(({ name, value }) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                <td class="d">{value}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}
