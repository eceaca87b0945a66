import type { PointMm } from '#lib/geometry/point.ts';
import type { Calculator, Field, State, Value } from '#calculators/spec.ts';
import { startState } from '#calculators/startState.ts';
import { onDemand } from '#components/site/onDemand.ts';
import { notFetched } from '#words/fetching.ts';
import type { VNode } from 'preact';
import { isTypedKept } from '#components/site/typedToday.ts';
import { useEffect, useRef, useState } from 'preact/hooks';

export type Axis = 'x' | 'y';

/** A text that was typed but refused: it stays in its box, the state stays as it was. */
export type Draft = Readonly<{ text: string; sentence: string }>;

/** One state for picture, numbers and sentence, with every way to change it. */
export type Desk<S extends State, R> = Readonly<{
  calculator: Calculator<S, R>;
  state: S;
  result: R;
  /**
   * The refused text of a box, with what is wrong. `slot` is the field's name, or name.x and name.y for a
   * mark.
   */
  draft: (slot: string) => Draft | undefined;
  /** A typed text for a number or choice field. Resolves once it has been read, or could not be. */
  type: (name: keyof S & string, text: string) => Promise<void>;
  /** A typed text for one of a mark's two numbers. */
  typeAxis: (name: keyof S & string, axis: Axis, text: string) => void;
  /** Moves a mark to a place, held inside its box and rounded to its step. */
  moveTo: (name: keyof S & string, point: PointMm) => void;
  reset: () => void;
  /** What of the address was refused, as a note. */
  refused: VNode | undefined;
  /** What was needed to read a link or a text and could not be fetched. */
  missing: string | false;
  /** Copies a link to a page of this site that holds the state; resolves to what became of it. */
  copyLink: (path: string) => Promise<string>;
}>;

export function isPoint(value: Value | undefined): value is PointMm {
  return typeof value === 'object';
}

/** Rounds to a count of decimals without leaving 0.30000000000000004 behind. */
export function rounded(value: number, decimals: number): number {
  return Number(value.toFixed(decimals)) || 0;
}

function held<V extends Value>({ control }: Field<V>, { xMm, yMm }: PointMm): PointMm | undefined {
  if (control.kind !== 'mark') return undefined;
  const into = (value: number, [lo, hi]: readonly [number, number]) =>
    rounded(Math.min(hi, Math.max(lo, value)), control.decimals);
  return { xMm: into(xMm, control.x), yMm: into(yMm, control.y) };
}

/** Everything typed waits on the same promise, so answers arrive in the order of the keys. */
const reading = onDemand(() => import('./reading.ts'));
const reader = 'What reads and links numbers';
const noReader = () => notFetched(reader);
const noDrafts: Readonly<Record<string, Draft>> = {};

/**
 * The first render equals the server's: the address, and what was typed earlier today, are read after mount. `nameOf` gives a field's label for
 * messages.
 */
export function useCalculator<S extends State, R>(
  calculator: Calculator<S, R>,
  nameOf: (name: string) => string,
): Desk<S, R> {
  const [state, setState] = useState(() => startState(calculator));
  const [drafts, setDrafts] = useState(noDrafts);
  const [refused, setRefused] = useState<VNode>();
  const [isUnread, setUnread] = useState(false);

  /** What the page opened with: as long as that stands, there is nothing of the reader's to keep. */
  const opened = useRef(state);

  useEffect(() => {
    if (location.search.length < 2 && !isTypedKept()) return;
    reading().then(
      (by) => {
        const found = by.arrive(calculator, nameOf);
        setState((now) => (now === opened.current ? (opened.current = found.state) : now));
        if (found.drafts) setDrafts({ ...found.drafts });
        setRefused(found.note);
      },
      () => setUnread(location.search.length > 1),
    );
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- names never change under a calculator.
  }, [calculator]);

  useEffect(() => {
    if (state !== opened.current || drafts !== noDrafts)
      reading().then(
        (by) => by.keep(calculator, state, drafts),
        () => undefined,
      );
  }, [calculator, state, drafts]);

  // A tenth of a millisecond at most: cheaper to work out again than to remember.
  const result = calculator.solve(state);

  const clear = (slot: string) => setDrafts(({ [slot]: _, ...rest }) => rest);
  /** Puts what was read, or keeps the refused text with a sentence. */
  const typeSlot = async (slot: string, text: string) => {
    const by = await reading().catch(() => undefined);
    setUnread(!by);
    const told = by?.readSlot(calculator, slot, text, nameOf);
    if (told?.ok) {
      clear(slot);
      setState(told.value);
    } else setDrafts((all) => ({ ...all, [slot]: { text, sentence: told?.sentence ?? noReader() } }));
  };

  return {
    calculator,
    state,
    result,
    refused,
    missing: isUnread && reader,
    draft: (slot) => drafts[slot],
    type: typeSlot,
    typeAxis: (name, axis, text) => void typeSlot(`${name}.${axis}`, text),
    moveTo: (name, point) => {
      const place = held(calculator.fields[name], point);
      if (!place) return;
      clear(`${name}.x`);
      clear(`${name}.y`);
      setState((old) => ({ ...old, [name]: place }));
    },
    reset: () => {
      setState(startState(calculator));
      setDrafts({});
      setRefused(undefined);
      setUnread(false);
    },
    copyLink: (path) => reading().then((by) => by.copyLink(calculator, state, path), noReader),
  };
}
