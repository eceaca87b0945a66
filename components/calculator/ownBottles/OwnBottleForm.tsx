import { bottleName, longestBottleName } from '#calculators/bottleName.ts';
import { labLimits, mostParts, mostTintDrops } from '#calculators/ownLimits.ts';
import { readWithin } from '#calculators/readWithin.ts';
import type { Limits } from '#calculators/spec.ts';
import type { Lab } from '#lib/colour/spaces/lab.ts';
import { finishes, type Finish } from '#lib/colour/own/calibrateSwatches.ts';
import { type OwnBottle, type OwnContent, readyBottle } from '#lib/colour/own/ownBottle.ts';
import type { OwnSlot } from '#lib/colour/own/ownSlots.ts';
import { pigmentIds, type PigmentId } from '#lib/colour/pigment/pigments.ts';
import {
  finishWords,
  fromWords,
  labName,
  ownRefusal,
  ownWords,
  pigmentWords,
  sumWords,
} from '#words/ownBottles.ts';
import { refusalSentence } from '#words/refusal.ts';
import { useState } from 'preact/hooks';
import { ChoiceBox } from '../fields/ChoiceBox.tsx';
import { NumberBox } from '../fields/NumberBox.tsx';

type From = OwnContent['from'];
type Texts = Readonly<Record<string, string>>;

const axes = ['l', 'a', 'b'] as const;
const swatchesOf = {
  swatch: [['swatch', 'The swatch']],
  'two-swatches': [
    ['masstone', 'The bottle alone'],
    ['tint', 'With white'],
  ],
  shares: [],
} as const satisfies Readonly<Record<From, readonly (readonly [string, string])[]>>;
const partLimits: Limits = { unit: '1', lo: 0, hi: mostParts };
const dropLimits: Limits = { unit: '1', lo: 1, hi: mostTintDrops };
const optionsOf = (words: Readonly<Record<string, string>>) =>
  Object.entries(words).map(([value, label]) => ({ value, label }));
const isFrom = (text: string): text is From => Object.hasOwn(fromWords, text);
const isFinish = (text: string): text is Finish => finishes.some((finish) => finish === text);

