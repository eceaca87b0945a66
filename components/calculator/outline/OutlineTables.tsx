import type { OutlineReport, Shape } from '#calculators/outlineSums.ts';
import type { StationPair } from '#lib/mapping/outline/stationPairs.ts';
import type { TradeCheck } from '#lib/mapping/outline/tradeChecks.ts';
import type { Interval } from '#lib/quantities/interval.ts';
import { capital } from '#words/marks.ts';
import { fixed, signed } from '#words/number.ts';
import { checkName, outlineFaultWords, stationWords, tradeVerdictWords } from '#words/outlineAndCover.ts';

const range = ({ lo, hi }: Interval) => `${fixed(lo)} to ${fixed(hi)}`;
const sides = ['right', 'left'] as const;
const angle = (slope: number) => `${fixed((Math.atan(slope) * 180) / Math.PI, 0)}°`;

function StationRow({ pair }: Readonly<{ pair: StationPair }>) {
  const { share, right, left } = pair;
  const fault = [right, left].find(({ ok }) => !ok);
  return (
    <tr>
      <th scope="row">{capital(stationWords(share))}</th>
      {right.ok && left.ok ? (
        <>
          <td>{fixed(right.thicknessMm)}</td>
          <td>{fixed(left.thicknessMm)}</td>
          <td>{fixed(right.straightUpMm)}</td>
          <td>{fixed(left.straightUpMm)}</td>
          <td>{angle(right.slope)}</td>
          <td>{angle(left.slope)}</td>
        </>
      ) : (
        <td colSpan={6} class="verd">
          {fault && !fault.ok && outlineFaultWords[fault.reason]}
        </td>
      )}
    </tr>
  );
}

function CheckRow({ check }: Readonly<{ check: TradeCheck }>) {
  const isFailed = check.verdict === 'differs' || check.verdict === 'breaks';
  return (
    <tr class={isFailed ? 'is-real' : undefined}>
      <th scope="row">{checkName(check)}</th>
      <td>{check.kind === 'limit' ? fixed(check.value.value) : signed(check.value.value)}</td>
      <td class="rng">{range(check.value)}</td>
      <td class="verd">{tradeVerdictWords[check.verdict]}</td>
    </tr>
  );
}

function CheckTable({
  caption,
  first,
  checks,
}: Readonly<{ caption: string; first: string; checks: readonly TradeCheck[] }>) {
  return (
    <table class="meas place-table">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">mm</th>
          <th scope="col">{first}</th>
          <th scope="col" class="rng">
            Range
          </th>
          <th scope="col" class="verd">
            Verdict
          </th>
        </tr>
      </thead>
      <tbody>
        {checks.map((check) => (
          <CheckRow key={checkName(check)} check={check} />
        ))}
      </tbody>
    </table>
  );
}

const sizeOf = (shape: Shape | undefined, size: 'areaMm2' | 'perimeterMm') =>
  shape ? fixed(shape[size]) : 'none';

/** Everything the drawing of the outline says, as numbers, and every trade check. */
export function OutlineTables({ report }: Readonly<{ report: OutlineReport }>) {
  if (!report.ok) return null;
  const { shapes, stations, checks } = report;
  return (
    <>
      <table class="meas place-table">
        <caption>Thickness by station, from the front, mm</caption>
        <thead>
          <tr>
            <th scope="col" rowSpan={2}>
              Station
            </th>
            <th scope="colgroup" colSpan={2}>
              Straight across
            </th>
            <th scope="colgroup" colSpan={2}>
              Straight up
            </th>
            <th scope="colgroup" colSpan={2}>
              Slope
            </th>
          </tr>
          <tr>
            {[1, 2, 3].flatMap((group) =>
              sides.map((side) => (
                <th key={`${group}${side}`} scope="col">
                  {capital(side)}
                </th>
              )),
            )}
          </tr>
        </thead>
        <tbody>
          {stations.map((pair) => (
            <StationRow key={pair.share} pair={pair} />
          ))}
        </tbody>
      </table>
      <CheckTable
        caption="Left minus right"
        first="L − R"
        checks={checks.filter(({ kind }) => kind === 'equal')}
      />
      <CheckTable
        caption="Fronts: outward of the chosen anchor"
        first="Off"
        checks={checks.filter(({ kind }) => kind === 'anchor')}
      />
      <CheckTable
        caption="Tails: room in mm, minus where a limit is passed"
        first="Room"
        checks={checks.filter(({ kind }) => kind === 'limit')}
      />
      <table class="meas place-table">
        <caption>Size of the outline</caption>
        <thead>
          <tr>
            <th scope="col">Measure</th>
            <th scope="col">Right</th>
            <th scope="col">Left</th>
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">Area, mm²</th>
            {sides.map((side) => (
              <td key={side}>{sizeOf(shapes[side], 'areaMm2')}</td>
            ))}
          </tr>
          <tr>
            <th scope="row">Once round, mm</th>
            {sides.map((side) => (
              <td key={side}>{sizeOf(shapes[side], 'perimeterMm')}</td>
            ))}
          </tr>
        </tbody>
      </table>
    </>
  );
}
