import type { MixByDrops as Result } from '#calculators/mixByDrops.ts';
import { lookAgainUnder, mixByDropsFields, type MixByDropsState } from '#calculators/mixByDropsFields.ts';
import { DropCard } from '#components/pictures/DropCard.tsx';
import { onDemand } from '#components/site/onDemand.ts';
import { bottleIds } from '#lib/colour/pigment/bottleIds.ts';
import { ownSlots } from '#lib/colour/own/ownSlots.ts';
import { bottleWords, isBottle } from '#words/bottleWords.ts';
import { lampWords, labWords, mixCaution, mixSays, timeWords } from '#words/mixByDrops.ts';
import { mixOnPaper } from '#words/mixOnPaper.ts';
import { partsWords, rangesWords } from '#words/mixNumbers.ts';
import { fixed } from '#words/number.ts';
import { lampInWords, looksSay, three } from '#words/underLamps.ts';
import type { ComponentChildren } from 'preact';
import { useMemo } from 'preact/hooks';
import { ChoiceBox } from '../fields/ChoiceBox.tsx';
import { Frame } from '../frame/Frame.tsx';
import { LaterMixFurther } from './LaterMixFurther.tsx';
import { NumberBox } from '../fields/NumberBox.tsx';
import { SkinBoxes, skinLabels } from '../fields/SkinBoxes.tsx';
import { useCalculator } from '../frame/useCalculator.ts';
import { useKept } from '../lazy/useKept.ts';
import { useLater } from '../lazy/useLater.ts';
import { useOwn } from '../ownBottles/useOwn.tsx';

const labels = { ...skinLabels, dose: 'Dose', lamp: 'Seen under' } as const;
const isLabel = (key: string): key is keyof typeof labels => Object.hasOwn(labels, key);
const nameOf = (key: string) =>
  isBottle(key)
    ? `Drops of ${bottleWords[key]}`
    : isLabel(key)
      ? labels[key]
      : key.replace(/^own/, 'Your bottle ');
const load = onDemand(async () => (await import('../workers/askMixWorker.ts')).askMixWorker);

type Props = Readonly<{
  id?: string;
  start: Result;
  /** With bottles of one's own: on the calculator's page. */
  own?: boolean;
  children?: ComponentChildren;
}>;

/**
 * Mix by drops: the island. The prediction for the first state is made at build; later ones are worked out
 * beside the page. `children`: the plots of the first state.
 */
