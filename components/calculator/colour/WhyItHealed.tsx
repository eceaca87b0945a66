import { mixByDropsFields } from '#calculators/mixByDropsFields.ts';
import type { WhyItHealed as Result } from '#calculators/whyItHealed.ts';
import { whyItHealedFields, type WhyItHealedState } from '#calculators/whyItHealedFields.ts';
import { HealingMapPlot } from '#components/pictures/HealingMapPlot.tsx';
import { SwatchRow } from '#components/pictures/SwatchRow.tsx';
import { onDemand } from '#components/site/onDemand.ts';
import { bottleIds } from '#lib/colour/pigment/bottleIds.ts';
import { type OwnSlot, ownSlots } from '#lib/colour/own/ownSlots.ts';
import { bottleWords, isBottle } from '#words/bottleWords.ts';
import { oldWorkWords } from '#words/mixByDrops.ts';
import { fixed } from '#words/number.ts';
import {
  ageWords,
  endsWords,
  mapLabel,
  noDoseRange,
  whyCaution,
  whyLabels,
  whyOnPaper,
  whySays,
} from '#words/whyItHealed.ts';
import { useMemo } from 'preact/hooks';
import { ChoiceBox } from '../fields/ChoiceBox.tsx';
import { Frame } from '../frame/Frame.tsx';
import { NumberBox } from '../fields/NumberBox.tsx';
import { useCalculator } from '../frame/useCalculator.ts';
import { useKept } from '../lazy/useKept.ts';
import { useLater } from '../lazy/useLater.ts';
import { useOwn } from '../ownBottles/useOwn.tsx';

type Choice = 'age' | 'second' | 'oldWork';
const isLabel = (key: string): key is keyof typeof whyLabels => Object.hasOwn(whyLabels, key);
const nameOf = (key: string) =>
  isBottle(key)
    ? `Drops of ${bottleWords[key]}`
    : isLabel(key)
      ? whyLabels[key]
      : key.replace(/^own/, 'Your bottle ');
const load = onDemand(async () => (await import('../workers/askWhyWorker.ts')).askWhyWorker);
const optionsOf = (words: Readonly<Record<string, string>>) =>
  Object.entries(words).map(([value, label]) => ({ value, label }));

/** The address of the mix page with this skin, mix and plan: both pages name them alike. */
function mixAddress(state: WhyItHealedState): string {
  const { skinL, skinA, skinB, oldWork, depth, coverage, dose } = state;
  const query = new URLSearchParams(
    Object.entries({ skinL, skinA, skinB, oldWork, depth, coverage, dose }).map(([key, value]) => [
      key,
      String(value),
    ]),
  );
  for (const id of [...bottleIds, ...ownSlots])
    if (state[id] !== mixByDropsFields.fields[id].start) query.set(id, String(state[id]));
  return `/calculators/mix-by-drops/?${query}`;
}

/**
 * Why did it heal this way: the island. The first map is made at build; later ones are worked out beside the
 * page.
 */
