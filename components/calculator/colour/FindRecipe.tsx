import type { FindRecipe as Result } from '#calculators/findRecipe.ts';
import { dosesSearched, findRecipeFields, type FindRecipeState } from '#calculators/findRecipeFields.ts';
import { mixByDropsFields } from '#calculators/mixByDropsFields.ts';
import { DropsPlot } from '#components/pictures/DropsPlot.tsx';
import { SwatchRow } from '#components/pictures/SwatchRow.tsx';
import { bottleIds } from '#lib/colour/pigment/bottleIds.ts';
import {
  recipeCaution,
  recipeOnPaper,
  recipeToSay,
  recipeWords,
  searchingSays,
  searchingWords,
  shownRecipe,
  stoppedWords,
} from '#words/findRecipe.ts';
import { fixed } from '#words/number.ts';
import { onDemand } from '#components/site/onDemand.ts';
import { useMemo, useState } from 'preact/hooks';
import { Frame } from '../frame/Frame.tsx';
import { mendedNotice } from '../mendedNotice.tsx';
import { NumberBox } from '../fields/NumberBox.tsx';
import { SkinBoxes, skinLabels, type SkinName } from '../fields/SkinBoxes.tsx';
import { useCalculator } from '../frame/useCalculator.ts';
import { useKept } from '../lazy/useKept.ts';
import { useLater } from '../lazy/useLater.ts';
import { useOwn } from '../ownBottles/useOwn.tsx';

const labels = {
  ...skinLabels,
  targetL: 'Target L*',
  targetA: 'Target a*',
  targetB: 'Target b*',
  bottles: 'Bottles at most',
  drops: 'Drops at most',
  white: 'White at most',
  darker: 'Darker at most',
  lean: 'Hue lean at most',
} as const;
const isLabel = (key: string): key is keyof typeof labels => Object.hasOwn(labels, key);
const nameOf = (key: string) => (isLabel(key) ? labels[key] : key);

/** While it is being mended no recipe is named, only how near the recipes come: what is named is mixed. */
const mended = mendedNotice('find-a-recipe');

const dropsOf = (recipe: readonly number[]) => recipe.reduce((sum, drops) => sum + drops, 0);
const searcher = onDemand(() => import('../workers/askWorker.ts'));

/** The address of the mix page with this recipe in this skin. */
function mixAddress(
  recipe: readonly number[],
  dose: number,
  own: readonly string[],
  { skinL, skinA, skinB, oldWork, depth, coverage }: FindRecipeState,
): string {
  const query = new URLSearchParams(
    Object.entries({ skinL, skinA, skinB, oldWork, depth, coverage, dose }).map(([key, value]) => [
      key,
      String(value),
    ]),
  );
  bottleIds.forEach((id, i) => {
    if ((recipe[i] ?? 0) !== mixByDropsFields.fields[id].start) query.set(id, String(recipe[i] ?? 0));
  });
  own.forEach((slot, i) => {
    if ((recipe[bottleIds.length + i] ?? 0) > 0) query.set(slot, String(recipe[bottleIds.length + i]));
  });
  return `/calculators/mix-by-drops/?${query}`;
}

