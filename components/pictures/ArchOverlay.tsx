import { archRules, type ArchPlaces, type ArchRule } from '#lib/mapping/placing/archRules.ts';
import { fixed } from '#words/number.ts';

type Props = Readonly<{ places: ArchPlaces; chosen: ArchRule; frontMm: number; tailMm: number }>;

const labelWidthMm = 5.6;
const outermostMm = 63;
const top = -36;

/** Places for labels in one row: near their lines, never over each other, never outside the picture. */
function fanned(wanted: readonly number[]): readonly number[] {
  const out: number[] = [];
  for (const place of wanted) out.push(Math.max(place, (out.at(-1) ?? -Infinity) + labelWidthMm));
  let limit = outermostMm;
  for (let i = out.length - 1; i >= 0; i--) {
    out[i] = Math.min(out[i] ?? limit, limit);
    limit = (out[i] ?? limit) - labelWidthMm;
  }
  return out;
}

const isHabit = (rule: ArchRule) => rule.startsWith('golden') || rule === 'own-share';

/** One vertical a rule, the same on both sides; numbers on the client's left, in the order of the table. */
export function ArchOverlay({ places, chosen, frontMm, tailMm }: Props) {
  const inOrder = [...archRules].sort((a, b) => places[a] - places[b]);
  const labels = fanned(inOrder.map((rule) => places[rule]));
  const mine = places[chosen];
  return (
    <g>
      <path class="d-thread" d="M0 -40V19" />
      <circle class="d-pin" cx="0" cy="-40" r="1.3" />
      <circle class="d-pin full" cx="0" cy="19" r="1.3" />
      {[-1, 1].map((side) => (
        <g key={side}>
          <path class="d-ref" d={`M${side * frontMm} -27V15M${side * tailMm} -27V15`} />
          <text class="ref halo" x={side * frontMm} y="20" text-anchor="middle">
            front
          </text>
          <text class="ref halo" x={side * tailMm} y="20" text-anchor="middle">
            tail
          </text>
          {inOrder.map((rule) => (
            <path
              key={rule}
              class={`arch-line${isHabit(rule) ? ' is-habit' : ''}${rule === chosen ? ' is-mine' : ''}`}
              d={`M${side * places[rule]} ${rule === chosen ? top - 2 : top}V${rule === chosen ? 9 : 4}`}
            />
          ))}
          <text class="v halo arch-mine" x={side * mine} y="14.5" text-anchor="middle">
            {fixed(mine)}
          </text>
        </g>
      ))}
      {inOrder.map((rule, i) => (
        <g key={rule}>
          <path class="arch-lead" d={`M${places[rule]} ${top}L${labels[i]} -42.5`} />
          <text
            class={rule === chosen ? 'halo arch-mine' : 'halo'}
            x={labels[i]}
            y="-44"
            text-anchor="middle"
          >
            {archRules.indexOf(rule) + 1}
          </text>
        </g>
      ))}
    </g>
  );
}