export function MixByDrops({ id = 'drops', start, own = false, children }: Props) {
  const desk = useCalculator(mixByDropsFields, nameOf);
  const { state } = desk;
  const { shelf, room } = useOwn(own, id, (slot) => desk.type(slot, '0'));
  const asked = useMemo(() => ({ state, shelf }), [state, shelf]);
  const { result, is } = useLater(asked, start, load);
  // Numbers of an earlier mix must not stand beside this one.
  const isMissing = is === 'missing';
  useKept(desk, isMissing);
  const lamp = lampInWords[lookAgainUnder(state.lamp)];
  const number = (
    name: Exclude<keyof MixByDropsState, 'oldWork' | 'lamp'>,
    unit: string,
    hint?: string,
    label = isBottle(name) ? bottleWords[name] : nameOf(name),
  ) => (
    <NumberBox
      key={name}
      id={`${id}-${name}`}
      label={label}
      unit={unit}
      shown={String(state[name])}
      hint={hint}
      refused={desk.draft(name)}
      onType={(text) => desk.type(name, text)}
    />
  );
  return (
    <Frame
      tall
      desk={desk}
      id={id}
      address="/calculators/mix-by-drops/"
      says={mixSays(result)}
      given={mixOnPaper(
        [
          ...bottleIds.map((bottle) => ({ name: bottleWords[bottle], count: state[bottle] })),
          ...ownSlots.map((slot) => ({
            name: shelf.find((bottle) => bottle.slot === slot)?.name ?? nameOf(slot),
            count: state[slot],
          })),
        ],
        state,
      )}
      caution={mixCaution(result)}
      missing={isMissing && 'The colour model'}
      picture={
        <>
          {result.ok && (
            <DropCard
              bottle={result.bottle}
              times={result.outlook.times}
              today={result.outlook.today}
              coverage={state.coverage / 100}
              isLate={is !== 'fresh'}
            />
          )}
          <p class="card-key plain">
            Each date, from the top: strokes close up; the colour from arm’s length; five of the simulated
            healings, darkest to lightest; what would be left if all yellow and red went first.
          </p>
          {result.ok && !isMissing && (
            <div class="looks">
              <table class="meas">
                <caption>Look again under the lamp: L* / a* / b*</caption>
                <thead>
                  <tr>
                    <th scope="col">What</th>
                    <th scope="col">Daylight</th>
                    <th scope="col">{lampWords[lookAgainUnder(state.lamp)]}</th>
                  </tr>
                </thead>
                <tbody>
                  <tr>
                    <th scope="row">{state.oldWork === 'none' ? 'skin today' : 'today'}</th>
                    <td>{three(result.looks.skin.day)}</td>
                    <td>{three(result.looks.skin.seen)}</td>
                  </tr>
                  {result.looks.times.map(({ years, day, seen }) => (
                    <tr key={years}>
                      <th scope="row">{timeWords(years)}</th>
                      <td>{three(day)}</td>
                      <td>{three(seen)}</td>
                    </tr>
                  ))}
                </tbody>
              </table>
              <p class="plain small">{looksSay(result.looks, lamp)}</p>
            </div>
          )}
        </>
      }
      side={
        <>
          <fieldset class="drops">
            <legend>Drops of each bottle</legend>
            {bottleIds.map((bottle) => number(bottle, ''))}
            {ownSlots.map((slot) => {
              const filled = shelf.find((bottle) => bottle.slot === slot);
              return (filled || state[slot] > 0) && number(slot, '', undefined, filled?.name);
            })}
          </fieldset>
          {number('dose', '', 'Pigment in the skin, in the model’s own unit.')}
          <SkinBoxes id={id} state={state} draft={desk.draft} onType={desk.type} />
          <ChoiceBox
            id={`${id}-lamp`}
            label={labels.lamp}
            value={state.lamp}
            options={Object.entries(lampWords).map(([value, label]) => ({ value, label }))}
            onType={(text) => desk.type('lamp', text)}
          />
        </>
      }
    >
      {room}
      {result.ok && <LaterMixFurther id={id} state={state} shelf={shelf} still={children} />}
      {result.ok && !isMissing && (
        <details class="fold numbers">
          <summary>All numbers</summary>
          <div class="tables">
            <table class="meas trust">
              <caption>Predicted colours, under {lampWords[state.lamp]}</caption>
              <thead>
                <tr>
                  <th scope="col">When</th>
                  <th scope="col">From arm’s length</th>
                  <th scope="col">9 in 10, L*</th>
                  <th scope="col">One stroke</th>
                  <th scope="col">Lean red / green</th>
                </tr>
              </thead>
              <tbody>
                <tr>
                  <th scope="row">today</th>
                  <td>{labWords(result.outlook.today)}</td>
                  <td></td>
                  <td></td>
                  <td></td>
                </tr>
                {result.outlook.times.map(
                  ({ years, plain, lightness: [lo, hi], covered, leanRed, leanGreen }) => (
                    <tr key={years}>
                      <th scope="row">{timeWords(years)}</th>
                      <td>{labWords(plain)}</td>
                      <td>
                        {fixed(lo)} to {fixed(hi)}
                      </td>
                      <td>{labWords(covered)}</td>
                      <td>
                        {fixed(100 * leanRed, 0)} / {fixed(100 * leanGreen, 0)} of 100
                      </td>
                    </tr>
                  ),
                )}
              </tbody>
            </table>
            {!result.hasSwatch && (
              <table class="meas trust">
                <caption>If all yellow and red went first. {partsWords(result)}</caption>
                <thead>
                  <tr>
                    <th scope="col">When</th>
                    <th scope="col">What is left</th>
                    <th scope="col">9 in 10 healings</th>
                  </tr>
                </thead>
                <tbody>
                  {result.outlook.times.map(({ years, dark }) => (
                    <tr key={years}>
                      <th scope="row">{timeWords(years)}</th>
                      <td>{labWords(dark.plain)}</td>
                      <td>{rangesWords(dark.ranges)}</td>
                    </tr>
                  ))}
                </tbody>
              </table>
            )}
          </div>
        </details>
      )}
    </Frame>
  );
}
