import { levelLine } from '#calculators/levelLine.ts';
import { reachMm, TiltedThread } from '#components/pictures/TiltedThread.tsx';
import { archHeightMm, tiltedView } from '#components/pictures/tiltedView.ts';
import { levelLineSays } from '#words/levelLine.ts';
import { fixed } from '#words/number.ts';
import type { ComponentChildren } from 'preact';
import { Frame } from '../frame/Frame.tsx';
import { MarkStage } from '../fields/MarkStage.tsx';
import { NumberBox } from '../fields/NumberBox.tsx';
import { useCalculator } from '../frame/useCalculator.ts';

const labels = {
  tilt: 'Tilt of the line',
  span: 'From one point to the other',
  seen: 'Height difference you read',
  hands: 'Thread, from hand to hand',
  error: 'Your reading error',
  readings: 'Readings of each point',
} as const;
type Name = keyof typeof labels;
const units: Readonly<Record<Name, string>> = {
  tilt: '°',
  span: 'mm',
  seen: 'mm',
  hands: 'mm',
  error: 'mm',
  readings: '',
};
const isName = (key: string): key is Name => Object.hasOwn(labels, key);

/** A level line and its tilt: the island. The still face comes in as children, drawn at build. */
export function LevelLine({
  id = 'level',
  children,
}: Readonly<{ id?: string; children?: ComponentChildren }>) {
  const desk = useCalculator(levelLine, (key) => (isName(key) ? labels[key] : key));
  const { state, result } = desk;
  const turn = (state.tilt * Math.PI) / 180;
  const end = { xMm: reachMm * Math.cos(turn), yMm: archHeightMm + reachMm * Math.sin(turn) };
  const move = ({ xMm, yMm }: typeof end) =>
    desk.slideTo('tilt', (Math.atan2(yMm - archHeightMm, Math.max(1, xMm)) * 180) / Math.PI);
  const box = (name: Name) => (
    <NumberBox
      key={name}
      id={`${id}-${name}`}
      label={labels[name]}
      unit={units[name]}
      shown={String(state[name])}
      refused={desk.draft(name)}
      onType={(text) => desk.type(name, text)}
    />
  );
  return (
    <Frame
      pulled
      desk={desk}
      id={id}
      address="/calculators/level-line/"
      says={levelLineSays(result, state)}
      picture={
        <div class="stack">
          <div class="still" aria-hidden="true">
            {children}
          </div>
          <MarkStage
            view={tiltedView}
            label="Two equal brows, a thread over their arches, and below what the thread says about two level points"
            marks={[{ key: 'tilt', point: end }]}
            active="tilt"
            activeLabel={`End of the thread: ${fixed(state.tilt)} degrees off level. Arrow keys move it up and down.`}
            hold={desk.hold}
            onPick={() => undefined}
            onMove={(_, to) => move(to)}
            // A tenth of a millimetre by key is a tenth of a degree.
            onStep={(_, { yMm }) => yMm !== 0 && desk.slideBy('tilt', yMm)}
          >
            <TiltedThread tiltDeg={state.tilt} spanMm={state.span} fakedMm={result.fakedMm} />
          </MarkStage>
        </div>
      }
      side={
        <>
          {box('tilt')}
          <div class="stepper">
            <button
              class="btn line"
              type="button"
              aria-label="0.1 degrees less"
              onClick={() => desk.slideBy('tilt', -0.1)}
            >
              − 0.1
            </button>
            <button
              class="btn line"
              type="button"
              aria-label="0.1 degrees more"
              onClick={() => desk.slideBy('tilt', 0.1)}
            >
              + 0.1
            </button>
          </div>
          {box('span')}
          {box('seen')}
          <details class="fold">
            <summary>Thread and reading error</summary>
            <div class="fold-in">{(['hands', 'error', 'readings'] as const).map(box)}</div>
          </details>
        </>
      }
    />
  );
}
