import { type MeasuringErrorState, measuringError } from '#calculators/measuringError.ts';
import { DifferencePlot } from '#components/pictures/DifferencePlot.tsx';
import {
  measuringErrorCaution,
  measuringErrorRows,
  measuringErrorSays,
  pairWords,
} from '#words/measuringError.ts';
import { fixed } from '#words/number.ts';
import { Frame } from '../frame/Frame.tsx';
import { NumberBox } from '../fields/NumberBox.tsx';
import { PairsBox } from '../fields/PairsBox.tsx';
import { rounded, useCalculator } from '../frame/useCalculator.ts';

type NumberName = Exclude<keyof MeasuringErrorState, 'pairs'>;

const labels: Readonly<Record<keyof MeasuringErrorState, string>> = {
  pairs: 'Your readings',
  readings: 'Readings a side',
  comparisons: 'Comparisons',
  wanted: 'Difference you want to show',
  pencil: 'Width of the pencil line',
  caliper: 'Step of the caliper',
  thread: 'Width of the thread’s line',
};
const isName = (key: string): key is keyof MeasuringErrorState => Object.hasOwn(labels, key);
const nameOf = (key: string) => (isName(key) ? labels[key] : key);

/** How wrong a measurement is, from own repeated readings: the island. */
export function MeasuringError({ id = 'error' }: Readonly<{ id?: string }>) {
  const desk = useCalculator(measuringError, nameOf);
  const { state, result } = desk;
  const { passes, repeats, repeatMm } = result;
  const box = (name: NumberName, unit: string) => (
    <NumberBox
      key={name}
      id={`${id}-${name}`}
      label={labels[name]}
      unit={unit}
      shown={String(rounded(state[name], 2))}
      refused={desk.draft(name)}
      onType={(text) => desk.type(name, text)}
    />
  );
  return (
    <Frame
      tall
      desk={desk}
      id={id}
      address="/calculators/measuring-error/"
      says={measuringErrorSays(result, state)}
      caution={measuringErrorCaution(result)}
      picture={
        <DifferencePlot
          id={id}
          repeats={repeats}
          repeatMm={repeatMm}
          shiftMm={passes.ok && passes.isShifted ? passes.shift.value : undefined}
        />
      }
      side={
        <>
          <PairsBox
            id={`${id}-pairs`}
            label={labels.pairs}
            hint="One pair a line: first and second reading in millimetres, such as 12.3 12.6 or 12,3 12,6."
            kept={state.pairs}
            refused={desk.draft('pairs')}
            onType={(text) => desk.type('pairs', text)}
          />
          <div class="two">
            {box('readings', '')}
            {box('comparisons', '')}
          </div>
          {box('wanted', 'mm')}
          <details class="fold">
            <summary>Your tools</summary>
            <div class="fold-in">
              {box('pencil', 'mm')}
              {box('caliper', 'mm')}
              {box('thread', 'mm')}
            </div>
          </details>
        </>
      }
    >
      <details class="fold numbers">
        <summary>All numbers</summary>
        <div class="tables">
          <table class="meas trust">
            <caption>What your readings say</caption>
            <tbody>
              {measuringErrorRows(result).map(({ name, value }) => (
                <tr key={name}>
                  <th scope="row">{name}</th>
                  <td class="d">{value}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <table class="meas trust">
            <caption>Your pairs, mm</caption>
            <thead>
              <tr>
                <th scope="col">Pair</th>
                <th scope="col">First</th>
                <th scope="col">Second</th>
                <th scope="col" class="d">
                  Second − first
                </th>
              </tr>
            </thead>
            <tbody>
              {repeats.map(({ firstMm, secondMm }, i) => (
                <tr key={i} class={Math.abs(secondMm - firstMm) > repeatMm ? 'is-real' : undefined}>
                  <th scope="row">{i + 1}</th>
                  <td>{fixed(firstMm)}</td>
                  <td>{fixed(secondMm)}</td>
                  <td class="d">{pairWords(firstMm, secondMm)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      </details>
    </Frame>
  );
}
