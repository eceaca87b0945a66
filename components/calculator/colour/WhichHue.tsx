import type { OwnHueMove } from '#calculators/ownHueMoves.ts';
import { hueRow, whichHue } from '#calculators/whichHue.ts';
import { hueBottles } from '#lib/colour/old/oldHueCases.ts';
import { onDemand } from '#components/site/onDemand.ts';
import { HuePlane } from '#components/practice/pictures/HuePlane.tsx';
import { notFetched } from '#words/fetching.ts';
import { fixed } from '#words/number.ts';
import {
  changeWords,
  hueNameOf,
  whichHueCaution,
  whichHueLabels,
  whichHueOnPaper,
  whichHueToSay,
  whichOldWords,
  whichSkinWords,
} from '#words/whichHue.ts';
import { useMemo } from 'preact/hooks';
import { ChoiceBox } from '../fields/ChoiceBox.tsx';
import { Frame } from '../frame/Frame.tsx';
import { mendedNotice } from '../mendedNotice.tsx';
import { useCalculator } from '../frame/useCalculator.ts';
import { useLater } from '../lazy/useLater.ts';
import { useOwn } from '../ownBottles/useOwn.tsx';

const nameOf = (key: string) => (key === 'skin' ? whichHueLabels.skin : whichHueLabels.old);
const model = onDemand(() => import('#calculators/ownHueMoves.ts'));
const optionsOf = (words: Readonly<Record<string, string>>) =>
  Object.entries(words).map(([value, label]) => ({ value, label }));
/**
 * While it is being mended no bottle is ranked: the rows stand as on the shelf, without a cosine, and the
 * picture holds no line of a bottle.
 */
const mended = mendedNotice('which-hue');
const shelved: readonly string[] = hueBottles;
const none: Readonly<{ of?: unknown; moves: readonly OwnHueMove[] }> = { moves: [] };

/**
 * Which bottle takes the old hue away: the island. The model is fetched only where somebody has bottles of
 * her own.
 */
export function WhichHue({
  id = 'hue',
  own = false,
}: Readonly<{ id?: string; /** With bottles of one's own: on the calculator's page. */ own?: boolean }>) {
  const desk = useCalculator(whichHue, nameOf);
  const result = whichHue.solve(desk.state);
  const { shown } = result;
  const { shelf, room } = useOwn(own, id);
  const asked = useMemo(() => ({ shown, shelf }), [shown, shelf]);
  const later = useLater(asked, none, async () => {
    if (shelf.length === 0) return () => none;
    const { ownHueMoves } = await model();
    return (next: typeof asked) => ({ of: next, moves: ownHueMoves(next.shown, next.shelf) });
  });
  // Rows of another case must not stand beside those of this one.
  const yours = (later.result.of === asked ? later.result.moves : none.moves)
    .map(({ id: bottle, move, hasSwatch }) => ({
      ...hueRow(shown, bottle, move),
      hasSwatch,
      name: shelf.find(({ slot }) => slot === bottle)?.name,
    }))
    .toSorted((one, other) => other.cosine - one.cosine);
  const [best] = yours;
  const palette = mended
    ? result.rows.toSorted((one, other) => shelved.indexOf(one.id) - shelved.indexOf(other.id))
    : result.rows;
  const rows = mended
    ? [...palette, ...yours]
    : [...palette, ...yours].toSorted((one, other) => other.cosine - one.cosine);
  const drawn = best ? [...result.rows, { ...best, id: 'yours' }] : result.rows;
  return (
    <Frame
      tall
      desk={desk}
      id={id}
      address="/calculators/which-hue/"
      mended={mended}
      says={whichHueToSay({ ...result, rows })}
      given={whichHueOnPaper(desk.state, shown.today)}
      caution={mended ? undefined : whichHueCaution(rows)}
      picture={
        <HuePlane
          given={{ skin: shown.skin, today: shown.today, bottles: mended ? [] : drawn }}
          at={id}
          right={1}
        />
      }
      side={
        <>
          <ChoiceBox
            id={`${id}-skin`}
            label={whichHueLabels.skin}
            value={desk.state.skin}
            options={optionsOf(whichSkinWords)}
            onType={(text) => desk.type('skin', text)}
          />
          <ChoiceBox
            id={`${id}-old`}
            label={whichHueLabels.old}
            value={desk.state.old}
            options={optionsOf(whichOldWords)}
            onType={(text) => desk.type('old', text)}
          />
        </>
      }
    >
      {room}
      {later.is === 'missing' && (
        <p class="plain" role="alert">
          {notFetched('What works out your own bottles')}
        </p>
      )}
      <div class="tables">
        <table class="meas trust">
          <caption>One small dose of each bottle, at six weeks</caption>
          <thead>
            <tr>
              <th scope="col">Bottle</th>
              {!mended && <th scope="col">Cosine</th>}
              <th scope="col">a*</th>
              <th scope="col">b*</th>
              <th scope="col">L*</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => {
              const [l, a, b] = row.move;
              return (
                <tr key={row.id}>
                  <th scope="row">{hueNameOf(row)}</th>
                  {!mended && <td>{fixed(row.cosine, 2)}</td>}
                  <td>{changeWords(a)}</td>
                  <td>{changeWords(b)}</td>
                  <td>{changeWords(l)}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
    </Frame>
  );
}
