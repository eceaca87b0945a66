import { archPlacement, type ArchPlacementState } from '#calculators/archPlacement.ts';
import { ArchOverlay } from '#components/pictures/ArchOverlay.tsx';
import { archLabels, archRuleWords, archSays } from '#words/archPlacement.ts';
import { archRules } from '#lib/mapping/placing/archRules.ts';
import { fixed } from '#words/number.ts';
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { ArchTable } from './ArchTable.tsx';
import { archView } from './archView.ts';
import { ChoiceBox } from '../fields/ChoiceBox.tsx';
import { Frame } from '../frame/Frame.tsx';
import { MarkStage } from '../fields/MarkStage.tsx';
import { NumberBox } from '../fields/NumberBox.tsx';
import { useCalculator } from '../frame/useCalculator.ts';

type Name = Exclude<keyof ArchPlacementState, 'rule'>;
type Handle = Exclude<Name, 'iris'>;
/** Heights at which the handles stand, on the client's left; only their distance from the midline counts. */
const handles = {
  front: 11.4,
  share: 21.2,
  tail: 14,
  inner: -1,
  pupil: 0,
  outer: 1.6,
} as const satisfies Readonly<Record<Handle, number>>;
const isHandle = (key: string): key is Handle => Object.hasOwn(handles, key);
const nameOf = (key: string) => Object.entries(archLabels).find(([name]) => name === key)?.[1] ?? key;
const marks = Object.keys(handles).map((value) => ({ value, label: nameOf(value) }));
const options = archRules.map((value, i) => ({ value, label: `${i + 1}. ${archRuleWords[value]}` }));

/** Ratio placement of the arch: the island. The still face comes in as children, drawn at build. */
export function ArchPlacement({
  id = 'arch',
  open = false,
  legend,
  children,
}: Readonly<{ id?: string; open?: boolean; legend?: ComponentChildren; children?: ComponentChildren }>) {
  const desk = useCalculator(archPlacement, nameOf);
  const { state, result } = desk;
  const [active, setActive] = useState<Handle>('share');
  const pick = (key: string) => isHandle(key) && setActive(key);
  const lengthMm = state.tail - state.front;
  const placeOf = (key: Handle) =>
    key === 'share' ? state.front + (state.share / 100) * lengthMm : state[key];
  /** The share moves by millimetres in the picture. */
  const move = (key: Handle, mm: number) =>
    desk.slideTo(key, key === 'share' ? ((mm - state.front) / lengthMm) * 100 : mm);
  const step = (byMm: number) => desk.slideBy(active, active === 'share' ? (byMm / lengthMm) * 100 : byMm);
  const box = (name: Name, unit = 'mm') => (
    <NumberBox
      key={name}
      id={`${id}-${name}`}
      label={archLabels[name]}
      unit={unit}
      shown={fixed(state[name])}
      refused={desk.draft(name)}
      onType={(text) => desk.type(name, text)}
    />
  );
  const shown = { chosen: state.rule, frontMm: state.front, tailMm: state.tail };
  return (
    <Frame
      pulled
      desk={desk}
      id={id}
      address="/calculators/arch-placement/"
      says={archSays(result, state)}
      picture={
        <>
          <div class="stack">
            <div class="still" aria-hidden="true">
              {children}
            </div>
            <MarkStage
              view={archView}
              label="Both brows on millimetre paper, one upright line for each rule, the same on both sides"
              marks={Object.entries(handles).flatMap(([key, yMm]) =>
                isHandle(key) ? [{ key, point: { xMm: placeOf(key), yMm } }] : [],
              )}
              active={active}
              activeLabel={`${nameOf(active)}: ${fixed(placeOf(active))} millimetres from the midline. Arrow keys move it in and out.`}
              hold={desk.hold}
              onPick={pick}
              onMove={(key, { xMm }) => isHandle(key) && move(key, xMm)}
              onStep={(_, { xMm }) => xMm !== 0 && step(xMm)}
            >
              {result.ok && <ArchOverlay places={result.places} {...shown} />}
            </MarkStage>
          </div>
          {legend}
        </>
      }
      side={
        <>
          <ChoiceBox
            id={`${id}-rule`}
            label={archLabels.rule}
            value={state.rule}
            options={options}
            onType={(text) => desk.type('rule', text)}
          />
          <div class="field">
            <label for={`${id}-slide`}>Slide your own share</label>
            <input
              id={`${id}-slide`}
              type="range"
              min="30"
              max="90"
              step="0.1"
              value={state.share}
              aria-valuetext={`${fixed(state.share)} per cent of the length`}
              onInput={({ currentTarget }) => desk.type('share', currentTarget.value)}
            />
            <div class="ends" aria-hidden="true">
              <span>30 %</span>
              <span>90 %</span>
            </div>
          </div>
          {box('share', '%')}
          <div class="mark-two">
            {box('front')}
            {box('tail')}
          </div>
          <ChoiceBox id={`${id}-mark`} label="Mark to move" value={active} options={marks} onType={pick} />
          <div class="stepper">
            <button
              class="btn line"
              type="button"
              aria-label={`In 0.1 millimetres: ${nameOf(active)}`}
              onClick={() => step(-0.1)}
            >
              In 0.1
            </button>
            <button
              class="btn line"
              type="button"
              aria-label={`Out 0.1 millimetres: ${nameOf(active)}`}
              onClick={() => step(0.1)}
            >
              Out 0.1
            </button>
          </div>
          <details class="fold">
            <summary>Eye marks</summary>
            <div class="fold-in">
              {box('inner')}
              {box('pupil')}
              {box('outer')}
              {box('iris')}
            </div>
          </details>
        </>
      }
    >
      <details class="fold numbers" open={open}>
        <summary>All rules in numbers</summary>
        <div class="tables">{result.ok && <ArchTable places={result.places} {...shown} />}</div>
      </details>
    </Frame>
  );
}