/** Find a recipe: the island. The first answer is made at build; later ones are searched beside the page. */
export function FindRecipe({
  id = 'recipe',
  start,
  own = false,
}: Readonly<{
  id?: string;
  start: Result;
  /** With bottles of one's own: on the calculator's page. */
  own?: boolean;
}>) {
  const desk = useCalculator(findRecipeFields, nameOf);
  const { state } = desk;
  const [searching, setSearching] = useState({ share: 0, isBeyond: false });
  const [stopped, setStopped] = useState<FindRecipeState>();
  const [round, setRound] = useState(0);
  const { shelf, room } = useOwn(own, id);
  // oxlint-disable-next-line react-hooks/exhaustive-deps -- a new round asks the same question again.
  const asked = useMemo(() => ({ state, shelf }), [state, shelf, round]);
  const { result, is } = useLater(asked, start, () =>
    searcher().then(({ askWorker }) => (next: typeof asked) => {
      setSearching({ share: 0, isBeyond: false });
      return askWorker(next, setSearching);
    }),
  );
  // Where it was not stopped by hand: a recipe for earlier numbers must not stand under these.
  const isMissing = is === 'missing' && stopped !== state;
  useKept(desk, isMissing);
  const stop = () => {
    setStopped(state);
    // Where it never came, nothing runs.
    searcher().then(
      ({ stopWorker }) => stopWorker(),
      () => undefined,
    );
  };
  const again = () => {
    setStopped(undefined);
    setRound(round + 1);
  };
  const number = (name: Exclude<keyof FindRecipeState, SkinName>, unit = '') => (
    <NumberBox
      key={name}
      id={`${id}-${name}`}
      label={labels[name]}
      unit={unit}
      shown={String(state[name])}
      refused={desk.draft(name)}
      onType={(text) => desk.type(name, text)}
    />
  );
  const names = result.ok
    ? result.own.map((slot) => shelf.find((bottle) => bottle.slot === slot)?.name ?? 'a bottle taken away')
    : [];
  const says = {
    fresh: recipeToSay(result, state.oldWork !== 'none', names),
    late: searchingSays(searching.isBeyond),
    missing: stoppedWords,
  }[is];
  const target = { l: state.targetL, a: state.targetA, b: state.targetB };
  const [soon, later] = result.ok ? result.simplest.colours : [];
  return (
    <Frame
      tall
      desk={desk}
      id={id}
      address="/calculators/find-a-recipe/"
      mended={mended}
      says={says}
      given={recipeOnPaper(
        state,
        dosesSearched,
        shelf.map(({ name }) => name),
      )}
      missing={isMissing && 'The search'}
      caution={is === 'fresh' && !mended ? recipeCaution(result) : undefined}
      picture={
        result.ok &&
        soon &&
        later && (
          <>
            <SwatchRow
              label="Swatches on a grey card"
              against={target}
              isLate={is !== 'fresh'}
              swatches={[
                { name: 'today', lab: result.today },
                { name: 'target', lab: target },
                { name: 'six weeks', lab: soon },
                { name: 'two years', lab: later },
              ]}
            />
            <p class="card-key plain">
              {shownRecipe(result.works)}, from arm’s length, with the target along the foot of each. Under
              each: L*, then a* and b*.
            </p>
            <DropsPlot
              nearest={result.byDrops.map(({ recipe, score }) => ({
                drops: dropsOf(recipe),
                difference: score,
              }))}
              ringedDrops={dropsOf(result.simplest.recipe)}
              goodBelow={result.goodBelow}
              reachedBelow={result.reachedBelow}
              isLate={is !== 'fresh'}
            />
            <p class="card-key plain drops-key">
              The nearest recipe for each number of drops.{' '}
              {mended
                ? 'Ring: as many drops as the simplest good one.'
                : 'Ring: as many drops as the recipe above.'}{' '}
              Grey: as good as the best.
            </p>
          </>
        )
      }
      side={
        <>
          <fieldset class="drops three">
            <legend>The colour she wants to see</legend>
            {number('targetL')}
            {number('targetA')}
            {number('targetB')}
          </fieldset>
          <SkinBoxes id={id} state={state} draft={desk.draft} onType={desk.type} />
          <fieldset class="drops three">
            <legend>What you would mix</legend>
            {number('bottles')}
            {number('drops')}
            {number('white', '%')}
          </fieldset>
          <fieldset class="drops">
            <legend>How far from the target, at both dates</legend>
            {number('darker', 'L*')}
            {number('lean', '°')}
          </fieldset>
        </>
      }
    >
      {is !== 'fresh' && (
        <p class="calc-tools no-print">
          {is === 'late' && (
            <label class="plain" for={`${id}-progress`}>
              {searchingWords(searching.share)}
            </label>
          )}
          {is === 'late' && <progress id={`${id}-progress`} max="1" value={searching.share} />}
          {/* One button for both, so that whoever stops by a key can go on by one. */}
          <button key="search" class="btn line" type="button" onClick={is === 'late' ? stop : again}>
            {is === 'late' ? 'Stop' : 'Search again'}
          </button>
        </p>
      )}
      {room}
      {result.ok && !isMissing && (
        <>
          {!mended && (
            <p class="calc-tools no-print">
              <a
                class="btn text"
                href={mixAddress(result.simplest.recipe, result.simplest.dose, result.own, state)}
              >
                Open this recipe in Mix by drops
              </a>
            </p>
          )}
          <details class="fold numbers" open>
            <summary>More drops, how much nearer?</summary>
            <div class="tables">
              <table class="meas trust recipes">
                <caption>The nearest recipe for each number of drops</caption>
                <thead>
                  <tr>
                    <th scope="col">Drops</th>
                    {!mended && (
                      <>
                        <th scope="col">Recipe</th>
                        <th scope="col" class="d">
                          Dose
                        </th>
                      </>
                    )}
                    <th scope="col" class="d">
                      Difference
                    </th>
                  </tr>
                </thead>
                <tbody>
                  {result.byDrops.map(({ recipe, dose, score }) => (
                    <tr key={recipe.join()}>
                      <th scope="row">{dropsOf(recipe)}</th>
                      {!mended && (
                        <>
                          <td>{recipeWords(recipe, names)}</td>
                          <td class="d">{fixed(dose, 2)}</td>
                        </>
                      )}
                      <td class="d">{fixed(score)}</td>
                    </tr>
                  ))}
                </tbody>
              </table>
            </div>
          </details>
        </>
      )}
    </Frame>
  );
}
