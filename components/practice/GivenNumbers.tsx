import type { GivenTable } from '#words/skills/problemWords.ts';

/** The numbers of a problem in a plain table. */
export function GivenNumbers({ caption, head, rows }: GivenTable) {
  return (
    <table class="given">
      <caption>{caption}</caption>
      <thead>
        <tr>
          {head.map((cell) => (
            <th scope="col">{cell}</th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(([first, ...rest]) => (
          <tr>
            <th scope="row">{first}</th>
            {rest.map((cell) => (
              <td>{cell}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