/** A form for one more bottle. What is wrong stands at its field; a good one is handed on. */
export function OwnBottleForm({
  id,
  slot,
  onAdd,
}: Readonly<{ id: string; slot: OwnSlot; onAdd: (own: OwnBottle) => void }>) {
  const [name, setName] = useState('');
  const [from, setFrom] = useState<From>('shares');
  const [finish, setFinish] = useState<Finish>('matt');
  const [texts, setTexts] = useState<Texts>({ drops: '1', whiteDrops: '4' });
  const [errors, setErrors] = useState<Texts>({});

  const type = (key: string, text: string) => {
    setTexts((all) => ({ ...all, [key]: text }));
    setErrors(({ [key]: _, ...rest }) => rest);
  };
  const box = (key: string, label: string) => (
    <NumberBox
      key={key}
      id={`${id}-${key}`}
      label={label}
      unit=""
      shown={texts[key] ?? ''}
      refused={errors[key] ? { text: texts[key] ?? '', sentence: errors[key] } : undefined}
      onType={(text) => type(key, text)}
    />
  );
  const partOf = (pigment: PigmentId) => readWithin(texts[pigment]?.trim() || '0', partLimits);
  const whole = pigmentIds.reduce((sum, pigment) => {
    const read = partOf(pigment);
    return sum + (read.ok ? read.value : 0);
  }, 0);

  const add = () => {
    const wrong: Record<string, string> = {};
    const number = (key: string, label: string, limits: Limits, text = texts[key] ?? ''): number => {
      const read = readWithin(text, limits);
      if (!read.ok) wrong[key] = refusalSentence(label, read.refusal);
      return read.ok ? read.value : NaN;
    };
    const lab = (swatch: string): Lab => ({
      l: number(`${swatch}-l`, 'L*', labLimits.l),
      a: number(`${swatch}-a`, 'a*', labLimits.a),
      b: number(`${swatch}-b`, 'b*', labLimits.b),
    });
    const part = (pigment: PigmentId) =>
      number(pigment, pigmentWords[pigment], partLimits, texts[pigment]?.trim() || '0');
    const content: OwnContent =
      from === 'shares'
        ? {
            from,
            parts: {
              '77891': part('77891'),
              '77492': part('77492'),
              '77491': part('77491'),
              '77499': part('77499'),
              '77266': part('77266'),
            },
          }
        : from === 'swatch'
          ? { from, lab: lab('swatch'), finish }
          : {
              from,
              masstone: lab('masstone'),
              tint: lab('tint'),
              drops: number('drops', 'Drops of the bottle', dropLimits),
              whiteDrops: number('whiteDrops', 'Drops of white', dropLimits),
              finish,
            };
    const kept = bottleName(name);
    if (!kept) wrong['name'] = ownWords.noName;
    else if ([...name.trim()].length > longestBottleName) wrong['name'] = ownWords.longName;
    if (Object.keys(wrong).length === 0) {
      const ready = readyBottle({ slot, content });
      if (!ready.ok)
        wrong[
          { shares: 'sum', swatch: 'swatch-l', masstone: 'masstone-l', tint: 'tint-l', drops: 'drops' }[
            ready.at
          ]
        ] = ownRefusal(ready.reason);
      else if (kept) {
        onAdd({ slot, name: kept, content });
        setName('');
        setTexts({ drops: '1', whiteDrops: '4' });
      }
    }
    setErrors(wrong);
  };

  return (
    <fieldset class="own-form">
      <legend>{ownWords.one}</legend>
      <div class="field">
        <label for={`${id}-name`}>{ownWords.name}</label>
        <input
          class="in"
          id={`${id}-name`}
          type="text"
          autocomplete="off"
          value={name}
          maxLength={80}
          aria-invalid={errors['name'] ? true : undefined}
          aria-describedby={`${id}-name-hint${errors['name'] ? ` ${id}-name-error` : ''}`}
          onInput={({ currentTarget }) => setName(currentTarget.value)}
        />
        <p class="hint" id={`${id}-name-hint`}>
          {ownWords.nameHint}
        </p>
        {errors['name'] && (
          <p class="field-error" id={`${id}-name-error`} role="alert">
            {errors['name']}
          </p>
        )}
      </div>
      <ChoiceBox
        id={`${id}-from`}
        label={ownWords.known}
        value={from}
        options={optionsOf(fromWords)}
        onType={(text) => isFrom(text) && setFrom(text)}
      />
      {from === 'shares' && (
        <>
          <fieldset class="drops">
            <legend>Parts, or per cent</legend>
            {pigmentIds.map((pigment) => box(pigment, pigmentWords[pigment]))}
          </fieldset>
          <p role="status">{sumWords(whole)}</p>
          {errors['sum'] && (
            <p class="field-error" role="alert">
              {errors['sum']}
            </p>
          )}
        </>
      )}
      {swatchesOf[from].map(([key, label]) => (
        <fieldset key={key} class="drops three">
          <legend>{label}</legend>
          {axes.map((axis) => box(`${key}-${axis}`, labName[axis]))}
        </fieldset>
      ))}
      {from === 'two-swatches' && (
        <div class="two">
          {box('drops', 'Drops of the bottle')}
          {box('whiteDrops', 'Drops of white with it')}
        </div>
      )}
      {from !== 'shares' && (
        <ChoiceBox
          id={`${id}-finish`}
          label="The swatch is"
          value={finish}
          options={optionsOf(finishWords)}
          hint="Under daylight, too thick to see through. Blues and violets cannot be told from a swatch."
          onType={(text) => isFinish(text) && setFinish(text)}
        />
      )}
      <button class="btn" type="button" onClick={add}>
        {ownWords.add}
      </button>
    </fieldset>
  );
}
