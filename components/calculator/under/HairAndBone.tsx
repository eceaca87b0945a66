import type { PointMm } from '#lib/geometry/point.ts';
import { hairAndBone, plannedLeft, type HairAndBoneState } from '#calculators/hairAndBone.ts';
import { lengthOfMm } from '#lib/mapping/under/stretch.ts';
import { shareOf } from '#lib/mapping/under/underOutline.ts';
import { UnderOverlay, type UnderBrow } from '#components/pictures/UnderOverlay.tsx';
import { underScale, underView, underX } from '#components/pictures/underView.ts';
import {
  cowlickWords,
  hairAndBoneHints,
  hairAndBoneLabels,
  hairAndBoneSays,
  stretchText,
  underCaution,
  underWords,
} from '#words/hairAndBone.ts';
import { fixed } from '#words/number.ts';
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { ChoiceBox } from '../fields/ChoiceBox.tsx';
import { Frame } from '../frame/Frame.tsx';
import { MarkStage } from '../fields/MarkStage.tsx';
import { NumberBox } from '../fields/NumberBox.tsx';
import { useCalculator } from '../frame/useCalculator.ts';

type Handle = Exclude<keyof HairAndBoneState, 'cowlick'>;
const handles = [
  'hairFrom',
  'thinFrom',
  'hairTo',
  'boneArch',
  'boneTail',
  'cowlickAt',
] as const satisfies readonly Handle[];
const isHandle = (key: string): key is Handle => handles.some((handle) => handle === key);
const nameOf = (key: string) => Object.entries(hairAndBoneLabels).find(([name]) => name === key)?.[1] ?? key;
const marks = handles.map((value) => ({ value, label: nameOf(value) }));
const rows = ['hair', 'thin', 'bareFront', 'bareTail', 'offBone', 'nothing'] as const;
const options = (['none', 'turned'] as const).map((value) => ({ value, label: cowlickWords[value] }));

/** What lies under the shape: the island. Drawing and paper are made at build. */
export function HairAndBone({
  id = 'under',
  brow,
  open = false,
  legend,
  children,
}: Readonly<{
  id?: string;
  brow: UnderBrow;
  open?: boolean;
  legend?: ComponentChildren;
  children?: ComponentChildren;
}>) {
  const desk = useCalculator(hairAndBone, nameOf);
  const { state, result } = desk;
  const [active, setActive] = useState<Handle>('hairTo');
  const pick = (key: string) => isHandle(key) && setActive(key);
  const lowerEdge = (placeMm: number) =>
    brow.lowerEdgeMm[Math.round((placeMm / plannedLeft.lengthMm) * 20)] ?? 0;
  const bonePlace = { boneArch: plannedLeft.archMm, boneTail: plannedLeft.lengthMm } as const;
  const pointOf = (key: Handle) =>
    key === 'boneArch' || key === 'boneTail'
      ? { xMm: underX(bonePlace[key]), yMm: underScale * (lowerEdge(bonePlace[key]) + state[key]) }
      : { xMm: underX(state[key]), yMm: key === 'cowlickAt' ? 34 : 14 };
  const along = (key: Handle, { xMm, yMm }: PointMm) =>
    key === 'boneArch' || key === 'boneTail' ? yMm : xMm;
  const move = (key: Handle, to: PointMm) =>
    desk.slideTo(key, state[key] + (along(key, to) - along(key, pointOf(key))) / underScale);
  /** A tenth of a picture unit by key is a tenth of a millimetre of the brow. */
  const step = (by: PointMm) => along(active, by) !== 0 && desk.slideBy(active, along(active, by));
  const box = (name: Handle, hint?: string) => (
    <NumberBox
      key={name}
      id={`${id}-${name}`}
      label={hairAndBoneLabels[name]}
      unit="mm"
      hint={hint}
      shown={fixed(state[name])}
      refused={desk.draft(name)}
      onType={(text) => desk.type(name, text)}
    />
  );
  return (
    <Frame
      pulled
      desk={desk}
      id={id}
      address="/calculators/hair-and-bone/"
      says={hairAndBoneSays(result, state)}
      caution={underCaution}
      picture={
        <>
          <div class="stack">
            <div class="still" aria-hidden="true">
              {children}
            </div>
            <MarkStage
              view={underView}
              label="The left brow: planned outline, hair, edge of the bone, and what lies under each millimetre"
              marks={handles.map((key) => ({ key, point: pointOf(key) }))}
              active={active}
              activeLabel={`${nameOf(active)}: ${fixed(state[active])} millimetres. Arrow keys move it.`}
              hold={desk.hold}
              onPick={pick}
              onMove={(key, to) => isHandle(key) && move(key, to)}
              onStep={(_, by) => step(by)}
            >
              {result.ok && <UnderOverlay id={id} brow={brow} state={state} under={result.under} />}
            </MarkStage>
          </div>
          {legend}
        </>
      }
      side={
        <>
          <div class="mark-two">
            {box('hairFrom')}
            {box('hairTo')}
          </div>
          {box('thinFrom', hairAndBoneHints.hairFrom)}
          <div class="mark-two">
            {box('boneArch')}
            {box('boneTail')}
          </div>
          <p class="hint plain">{hairAndBoneHints.boneArch}</p>
          <ChoiceBox id={`${id}-mark`} label="Mark to move" value={active} options={marks} onType={pick} />
          <div class="stepper">
            <button
              class="btn line"
              type="button"
              aria-label={`Less 0.1 millimetres: ${nameOf(active)}`}
              onClick={() => desk.slideBy(active, -0.1)}
            >
              Less
            </button>
            <button
              class="btn line"
              type="button"
              aria-label={`More 0.1 millimetres: ${nameOf(active)}`}
              onClick={() => desk.slideBy(active, 0.1)}
            >
              More
            </button>
            <span class="plain tiny quiet">0.1 mm a step</span>
          </div>
          <details class="fold">
            <summary>Cowlick</summary>
            <div class="fold-in">
              <ChoiceBox
                id={`${id}-cowlick`}
                label={hairAndBoneLabels.cowlick}
                value={state.cowlick}
                options={options}
                onType={(text) => desk.type('cowlick', text)}
              />
              {box('cowlickAt')}
            </div>
          </details>
        </>
      }
    >
      <details class="fold numbers" open={open}>
        <summary>All parts in numbers</summary>
        <div class="tables">
          {result.ok && (
            <table class="meas under-table">
              <caption>Under the outline, from its front</caption>
              <thead>
                <tr>
                  <th scope="col">Part</th>
                  <th scope="col">Where</th>
                  <th scope="col">mm</th>
                  <th scope="col">Share</th>
                </tr>
              </thead>
              <tbody>
                {rows.map((row) => (
                  <tr key={row} class={row === 'nothing' ? 'is-real' : undefined}>
                    <th scope="row">{underWords[row]}</th>
                    <td>{stretchText(result.under[row])}</td>
                    <td>{fixed(lengthOfMm(result.under[row]))}</td>
                    <td>
                      {fixed(100 * shareOf(result.under, result.under[row]), 0)}
                      {'\u00a0%'}
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          )}
        </div>
      </details>
    </Frame>
  );
}
