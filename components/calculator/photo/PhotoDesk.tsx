import { readWithin } from '#calculators/readWithin.ts';
import type { Limits } from '#calculators/spec.ts';
import { Icon } from '#components/site/Icon.tsx';
import { cautionIcon } from '#components/site/icons.ts';
import { readingValues } from '#lib/colour/numbers/reading.ts';
import { photoOnPaper, photoWords as words } from '#words/photoDesk.ts';
import { refusalSentence } from '#words/refusal.ts';
import { useEffect, useRef, useState } from 'preact/hooks';
import { ChoiceBox } from '../fields/ChoiceBox.tsx';
import { NumberBox } from '../fields/NumberBox.tsx';
import { SlideNumber } from '../fields/SlideNumber.tsx';
import { rounded, type Draft } from '../frame/useCalculator.ts';
import { photoAsker, type PhotoAsker } from './askPhoto.ts';
import { edgeDots, type Place, squareOf } from './dotsOf.ts';
import { PhotoStage, type Target, targets } from './PhotoStage.tsx';
import type { Told } from './tellPhoto.ts';

const percent: Limits = { unit: '%', lo: 0, hi: 100 };
const sizes: Limits = { unit: '%', lo: 1, hi: 20 };
const reflections: Limits = { unit: '%', lo: 3, hi: 99 };
const held = (value: number) => rounded(Math.min(100, Math.max(0, value)), 1);
const options = targets.map((value) => ({ value, label: words[value] }));

/**
 * A skin read from the reader's own picture by the grey card in it. The dots live as long as this is shown.
 */
export function PhotoDesk({ picture }: Readonly<{ picture: ImageBitmap }>) {
  const [places, setPlaces] = useState<Readonly<Record<Target, Place>>>({
    card: { x: 25, y: 50 },
    skin: { x: 75, y: 50 },
  });
  const [placed, setPlaced] = useState<Readonly<Record<Target, boolean>>>({ card: false, skin: false });
  const [active, setActive] = useState<Target>('card');
  const [size, setSize] = useState(6);
  const [reflects, setReflects] = useState(100 * readingValues.usualCard);
  const [drafts, setDrafts] = useState<Readonly<Record<string, Draft>>>({});
  useEffect(() => () => picture.close(), [picture]);

  const move = (target: Target, to: (from: Place) => Place) => {
    setPlaces((old) => {
      const { x, y } = to(old[target]);
      return { ...old, [target]: { x: held(x), y: held(y) } };
    });
    setPlaced((old) => ({ ...old, [target]: true }));
    setDrafts({});
  };
  const tap = (target: Target, to: Place) => {
    move(target, () => to);
    if (target === 'card' && !placed.skin) setActive('skin');
  };
  const typed = (slot: string, label: string, text: string, limits: Limits, put: (value: number) => void) => {
    const read = readWithin(text, limits);
    setDrafts(({ [slot]: _, ...rest }) =>
      read.ok ? rest : { ...rest, [slot]: { text, sentence: refusalSentence(label, read.refusal) } },
    );
    if (read.ok) put(read.value);
  };

  const asker = useRef<PhotoAsker | undefined>(undefined);
  const [told, setTold] = useState<Told>();
  useEffect(() => {
    asker.current = photoAsker(setTold, () =>
      setTold({ answer: words.notReady, doubt: '', rows: [], cannot: [] }),
    );
    return () => asker.current?.stop();
  }, []);
  useEffect(() => {
    const edge = edgeDots(picture, size);
    asker.current?.ask({
      card: placed.card ? squareOf(picture, places.card, edge) : undefined,
      skin: placed.skin ? squareOf(picture, places.skin, edge) : undefined,
      reflects,
    });
  }, [picture, places, placed, size, reflects]);
  const axisBox = (target: Target, axis: 'x' | 'y') => (
    <NumberBox
      key={axis}
      id={`photo-${target}-${axis}`}
      label={axis === 'x' ? words.across : words.down}
      unit="%"
      shown={String(places[target][axis])}
      refused={drafts[`${target}.${axis}`]}
      onType={(text) =>
        typed(`${target}.${axis}`, axis === 'x' ? words.across : words.down, text, percent, (value) =>
          move(target, (from) => ({ ...from, [axis]: value })),
        )
      }
    />
  );
  return (
    <div class="calculator photo">
      <div class="fig tall">
        <div class="pic">
          <PhotoStage
            picture={picture}
            places={places}
            placed={placed}
            active={active}
            size={size}
            onMove={tap}
            onStep={(target, across, down) => move(target, ({ x, y }) => ({ x: x + across, y: y + down }))}
            onPick={setActive}
          />
        </div>
        <div class="side no-print">
          <ChoiceBox
            id="photo-tap"
            label={words.tap}
            value={active}
            options={options}
            hint={words.hint}
            onType={(text) => setActive(text === 'skin' ? 'skin' : 'card')}
          />
          {targets.map((target) => (
            <fieldset key={target} class="drops">
              <legend>{words[target]}</legend>
              {axisBox(target, 'x')}
              {axisBox(target, 'y')}
            </fieldset>
          ))}
          <SlideNumber
            id="photo-size"
            label={words.side}
            unit="%"
            value={size}
            shown={String(size)}
            lo={sizes.lo}
            hi={sizes.hi}
            step={0.5}
            ends={['small', 'large']}
            refused={drafts['size']}
            onType={(text) => typed('size', words.side, text, sizes, setSize)}
          />
          <NumberBox
            id="photo-reflects"
            label={words.reflects}
            unit="%"
            shown={String(reflects)}
            hint={words.reflectsHint}
            refused={drafts['reflects']}
            onType={(text) => typed('reflects', words.reflects, text, reflections, setReflects)}
          />
        </div>
        <p class="on-paper plain small">{photoOnPaper(reflects, size)}</p>
        <div class="says" role="status">
          {told && (
            <p>
              <b>{told.answer}</b> {told.doubt}
            </p>
          )}
          {told?.angles && <p>{told.angles}</p>}
          {told?.uneven && (
            <p class="says-caution">
              <Icon of={cautionIcon} /> {told.uneven}
            </p>
          )}
        </div>
      </div>
      {told && told.rows.length > 0 && (
        <div class="tables">
          <table class="meas trust">
            <caption>The skin of your picture</caption>
            <thead>
              <tr>
                <th scope="col">What</th>
                <th scope="col">Read</th>
                <th scope="col">Between</th>
              </tr>
            </thead>
            <tbody>
              {told.rows.map(({ name, value, between }) => (
                <tr key={name}>
                  <th scope="row">{name}</th>
                  <td>{value}</td>
                  <td>{between}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <div class="words">
            <p class="plain">
              <b>What a photo cannot say</b>
            </p>
            <ul>
              {told.cannot.map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
            </ul>
          </div>
        </div>
      )}
    </div>
  );
}
