import {
  coverFields,
  coverKey,
  coverMarks,
  type CoverKey,
  type CoverState,
  type Shape,
} from '#calculators/coverFields.ts';
import { CoverOverlay } from '#components/pictures/CoverOverlay.tsx';
import { onDemand } from '#components/site/onDemand.ts';
import { beingWorkedOut, skinStops, freeWords, oldSkinWords, shapeWords } from '#words/coverLabels.ts';
import { browMarkWords, capital } from '#words/marks.ts';
import { fixed } from '#words/number.ts';
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { ChoiceBox } from '../fields/ChoiceBox.tsx';
import type { CoverPaths } from '#components/pictures/coverPaths.ts';
import type { CoverTold } from './coverTold.ts';
import { type CoverTablesOf, LaterCoverTables } from './LaterCoverTables.tsx';
import { coverView } from './coverView.ts';
import { Frame } from '../frame/Frame.tsx';
import { MarkPanel } from '../fields/MarkPanel.tsx';
import { moveMarks } from '../fields/moveMarks.ts';
import { MarkStage } from '../fields/MarkStage.tsx';
import { NumberBox } from '../fields/NumberBox.tsx';
import { rounded, useCalculator } from '../frame/useCalculator.ts';
import { useKept } from '../lazy/useKept.ts';
import { useLater } from '../lazy/useLater.ts';
import { useSums } from '../lazy/useSums.tsx';

const labels = {
  spread: 'Spread since',
  raise: 'Raise at most',
  lower: 'Lower at most',
  thickness: 'Thickness at most',
  growth: 'Grow at most',
  free: 'May be moved',
  skin: 'Skin over the old work',
  margin: 'Margin',
  error: 'Your reading error',
  readings: 'Readings of each mark',
} as const;
type NumberName = Exclude<keyof typeof labels, 'free' | 'skin'>;
const isLabel = (key: string): key is keyof typeof labels => Object.hasOwn(labels, key);
const markOf = (key: string) => coverMarks.find((mark) => mark.key === key);
const nameOf = (key: string) => {
  const mark = markOf(key);
  if (mark) return `${capital(shapeWords[mark.shape])}, ${browMarkWords[mark.mark]}, ${mark.side}`;
  return isLabel(key) ? labels[key] : key;
};
const groups = (['planned', 'old'] as const).flatMap((shape) =>
  (['right', 'left'] as const).map((side) => ({
    label: `${capital(shapeWords[shape])}, ${side}`,
    marks: coverMarks
      .filter((mark) => mark.shape === shape && mark.side === side)
      .map(({ key, mark }) => ({
        key,
        label: `${capital(browMarkWords[mark])}, ${side}${shape === 'old' ? ', old' : ''}`,
      })),
  })),
);
const optionsOf = (words: Readonly<Record<string, string>>) =>
  Object.entries(words).map(([value, label]) => ({ value, label }));
const load = onDemand(async () => (await import('../workers/askCoverWorker.ts')).askCoverWorker);
/** Draws the marks as they stand, while their plan is worked out; a state once. */
const loadDrawing = onDemand(async () => {
  const { coverPaths } = await import('#components/pictures/coverPaths.ts');
  let drawn: Readonly<{ state: CoverState; paths: CoverPaths }> | undefined;
  return (state: CoverState): CoverPaths => {
    if (drawn?.state !== state) drawn = { state, paths: coverPaths(state) };
    return drawn.paths;
  };
});

type Props = Readonly<{
  id?: string;
  start: CoverTold;
  tables?: CoverTablesOf;
  open?: boolean;
  legend?: ComponentChildren;
  children?: ComponentChildren;
}>;

/**
 * Cover of the old shape: the island. The first plan is made at build; later ones are worked out beside the
 * page. The drawing follows the marks at once, and no plan stands beside marks that are newer than it.
 */
