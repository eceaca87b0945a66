import { skinReading, type SkinReadingState } from '#calculators/skinReading.ts';
import { SkinGrid } from '#components/pictures/SkinGrid.tsx';
import { gridChroma, swatchLab } from '#components/pictures/skinGrid.ts';
import { onDemand } from '#components/site/onDemand.ts';
import { hueDeg } from '#lib/colour/spaces/lch.ts';
import type { Plausibility } from '#lib/colour/reading/skinPlausibility.ts';
import { notFetched } from '#words/fetching.ts';
import { fixed } from '#words/number.ts';
import {
  cannotSay,
  countWords,
  skinReadingCaution,
  skinReadingRows,
  skinReadingSays,
  skinOnPaper,
  touchWords,
} from '#words/skinReading.ts';
import { useEffect, useRef, useState } from 'preact/hooks';
import { ChoiceBox } from '../fields/ChoiceBox.tsx';
import { Frame } from '../frame/Frame.tsx';
import { NumberBox } from '../fields/NumberBox.tsx';
import { useCalculator } from '../frame/useCalculator.ts';

const numberOf = ['First', 'Second', 'Third'] as const;
const rows = [
  ['l1', 'a1', 'b1'],
  ['l2', 'a2', 'b2'],
  ['l3', 'a3', 'b3'],
] as const;
const short = { l: 'Lightness L*', a: 'Red a*', b: 'Yellow b*' } as const;
const isAxis = (text: string): text is keyof typeof short => Object.hasOwn(short, text);
const others = { count: 'Readings', touch: 'Read before wiping, drawing or numbing?' } as const;

function nameOf(key: string): string {
  const [axis = '', place = ''] = key;
  if (isAxis(axis)) return `${short[axis]}, ${(numberOf[Number(place) - 1] ?? '').toLowerCase()} reading`;
  return key === 'count' || key === 'touch' ? others[key] : key;
}
const optionsOf = (words: Readonly<Record<string, string>>) =>
  Object.entries(words).map(([value, label]) => ({ value, label }));

const fetchSkins = onDemand(() => import('#lib/colour/reading/skinPlausibility.ts'));

/**
 * The skin model is large: from the first change on it is asked whether the first reading is like the
 * measured skins.
 */
function usePlausible(state: SkinReadingState): Plausibility | 'unasked' {
  const [answer, setAnswer] = useState<Plausibility | 'unasked'>('like-the-measured');
  const first = useRef(state);
  const { l1: l, a1: a, b1: b } = state;
  useEffect(() => {
    if (state === first.current) return;
    let isPast = false;
    fetchSkins().then(
      ({ skinPlausibility }) => isPast || setAnswer(skinPlausibility({ l, a, b })),
      () => isPast || setAnswer('unasked'),
    );
    return () => {
      isPast = true;
    };
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- of the state only the first reading counts.
  }, [l, a, b]);
  return answer;
}

/** Skin reading: the island. */
export function SkinReading({ id = 'skin' }: Readonly<{ id?: string }>) {
  const desk = useCalculator(skinReading, nameOf);
  const { state, result } = desk;
  const plausible = usePlausible(state);
  const { reading } = result;
  const count = Number(state.count);
  const readings = rows.slice(0, count).map(([l, a, b]) => ({ l: state[l], a: state[a], b: state[b] }));
  const hue = hueDeg(state.a1, state.b1);
  const put = (l: number, hDeg: number, chroma: number) => {
    const lab = swatchLab(l, hDeg, chroma);
    desk.type('l1', String(l));
    desk.type('a1', String(lab.a));
    desk.type('b1', String(lab.b));
  };
  const slide = (
    part: 'l' | 'h',
    label: string,
    value: number,
    lo: number,
    hi: number,
    step: string,
    on: (value: number) => void,
  ) => (
    <div class="field">
      <label for={`${id}-slide-${part}`}>{label}</label>
      <input
        id={`${id}-slide-${part}`}
        type="range"
        min={lo}
        max={hi}
        step={step}
        value={value}
        aria-valuetext={`${fixed(value)}${part === 'h' ? ' degrees' : ''}`}
        onInput={({ currentTarget }) => on(Number(currentTarget.value))}
      />
    </div>
  );
  return (
    <Frame
      tall
      desk={desk}
      id={id}
      address="/calculators/skin-reading/"
      says={skinReadingSays(result)}
      given={skinOnPaper(readings, state.touch)}
      caution={
        plausible === 'unasked'
          ? [
              notFetched('What compares it with measured skins'),
              skinReadingCaution(result, state.touch, 'like-the-measured'),
            ]
              .filter(Boolean)
              .join(' ')
          : skinReadingCaution(result, state.touch, plausible)
      }
      picture={
        <>
          <SkinGrid
            readings={readings}
            doubt={
              reading.ok
                ? {
                    l: reading.box.l,
                    hue: reading.hue,
                    mean: { l: reading.box.l.value, a: reading.box.a.value, b: reading.box.b.value },
                  }
                : undefined
            }
            onPick={(l, hDeg) => put(l, hDeg, gridChroma)}
          />
          <p class="card-key plain">
            Ring: a reading. Frame: what it may be. Broken lines: edges of the classes.{' '}
            <span class="no-print">Tap the swatch that looks like the skin beside the brow.</span>
          </p>
        </>
      }
      side={
        <>
          {slide('l', 'Slide the lightness', state.l1, 20, 85, '0.5', (value) =>
            desk.type('l1', String(value)),
          )}
          {slide('h', 'Slide the hue angle', Math.round(hue * 2) / 2, 40, 80, '0.5', (value) =>
            put(state.l1, value, Math.hypot(state.a1, state.b1)),
          )}
          <ChoiceBox
            id={`${id}-touch`}
            label={others.touch}
            value={state.touch}
            options={optionsOf(touchWords)}
            onType={(text) => desk.type('touch', text)}
          />
          <ChoiceBox
            id={`${id}-count`}
            label={others.count}
            value={state.count}
            options={optionsOf(countWords)}
            onType={(text) => desk.type('count', text)}
          />
          {rows.slice(0, count).map((names, i) => (
            <fieldset key={i} class="drops three">
              <legend>{numberOf[i]} reading</legend>
              {names.map((name) => {
                const axis = name.charAt(0);
                return (
                  <NumberBox
                    key={name}
                    id={`${id}-${name}`}
                    label={isAxis(axis) ? short[axis] : name}
                    unit=""
                    shown={String(state[name])}
                    refused={desk.draft(name)}
                    onType={(text) => desk.type(name, text)}
                  />
                );
              })}
            </fieldset>
          ))}
        </>
      }
    >
      <details class="fold numbers">
        <summary>All numbers, and what they cannot say</summary>
        <div class="tables">
          <table class="meas trust">
            <caption>The skin as read</caption>
            <thead>
              <tr>
                <th scope="col">What</th>
                <th scope="col">Mean</th>
                <th scope="col">Between</th>
              </tr>
            </thead>
            <tbody>
              {skinReadingRows(reading).map(({ name, value, between }) => (
                <tr key={name}>
                  <th scope="row">{name}</th>
                  <td>{value}</td>
                  <td>{between}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <ul>
            {cannotSay.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </div>
      </details>
    </Frame>
  );
}
