import { browMarks } from '#lib/mapping/marks/markSet.ts';
import { coverAreaWords, growthWords, heldByWords, moveWords, outsideWords } from '#words/coverPlan.ts';
import { browMarkWords, capital } from '#words/marks.ts';
import { signed } from '#words/number.ts';
import type { CoverTablesProps } from './LaterCoverTables.tsx';

const sides = ['right', 'left'] as const;
/** A number stays on one line with its sign and its unit. */
const whole = (words: string) => words.replaceAll(/(?<=\d) (?=mm|%)|(?<=±) (?=\d)/g, '\u00a0');
/** The caption holds the unit. */
const bare = (words: string) => whole(words.replace(' mm', ''));

/** The plan mark by mark, what stays outside, the growth, and all that holds the plan. */
export function CoverTables({ plan, sides: seen }: CoverTablesProps) {
  const held = heldByWords(plan.heldBy);
  return (
    <>
      <table class="meas place-table">
        <caption>Corrections inside the limits, mm</caption>
        <thead>
          <tr>
            <th scope="col">Mark</th>
            <th scope="col">Right</th>
            <th scope="col">Left</th>
            <th scope="col">L − R after</th>
          </tr>
        </thead>
        <tbody>
          {browMarks.map((mark) => (
            <tr key={mark}>
              <th scope="row">{capital(browMarkWords[mark])}</th>
              {sides.map((side) => (
                <td key={side}>{bare(moveWords(plan.moves[side][mark]))}</td>
              ))}
              <td>{signed(plan.remainingMm[mark])}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <table class="meas place-table">
        <caption>Old work and the outline</caption>
        <thead>
          <tr>
            <th scope="col">Measure</th>
            <th scope="col">Right</th>
            <th scope="col">Left</th>
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">Stays outside</th>
            {sides.map((side) => (
              <td key={side}>{whole(outsideWords(side, seen[side].outside).join('; ')) || 'nothing'}</td>
            ))}
          </tr>
          <tr>
            <th scope="row">Stays outside, mm²</th>
            {sides.map((side) => (
              <td key={side}>{coverAreaWords(seen[side].outside.areaMm2, Infinity)}</td>
            ))}
          </tr>
          <tr>
            <th scope="row">Growth since the old work</th>
            {sides.map((side) => (
              <td key={side}>{whole(growthWords(seen[side].growth))}</td>
            ))}
          </tr>
        </tbody>
      </table>
      {held.length > 0 && (
        <div class="plain small">
          <p>
            <b>Held by</b>
          </p>
          <ul>
            {held.map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        </div>
      )}
    </>
  );
}
