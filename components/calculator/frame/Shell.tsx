import type { PointMm } from '#lib/geometry/point.ts';
import type { Calculator, State } from '#calculators/spec.ts';
import { fixed } from '#words/number.ts';
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { ChoiceBox } from '../fields/ChoiceBox.tsx';
import { Frame } from './Frame.tsx';
import { MarkPanel } from '../fields/MarkPanel.tsx';
import { moveMarks } from '../fields/moveMarks.ts';
import { MarkStage, type View } from '../fields/MarkStage.tsx';
import { NumberBox } from '../fields/NumberBox.tsx';
import { isPoint, rounded, useCalculator } from './useCalculator.ts';
import { useSettled } from './useSettled.ts';

/**
 * What a calculator adds to the shell: its words and its drawing. Fields, limits and addresses come from its
 * spec.
 */
export type CalculatorFace<S extends State, R> = Readonly<{
  calculator: Calculator<S, R>;
  labels: Readonly<
    Record<string, Readonly<{ label: string; hint?: string; options?: Readonly<Record<string, string>> }>>
  >;
  /** Fields shown beside the picture, and those folded away under a heading. */
  shown: readonly (keyof S & string)[];
  folded: Readonly<{ heading: string; names: readonly (keyof S & string)[] }>;
  marks: readonly Readonly<{
    label: string;
    marks: readonly Readonly<{ key: keyof S & string; label: string }>[];
  }>[];
  firstMark: keyof S & string;
  view: View;
  pictureLabel: string;
  draw: (state: S, result: R) => ComponentChildren;
  says: (result: R, state: S) => Readonly<{ answer: string; doubt: string }>;
  caution: (state: S) => string | undefined;
  missing?: string | false;
  /** Where sums that come later stand: what they say changes with it. */
  sums?: string;
}>;

type Props<S extends State, R> = Readonly<{
  face: CalculatorFace<S, R>;
  id: string;
  address: string;
  /** The tables stand open from the start. */
  open: boolean;
  /** Tables that say the same as the drawing. */
  tables: (result: R, state: S, isOpen: boolean) => ComponentChildren;
  /** The key to the drawing, and the still picture under the marks: both made at build. */
  legend?: ComponentChildren;
  children?: ComponentChildren;
}>;

/** A calculator with movable marks: picture, fields, sentence, tables, from one state. */
export function Shell<S extends State, R>({
  face,
  id,
  address,
  open,
  tables,
  legend,
  children,
}: Props<S, R>) {
  const { calculator, labels, marks } = face;
  const [active, setActive] = useState<keyof S & string>(face.firstMark);
  const [isOpen, setIsOpen] = useState(open);
  const listed = marks.flatMap((group) => group.marks);
  const nameOf = (key: string) => listed.find((mark) => mark.key === key)?.label ?? labels[key]?.label ?? key;
  const desk = useCalculator(calculator, nameOf);
  const move = moveMarks(desk);
  const { state, result } = desk;
  const { value: told, isBehind } = useSettled({ state, result }, [state, face.sums]);
  const named = (key: string) => listed.find((mark) => mark.key === key)?.key;
  const pick = (key: string) => setActive(named(key) ?? active);
  const at = (key: keyof S & string): PointMm => {
    const value = state[key];
    return isPoint(value) ? value : { xMm: 0, yMm: 0 };
  };
  const point = at(active);
  const field = (name: keyof S & string) => {
    const { control } = calculator.fields[name];
    const words = labels[name] ?? { label: name };
    if (control.kind === 'choice') {
      const options = control.options.map((value) => ({ value, label: words.options?.[value] ?? value }));
      return (
        <ChoiceBox
          key={name}
          id={`${id}-${name}`}
          label={words.label}
          hint={words.hint}
          value={String(state[name])}
          options={options}
          onType={(text) => desk.type(name, text)}
        />
      );
    }
    if (control.kind === 'number') {
      const value = Number(state[name]);
      const unit = control.unit === '1' ? '' : control.unit;
      return (
        <NumberBox
          key={name}
          id={`${id}-${name}`}
          label={words.label}
          hint={words.hint}
          unit={unit}
          signed={control.lo < 0}
          shown={String(rounded(value, 3))}
          refused={desk.draft(name)}
          onType={(text) => desk.type(name, text)}
        />
      );
    }
    return null;
  };

  const picture = (
    <>
      <div class="stack">
        <div class="still" aria-hidden="true">
          {children}
        </div>
        <MarkStage
          view={face.view}
          label={face.pictureLabel}
          marks={listed.map(({ key }) => ({ key, point: at(key) }))}
          active={active}
          activeLabel={`${nameOf(active)}: across ${fixed(point.xMm)}, up ${fixed(point.yMm)} millimetres. Arrow keys move it.`}
          hold={desk.hold}
          onPick={pick}
          onMove={(key, to) => move.to(named(key) ?? active, to)}
          onStep={(_, by) => move.by(active, by)}
        >
          {face.draw(state, result)}
        </MarkStage>
      </div>
      {legend}
    </>
  );
  const side = (
    <>
      <MarkPanel
        id={id}
        groups={marks}
        active={active}
        point={point}
        drafts={{ x: desk.draft(`${active}.x`), y: desk.draft(`${active}.y`) }}
        onPick={pick}
        onType={(axis, text) => desk.typeAxis(active, axis, text)}
        onStep={(by) => move.by(active, by)}
      />
      {face.shown.map(field)}
      <details class="fold">
        <summary>{face.folded.heading}</summary>
        <div class="fold-in">{face.folded.names.map(field)}</div>
      </details>
    </>
  );
  return (
    <Frame
      tall
      pulled
      desk={desk}
      id={id}
      address={address}
      picture={picture}
      side={side}
      says={face.says(result, state)}
      missing={face.missing}
      caution={face.caution(state)}
    >
      <details
        class="fold numbers"
        open={open}
        onToggle={({ currentTarget }) => setIsOpen(currentTarget.open)}
      >
        <summary>All numbers</summary>
        <div class="tables" aria-busy={isBehind}>
          {!face.missing && tables(told.result, told.state, isOpen)}
        </div>
      </details>
    </Frame>
  );
}
