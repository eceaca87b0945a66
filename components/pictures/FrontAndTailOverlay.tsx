import { limitVerdict } from '#lib/mapping/placing/limitVerdict.ts';
import { frontAnchors } from '#lib/mapping/placing/anchorDistances.ts';
import type { NoPlacing, Placing } from '#lib/mapping/placing/placeFrontAndTail.ts';
import { tailLimitAtMm } from '#lib/mapping/placing/tailLine.ts';
import type { FrontAndTailState } from '#calculators/frontAndTailFields.ts';
import { placingKeys } from '#calculators/wideNoseMarks.ts';
import { fixed } from '#words/number.ts';

type Props = Readonly<{ state: FrontAndTailState; placing: Placing | NoPlacing }>;

const short = {
  'nose-wing': 'nose wing',
  'inner-corner': 'inner corner',
  'nostril-middle': 'nostril',
} as const;
/** Where each anchor's number stands (upper end) and the mark its line comes from (lower end), y down. */
const reach = { 'nose-wing': [-45, 40], 'inner-corner': [-38, 3], 'nostril-middle': [-31, 42] } as const;

/** Both sides of a drawing in the face's frame: outward to the picture's left and to its right. */
const ways = [
  { side: 'right', way: -1 },
  { side: 'left', way: 1 },
] as const;

/** Anchors, the chosen front, the tail line and the tail's level band over a face whose midline is x = 0. */
export function FrontAndTailOverlay({ state, placing }: Props) {
  return (
    <g>
      <path class="d-thread" d="M0-46V46" />
      <circle class="d-pin" cx="0" cy="-46" r="1.3" />
      <circle class="d-pin full" cx="0" cy="46" r="1.3" />
      {placing.ok && <Lines state={state} placing={placing} />}
      {placingKeys.map((key) => {
        const { xMm, yMm } = state[key];
        return key.endsWith('R') ? (
          <rect key={key} class="d-r" x={xMm - 1.05} y={-yMm - 1.05} width="2.1" height="2.1" />
        ) : (
          <circle key={key} class="d-l" cx={xMm} cy={-yMm} r="1.2" />
        );
      })}
    </g>
  );
}

function Lines({ state, placing }: Readonly<{ state: FrontAndTailState; placing: Placing }>) {
  const { anchors, chosenMm, line, tails } = placing;
  const top = 26;
  return (
    <g>
      {ways.map(({ side, way }) => {
        const lower = side === 'right' ? state.frontLowerR.yMm : state.frontLowerL.yMm;
        const upper = side === 'right' ? state.frontTopR.yMm : state.frontTopL.yMm;
        const tail = side === 'right' ? state.tailR : state.tailL;
        const { inside, limitMm } = tails[side];
        const isPast = limitVerdict(inside) === 'breaks';
        const endMm = Math.max(Math.abs(tail.xMm), limitMm) + 4;
        return (
          <g key={side}>
            <path class="place-band" d={`M${way * 40},${-lower}H${way * endMm}V${-upper}H${way * 40}Z`} />
            <path
              class="d-ref"
              d={`M${way * chosenMm},${-lower}H${way * endMm}M${way * chosenMm},${-upper}H${way * endMm}`}
            />
            <path
              class="d-ref"
              d={`M${way * line.wing.uMm},${-line.wing.vMm}L${way * tailLimitAtMm(line, top)},${-top}`}
            />
            {frontAnchors.map((name) => (
              <path
                key={name}
                class="d-ref"
                d={`M${way * anchors[name].bothMm},${reach[name][0]}V${reach[name][1]}`}
              />
            ))}
            <path class="d-plan" d={`M${way * chosenMm},-29V6`} />
            <text class="v halo place-mine" x={way * chosenMm} y="10.5" text-anchor="middle">
              {fixed(chosenMm)}
            </text>
            {isPast && <path class="place-past" d={`M${way * limitMm},${-tail.yMm}H${tail.xMm}`} />}
            {isPast && (
              <text
                class="v halo"
                x={way * 70}
                y={-Math.min(lower, tail.yMm) + 15}
                text-anchor={way < 0 ? 'start' : 'end'}
              >
                {fixed(-tails[side].insideLevelMm)} past
              </text>
            )}
          </g>
        );
      })}
      {frontAnchors.map((name) => (
        <text key={name} class="halo" x={anchors[name].bothMm + 1.2} y={reach[name][0] + 2.4}>
          {short[name]} {fixed(anchors[name].bothMm)}
        </text>
      ))}
      <text class="ref halo" x="70" y="-27.5" text-anchor="end">
        tail line
      </text>
    </g>
  );
}