export function CoverTheOldShape({
  id = 'cover',
  start,
  tables: Tables,
  open = false,
  legend,
  children,
}: Props) {
  const drawing = useSums(coverFields, start.paths, loadDrawing);
  const desk = useCalculator(drawing.calculator, nameOf);
  const move = moveMarks(desk);
  const { state } = desk;
  const {
    result: { cover: result, says, caution, paths },
    is,
  } = useLater<CoverState, CoverTold>(state, start, load);
  // What she says of the skin needs no planner, and waits for none.
  const stop = state.skin === 'quiet' ? undefined : skinStops(state.skin);
  const isFresh = is === 'fresh';
  useKept(desk, is === 'missing');
  const [isOpen, setIsOpen] = useState(open);
  const [active, setActive] = useState<CoverKey>('oldArchTopR');
  const chosen = markOf(active);
  const shape: Shape = chosen?.shape ?? 'planned';
  const point = state[active];
  const pick = (key: string) => setActive(markOf(key)?.key ?? active);
  const show = (other: string) =>
    chosen &&
    (other === 'planned' || other === 'old') &&
    setActive(coverKey(other, chosen.mark, chosen.side));
  const number = (name: NumberName, unit: string, hint?: string) => (
    <NumberBox
      key={name}
      id={`${id}-${name}`}
      label={labels[name]}
      unit={unit}
      hint={hint}
      shown={String(rounded(state[name], 3))}
      refused={desk.draft(name)}
      onType={(text) => desk.type(name, text)}
    />
  );
  const choice = (name: 'free' | 'skin', words: Readonly<Record<string, string>>) => (
    <ChoiceBox
      id={`${id}-${name}`}
      label={labels[name]}
      value={state[name]}
      options={optionsOf(words)}
      onType={(text) => desk.type(name, text)}
    />
  );
  const isMissing = is === 'missing' || drawing.isMissing;
  return (
    <Frame
      tall
      pulled
      desk={desk}
      id={id}
      address="/calculators/cover-the-old-shape/"
      says={stop ?? (isFresh ? says : { answer: beingWorkedOut, doubt: '' })}
      caution={isFresh && !stop ? caution : undefined}
      missing={!stop && isMissing && 'The planner'}
      picture={
        <>
          <div class="stack">
            <div class="still" aria-hidden="true">
              {children}
            </div>
            <MarkStage
              view={coverView}
              label="Both brows on millimetre paper: old shapes, planned outlines, and what of the old work stays outside"
              marks={coverMarks
                .filter((mark) => mark.shape === shape)
                .map(({ key }) => ({ key, point: state[key] }))}
              active={active}
              activeLabel={`${nameOf(active)}: across ${fixed(point.xMm)}, up ${fixed(point.yMm)} millimetres. Arrow keys move it.`}
              hold={desk.hold}
              onPick={pick}
              onMove={(key, to) => move.to(markOf(key)?.key ?? active, to)}
              onStep={(_, by) => move.by(active, by)}
            >
              <CoverOverlay
                id={id}
                state={state}
                paths={isFresh ? paths : desk.result}
                shape={shape}
                side={chosen?.side ?? 'right'}
              />
            </MarkStage>
          </div>
          {drawing.watch(state)}
          {legend}
        </>
      }
      side={
        <>
          <ChoiceBox
            id={`${id}-shape`}
            label="Move the marks of the"
            value={shape}
            options={optionsOf(shapeWords)}
            onType={show}
          />
          <MarkPanel
            id={id}
            groups={groups}
            active={active}
            point={point}
            drafts={{ x: desk.draft(`${active}.x`), y: desk.draft(`${active}.y`) }}
            onPick={pick}
            onType={(axis, text) => desk.typeAxis(active, axis, text)}
            onStep={(by) => move.by(active, by)}
          />
          <div class="mark-two">
            {number('raise', 'mm')}
            {number('lower', 'mm')}
          </div>
          {choice('skin', oldSkinWords)}
          <details class="fold">
            <summary>More limits, margin, reading</summary>
            <div class="fold-in">
              <div class="mark-two">
                {number('thickness', 'mm')}
                {number('growth', '%')}
              </div>
              {choice('free', freeWords)}
              <div class="mark-two">
                {number('spread', 'mm')}
                {number('margin', 'mm')}
              </div>
              {result.ok && (
                <p class="hint plain">
                  Your reading error asks for a margin of {isFresh ? fixed(result.askedMarginMm, 2) : '…'} mm.
                </p>
              )}
              <div class="mark-two">
                {number('error', 'mm')}
                {number('readings', '')}
              </div>
            </div>
          </details>
        </>
      }
    >
      <details
        class="fold numbers"
        open={open}
        onToggle={({ currentTarget }) => setIsOpen(currentTarget.open)}
      >
        <summary>The plan, mark by mark{is === 'late' && ', being worked out'}</summary>
        <div class={isFresh ? 'tables' : 'tables late'} aria-busy={is === 'late'}>
          {result.ok &&
            !(stop || isMissing) &&
            (Tables ? (
              <Tables plan={result.plan} sides={result.sides} />
            ) : (
              <LaterCoverTables plan={result.plan} sides={result.sides} isOpen={isOpen} />
            ))}
        </div>
      </details>
    </Frame>
  );
}
