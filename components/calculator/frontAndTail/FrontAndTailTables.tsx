import { frontAnchors } from '#lib/mapping/placing/anchorDistances.ts';
import { lengthKinds } from '#lib/mapping/placing/drawnLengths.ts';
import { limitVerdict } from '#lib/mapping/placing/limitVerdict.ts';
import type { NoPlacing, Placing } from '#lib/mapping/placing/placeFrontAndTail.ts';
import { includesZero, type Interval } from '#lib/quantities/interval.ts';
import { anchorWords, lengthWords, tailChecks, tailCheckWords, verdictWords } from '#words/frontAndTail.ts';
import { capital } from '#words/marks.ts';
import { fixed, signed } from '#words/number.ts';

const range = ({ lo, hi }: Interval) => `${fixed(lo)} to ${fixed(hi)}`;
const real = (difference: Interval) => (includesZero(difference) ? 'not shown' : 'real');

/** Everything the drawing of front and tail says, as numbers. */
export function FrontAndTailTables({ placing }: Readonly<{ placing: Placing | NoPlacing }>) {
  if (!placing.ok) return null;
  const { anchors, fronts, frontsApart, tails, tailsUp, lengths, lengthsApart } = placing;
  return (
    <>
      <table class="meas place-table">
        <caption>Anchors, distance from the midline</caption>
        <thead>
          <tr>
            <th scope="col">mm</th>
            <th scope="col">Right</th>
            <th scope="col">Left</th>
            <th scope="col">Both</th>
          </tr>
        </thead>
        <tbody>
          {frontAnchors.map((name) => (
            <tr key={name}>
              <th scope="row">{capital(anchorWords[name])}</th>
              <td>{fixed(anchors[name].right)}</td>
              <td>{fixed(anchors[name].left)}</td>
              <td>{fixed(anchors[name].bothMm)}</td>
            </tr>
          ))}
          <tr>
            <th scope="row">Front as drawn now</th>
            <td>{fixed(fronts.right.nowMm)}</td>
            <td>{fixed(fronts.left.nowMm)}</td>
            <td />
          </tr>
          <tr>
            <th scope="row">Move, outward</th>
            <td>{signed(fronts.right.moveMm)}</td>
            <td>{signed(fronts.left.moveMm)}</td>
            <td />
          </tr>
        </tbody>
      </table>
      <table class="meas place-table">
        <caption>Tail checks: room in mm, minus where a limit is passed</caption>
        <thead>
          <tr>
            <th scope="col">Check</th>
            <th scope="col">Room</th>
            <th scope="col" class="rng">
              Range
            </th>
            <th scope="col" class="verd">
              Verdict
            </th>
          </tr>
        </thead>
        <tbody>
          {(['right', 'left'] as const).flatMap((side) =>
            tailChecks.map((check) => {
              const room = tails[side][check];
              const verdict = limitVerdict(room);
              return (
                <tr key={side + check} class={verdict === 'breaks' ? 'is-real' : undefined}>
                  <th scope="row">
                    {capital(side)}: {tailCheckWords[check]}
                  </th>
                  <td>{fixed(room.value)}</td>
                  <td class="rng">{range(room)}</td>
                  <td class="verd">{verdictWords[verdict]}</td>
                </tr>
              );
            }),
          )}
        </tbody>
      </table>
      <table class="meas place-table">
        <caption>Tail end, level distance from the midline</caption>
        <thead>
          <tr>
            <th scope="col">mm</th>
            <th scope="col">Right</th>
            <th scope="col">Left</th>
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">Line of both sides, at the tip’s height</th>
            <td>{fixed(tails.right.limitMm)}</td>
            <td>{fixed(tails.left.limitMm)}</td>
          </tr>
          <tr>
            <th scope="row">Inside that line</th>
            <td>{fixed(tails.right.insideLevelMm)}</td>
            <td>{fixed(tails.left.insideLevelMm)}</td>
          </tr>
          <tr>
            <th scope="row">Inside the line of its own side</th>
            <td>{fixed(tails.right.insideOwnLevelMm)}</td>
            <td>{fixed(tails.left.insideOwnLevelMm)}</td>
          </tr>
        </tbody>
      </table>
      <table class="meas place-table">
        <caption>Lengths</caption>
        <thead>
          <tr>
            <th scope="col">mm</th>
            <th scope="col">Right</th>
            <th scope="col">Left</th>
            <th scope="col">L − R</th>
          </tr>
        </thead>
        <tbody>
          {lengthKinds.map((kind) => (
            <tr key={kind}>
              <th scope="row">{capital(lengthWords[kind])}</th>
              <td>{fixed(lengths.right[kind])}</td>
              <td>{fixed(lengths.left[kind])}</td>
              <td>{signed(lengths.left[kind] - lengths.right[kind])}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <table class="meas place-table">
        <caption>Left minus right</caption>
        <thead>
          <tr>
            <th scope="col">mm</th>
            <th scope="col">L − R</th>
            <th scope="col" class="rng">
              Range
            </th>
            <th scope="col" class="verd">
              Real?
            </th>
          </tr>
        </thead>
        <tbody>
          {(
            [
              ['Fronts, distance from the midline', frontsApart],
              ['Tail tips, height', tailsUp],
              ['Lengths, straight across', lengthsApart],
            ] as const
          ).map(([name, difference]) => (
            <tr key={name} class={includesZero(difference) ? undefined : 'is-real'}>
              <th scope="row">{name}</th>
              <td>{signed(difference.value)}</td>
              <td class="rng">{range(difference)}</td>
              <td class="verd">{real(difference)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}
