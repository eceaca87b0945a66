import { mixAddress } from '#calculators/mixLink.ts';
import { strokesAndDots, type StrokesAndDotsState } from '#calculators/strokesAndDots.ts';
import { StrokesOnPaper } from '#components/pictures/StrokesOnPaper.tsx';
import {
  madeOnPaper,
  madeWords,
  percent,
  strokeLabels,
  strokesCaution,
  strokesSays,
} from '#words/strokesAndDots.ts';
import type { ComponentChildren } from 'preact';
import { ChoiceBox } from '../fields/ChoiceBox.tsx';
import { Frame } from '../frame/Frame.tsx';
import { NumberBox } from '../fields/NumberBox.tsx';
import { useCalculator } from '../frame/useCalculator.ts';

type Key = Exclude<keyof StrokesAndDotsState, 'made'>;
const isLabel = (key: string): key is keyof typeof strokeLabels => Object.hasOwn(strokeLabels, key);
const nameOf = (key: string) => (isLabel(key) ? strokeLabels[key] : key);
const options = (['apart', 'crossing', 'dots'] as const).map((value) => ({ value, label: madeWords[value] }));
const unitOf = (key: Key) =>
  key.startsWith('area') ? 'mm²' : key.startsWith('count') || key.startsWith('dots') ? '' : 'mm';

/** Strokes and dots: the island. The paper is made at build. */
export function StrokesAndDots({
  id = 'cover',
  children,
}: Readonly<{ id?: string; children?: ComponentChildren }>) {
  const desk = useCalculator(strokesAndDots, nameOf);
  const { state, result } = desk;
  const isDots = state.made === 'dots';
  const box = (key: Key) => (
    <NumberBox
      key={key}
      id={`${id}-${key}`}
      label={strokeLabels[key]}
      unit={unitOf(key)}
      shown={String(state[key])}
      refused={desk.draft(key)}
      onType={(text) => desk.type(key, text)}
    />
  );
  const slide = (key: Key, lo: number, hi: number) => {
    const { control } = strokesAndDots.fields[key];
    const step = control.kind === 'number' ? control.step : 1;
    return (
      <div class="slide-number" key={key}>
        {box(key)}
        <div>
          <input
            type="range"
            min={lo}
            max={hi}
            step={step}
            value={state[key]}
            aria-label={`${strokeLabels[key]}, slide`}
            aria-valuetext={`${state[key]} ${unitOf(key)}`}
            onInput={({ currentTarget }) => desk.type(key, currentTarget.value)}
          />
          <div class="ends" aria-hidden="true">
            <span>{lo}</span>
            <span>{hi}</span>
          </div>
        </div>
      </div>
    );
  };
  return (
    <Frame
      tall
      desk={desk}
      id={id}
      address="/calculators/strokes-and-dots/"
      says={strokesSays(result, state)}
      given={madeOnPaper(state)}
      caution={strokesCaution(result)}
      picture={
        <div class="stack">
          <div class="still" aria-hidden="true">
            {children}
          </div>
          <StrokesOnPaper
            id={id}
            made={state.made}
            count={Math.round(state.count)}
            lengthMm={state.length}
            areaMm2={state.area}
            perMm2={state.dots}
            freshMm={isDots ? state.dot : state.width}
            spreadMm={isDots ? state.dotSpread : state.spread}
            {...result}
          />
        </div>
      }
      side={
        <>
          <ChoiceBox
            id={`${id}-made`}
            label={strokeLabels.made}
            value={state.made}
            options={options}
            onType={(text) => desk.type('made', text)}
          />
          {isDots ? slide('dots', 1, 20) : slide('count', 10, 150)}
          {isDots ? slide('dotSpread', 0.1, 0.6) : slide('spread', 0.1, 0.6)}
          <div class="two">{isDots ? [box('dot'), box('area')] : [box('width'), box('length')]}</div>
          <details class="fold">
            <summary>{isDots ? 'Give or take' : 'Area, and give or take'}</summary>
            <div class="fold-in">
              {!isDots && box('area')}
              <p class="hint">How far off each number may be, in 95 of 100 cases.</p>
              <div class="two">
                {(isDots
                  ? (['dotsOff', 'widthOff', 'spreadOff'] as const)
                  : (['countOff', 'lengthOff', 'widthOff', 'spreadOff', 'areaOff'] as const)
                ).map(box)}
              </div>
            </div>
          </details>
        </>
      }
    >
      <p class="says-next no-print">
        What colour does that give? Mix by drops with{' '}
        <a href={mixAddress(result.fresh.share)}>{percent(result.fresh.share)} covered</a> or with{' '}
        <a href={mixAddress(result.spread.share)}>{percent(result.spread.share)}</a>.
      </p>
    </Frame>
  );
}
