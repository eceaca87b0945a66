import { twoReadings, type TwoReadingsState } from '#calculators/twoReadings.ts';
import { ReadingRows } from '#components/pictures/ReadingRows.tsx';
import { archAcrossMm, readingView, rowMm } from '#components/pictures/readingView.ts';
import { postureWords, skinWords } from '#words/marks.ts';
import { fixed } from '#words/number.ts';
import { latelyCaution, latelyWords, spokenPoses, twoReadingsSays } from '#words/twoReadings.ts';
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { ChoiceBox } from '../fields/ChoiceBox.tsx';
import { Frame } from '../frame/Frame.tsx';
import { MarkStage } from '../fields/MarkStage.tsx';
import { NumberBox } from '../fields/NumberBox.tsx';
import { rounded, useCalculator } from '../frame/useCalculator.ts';

type Name = keyof TwoReadingsState;
const words: Readonly<Record<string, string>> = {
  pose: 'Face',
  posture: 'Position',
  skin: 'Skin',
  right: 'Right arch',
  left: 'Left arch',
  lately: 'What changed the brows lately?',
  error: 'Your reading error',
  readings: 'Readings of each arch',
};
/** Inside its group a field needs no more than its own name. */
const labelOf = (name: string): string => words[name.replace(/\d$/, '')] ?? name;
const fullName = (name: string): string =>
  `${labelOf(name)}${name.endsWith('1') ? ', first reading' : name.endsWith('2') ? ', second reading' : ''}`;
const optionsOf = (spoken: Readonly<Record<string, string>>) =>
  Object.entries(spoken).map(([value, label]) => ({ value, label }));
const choices = {
  pose: optionsOf(spokenPoses),
  posture: optionsOf(postureWords),
  skin: optionsOf(skinWords),
  lately: optionsOf(latelyWords),
} as const;
const arches = ['right1', 'left1', 'right2', 'left2'] as const;
type Arch = (typeof arches)[number];
const marks = arches.map((value) => ({ value, label: fullName(value) }));
const isArch = (key: string): key is Arch => arches.some((arch) => arch === key);
/** How far down the picture a row's pupils lie. */
const dropMm = (arch: Arch) => (arch.endsWith('2') ? rowMm : 0);

/**
 * Two readings of one face: the island. The still comes in as children, drawn at build: paper, and the brow
 * and eyes that the rows use.
 */
export function TwoReadings({
  id = 'two',
  children,
}: Readonly<{ id?: string; children?: ComponentChildren }>) {
  const desk = useCalculator(twoReadings, fullName);
  const [active, setActive] = useState<Arch>('left1');
  const { state, result } = desk;
  const box = (name: Arch | 'error' | 'readings', unit = 'mm') => (
    <NumberBox
      key={name}
      id={`${id}-${name}`}
      label={labelOf(name)}
      unit={unit}
      shown={String(rounded(state[name], 3))}
      refused={desk.draft(name)}
      onType={(text) => desk.type(name, text)}
    />
  );
  const list = (name: Name, options: keyof typeof choices) => (
    <ChoiceBox
      key={name}
      id={`${id}-${name}`}
      label={labelOf(name)}
      value={String(state[name])}
      options={choices[options]}
      onType={(text) => desk.type(name, text)}
    />
  );
  const reading = (n: 1 | 2) => (
    <div class="mark-panel" role="group" aria-labelledby={`${id}-name${n}`}>
      <p class="plain" id={`${id}-name${n}`}>
        <b>{n === 1 ? 'First reading' : 'Second reading'}</b>
      </p>
      {list(`pose${n}`, 'pose')}
      <div class="mark-two">
        {list(`posture${n}`, 'posture')}
        {list(`skin${n}`, 'skin')}
      </div>
      <div class="mark-two">
        {box(`right${n}`)}
        {box(`left${n}`)}
      </div>
    </div>
  );
  const pick = (key: string) => isArch(key) && setActive(key);
  return (
    <div class="two-up">
      <Frame
        tall
        pulled
        desk={desk}
        id={id}
        address="/calculators/two-readings/"
        says={twoReadingsSays(result)}
        caution={latelyCaution(state.lately)}
        picture={
          <div class="stack">
            <div class="still" aria-hidden="true">
              {children}
            </div>
            <MarkStage
              view={readingView}
              label="Both brows in two readings, one above the other, with the heights of the arches above the pupils"
              marks={arches.map((key) => ({
                key,
                point: {
                  xMm: key.startsWith('right') ? -archAcrossMm : archAcrossMm,
                  yMm: state[key] - dropMm(key),
                },
              }))}
              active={active}
              activeLabel={`${fullName(active)}: ${fixed(state[active])} millimetres above the pupils. Arrow keys move it up and down.`}
              hold={desk.hold}
              onPick={pick}
              onMove={(key, { yMm }) => isArch(key) && desk.slideTo(key, yMm + dropMm(key))}
              onStep={(_, { yMm }) => yMm !== 0 && desk.slideBy(active, yMm)}
            >
              <ReadingRows
                rows={[
                  {
                    id,
                    name: 'First',
                    taken: result.taken[0],
                    rightMm: state.right1,
                    leftMm: state.left1,
                    difference: result.first,
                  },
                  {
                    id,
                    name: 'Second',
                    taken: result.taken[1],
                    rightMm: state.right2,
                    leftMm: state.left2,
                    difference: result.second,
                  },
                ]}
              />
            </MarkStage>
          </div>
        }
        side={
          <>
            {reading(1)}
            {reading(2)}
            {list('lately', 'lately')}
            <div class="mark-panel">
              <ChoiceBox
                id={`${id}-mark`}
                label="Mark to move, ringed in the picture"
                value={active}
                options={marks}
                onType={pick}
              />
              <div class="stepper">
                <button
                  class="btn line"
                  type="button"
                  aria-label={`${fullName(active)}: 0.1 millimetres lower`}
                  onClick={() => desk.slideBy(active, -0.1)}
                >
                  − 0.1
                </button>
                <button
                  class="btn line"
                  type="button"
                  aria-label={`${fullName(active)}: 0.1 millimetres higher`}
                  onClick={() => desk.slideBy(active, 0.1)}
                >
                  + 0.1
                </button>
                <span class="plain tiny quiet">0.1 mm a step</span>
              </div>
            </div>
            <details class="fold">
              <summary>How they were read</summary>
              <div class="fold-in">
                {box('error')}
                {box('readings', '')}
              </div>
            </details>
          </>
        }
      />
    </div>
  );
}