export function WhyItHealed({
  id = 'why',
  start,
  own = false,
}: Readonly<{
  id?: string;
  start: Result;
  /** With bottles of one's own: on the calculator's page. */
  own?: boolean;
}>) {
  const desk = useCalculator(whyItHealedFields, nameOf);
  const { state } = desk;
  const { shelf, room } = useOwn(own, id, (slot) => desk.type(slot, '0'));
  const asked = useMemo(() => ({ state, shelf }), [state, shelf]);
  const { result, is } = useLater(asked, start, load);
  useKept(desk, is === 'missing');
  const mine = (slot: OwnSlot) => shelf.find((bottle) => bottle.slot === slot)?.name;
  const number = (
    name: Exclude<keyof WhyItHealedState, Choice>,
    unit = '',
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
      refused={
        desk.draft(name) ??
        (name === 'doseHi' && state.doseHi <= state.doseLo
          ? { text: String(state.doseHi), sentence: noDoseRange }
          : undefined)
      }
      onType={(text) => desk.type(name, text)}
    />
  );
  const choice = (name: Choice, words: Readonly<Record<string, string>>) => (
    <ChoiceBox
      id={`${id}-${name}`}
      label={whyLabels[name]}
      value={state[name]}
      options={optionsOf(words)}
      onType={(text) => desk.type(name, text)}
    />
  );
  const isLate = is !== 'fresh';
  return (
    <Frame
      tall
      desk={desk}
      id={id}
      address="/calculators/why-it-healed-this-way/"
      says={whySays(result, state.error)}
      given={whyOnPaper(state, [
        ...bottleIds.map((bottle) => ({ name: bottleWords[bottle], count: state[bottle] })),
        ...ownSlots.map((slot) => ({ name: mine(slot) ?? nameOf(slot), count: state[slot] })),
      ])}
      caution={whyCaution(result)}
      missing={is === 'missing' && 'The colour model'}
      picture={
        result.ok && (
          <>
            <HealingMapPlot
              label={mapLabel(result)}
              rows={result.set.rows}
              doses={result.doses}
              nearest={result.nearest}
              plan={result.plan}
              isLate={isLate}
            />
            <p class="card-key plain">
              Large square: fits with the loss as assumed. Small square: fits with another loss only. Ring:
              nearest to what was read. Cross: the plan.
            </p>
            {result.dates.map(({ age, seen, planned, nearest }, i) => (
              <SwatchRow
                key={i}
                label={`Swatches on a grey card, ${ageWords[age]}`}
                against={seen}
                isLate={isLate}
                swatches={[
                  { name: 'before', lab: result.before },
                  { name: 'read', lab: seen },
                  { name: 'planned', lab: planned },
                  { name: 'nearest', lab: nearest },
                ]}
              />
            ))}
            <p class="card-key plain">
              Read at {result.dates.map(({ age }) => ageWords[age]).join(', then at ')}. What was read lies
              along the foot of the others. Under each: L*, then a* and b*.
            </p>
          </>
        )
      }
      side={
        <>
          <fieldset class="drops three">
            <legend>What was read on the healed work</legend>
            {number('healedL')}
            {number('healedA')}
            {number('healedB')}
          </fieldset>
          {number('error', '', 'How far a reading may be off, as a colour difference.')}
          <div class="two">
            {choice('age', ageWords)}
            {choice('second', { none: 'none', ...ageWords })}
          </div>
          {state.second !== 'none' && (
            <fieldset class="drops three">
              <legend>What was read then</legend>
              {number('secondL')}
              {number('secondA')}
              {number('secondB')}
            </fieldset>
          )}
          <fieldset class="drops three">
            <legend>The skin before the work</legend>
            {number('skinL')}
            {number('skinA')}
            {number('skinB')}
          </fieldset>
          {choice('oldWork', oldWorkWords)}
          <div class="two">
            {number('coverage', '%')}
            {number('depth', 'mm')}
          </div>
          <fieldset class="drops three">
            <legend>Doses</legend>
            {number('dose')}
            {number('doseLo')}
            {number('doseHi')}
          </fieldset>
          <fieldset class="drops">
            <legend>Drops of each bottle that was used</legend>
            {bottleIds.map((bottle) => number(bottle))}
            {ownSlots.map(
              (slot) =>
                (mine(slot) !== undefined || state[slot] > 0) && number(slot, '', undefined, mine(slot)),
            )}
          </fieldset>
        </>
      }
    >
      {room}
      {result.ok && (
        <>
          <p class="calc-tools no-print">
            <a class="btn text" href={mixAddress(state)}>
              Open this mix in Mix by drops
            </a>
          </p>
          {is !== 'missing' && (
            <details class="fold numbers">
              <summary>The map as a table</summary>
              <div class="tables">
                <table class="meas trust">
                  <caption>What fits at each depth of the model</caption>
                  <thead>
                    <tr>
                      <th scope="col">Depth, mm</th>
                      <th scope="col">Doses that fit</th>
                      <th scope="col">Times the assumed loss</th>
                      <th scope="col" class="d">
                        Nearest, difference
                      </th>
                    </tr>
                  </thead>
                  <tbody>
                    {result.set.rows.map(({ depthMm, doses, losses, difference }) => (
                      <tr key={depthMm}>
                        <th scope="row">{fixed(depthMm, 2)}</th>
                        <td>{doses ? endsWords(doses) : 'none'}</td>
                        <td>{losses ? endsWords(losses) : ''}</td>
                        <td class="d">{fixed(difference)}</td>
                      </tr>
                    ))}
                  </tbody>
                </table>
              </div>
            </details>
          )}
        </>
      )}
    </Frame>
  );
}
