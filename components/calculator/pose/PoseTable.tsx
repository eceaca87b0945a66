import type { FalseDifferences } from '#lib/mapping/pose/readPosed.ts';
import { poseRows } from '#words/pose.ts';

/** What may be read from a picture: each number with what this pose fakes in it. */
export function PoseTable({ seen }: Readonly<{ seen: FalseDifferences }>) {
  return (
    <table class="meas may-read">
      <caption>What may be read from a picture</caption>
      <thead>
        <tr>
          <th scope="col">Number</th>
          <th scope="col" class="d">
            Faked here
          </th>
          <th scope="col" class="verd">
            Use it?
          </th>
        </tr>
      </thead>
      <tbody>
        {poseRows(seen).map(({ name, fakes, verdict, why }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td class="d">{fakes}</td>
            <td class="verd">
              <b>{verdict}</b>: {why}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
