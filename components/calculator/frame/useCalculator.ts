import type { PointMm } from '#lib/geometry/point.ts';
import type { Calculator, State, Value } from '#calculators/spec.ts';
import { startState } from '#calculators/startState.ts';
import { onDemand } from '#components/site/onDemand.ts';
import { notFetched } from '#words/fetching.ts';
import type { VNode } from 'preact';
import { isTypedKept } from '#components/site/typedToday.ts';
import { useEffect, useRef, useState } from 'preact/hooks';
import { type Hold, useSteps } from '../fields/useSteps.ts';

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
  /** The state as last written, also before it is drawn. */
  now: () => S;
  /** Writes a value, as a step that can be taken back, and drops the refused texts of these boxes. */
  change: (name: keyof S & string, value: Value, ...boxes: readonly string[]) => void;
  /** Says which limit stopped what was moved beyond it, in the words that a typed number gets. */
  sayStop: (slot: string, asked: number, decimals: number) => void;
  /** Puts a number that a picture or a button moves, held inside its limits; `slideBy` from what it is. */
  slideTo: (name: keyof S & string, value: number) => void;
  slideBy: (name: keyof S & string, by: number) => void;
  /** Where a limit stopped what was moved, as a sentence; else empty. */
  stop: string;
  hold: Hold;
  /** Takes the last change back; `undoes` names what that changed. */
  undo: () => void;
  undoes: string | undefined;
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

type Ends = readonly [number, number];
/** The nearest value that a field takes. */
export const inside = (asked: number, [lo, hi]: Ends, decimals: number) =>
  rounded(Math.min(hi, Math.max(lo, asked)), decimals);
/** By more than the noise of sums. */
export const isBeyond = (asked: number, [lo, hi]: Ends) => asked < lo - 1e-6 || asked > hi + 1e-6;

/** What is written down: the state, the refused texts, and the limit that stopped a moved mark. */
type Written<S extends State> = Readonly<{ state: S; drafts: Readonly<Record<string, Draft>>; stop: string }>;

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
  const [written, draw] = useState<Written<S>>(() => ({
    state: startState(calculator),
    drafts: noDrafts,
    stop: '',
  }));
  // Quick changes count from the last one, also before that is drawn.
  const now = useRef(written);
  const steps = useSteps<Written<S>>();
  const [refused, setRefused] = useState<VNode>();
  const [isUnread, setUnread] = useState(false);
  const write = (next: Written<S>) => {
    now.current = next;
    draw(next);
  };
  const goBack = (before: Written<S> | undefined) => before && write({ ...before, stop: '' });
  const { state, drafts, stop } = written;

  /** What the page opened with: as long as that stands, there is nothing of the reader's to keep. */
  const opened = useRef(state);

  useEffect(() => {
    if (location.search.length < 2 && !isTypedKept()) return;
    reading().then(
      (by) => {
        const found = by.arrive(calculator, nameOf);
        if (now.current.state === opened.current) {
          opened.current = found.state;
          write({ ...now.current, state: found.state, drafts: found.drafts ?? now.current.drafts });
        }
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

  const without = (...boxes: readonly string[]) =>
    Object.fromEntries(Object.entries(now.current.drafts).filter(([box]) => !boxes.includes(box)));
  const change = (name: keyof S & string, value: Value, ...boxes: readonly string[]) => {
    const { state: before } = now.current;
    if (before[name] !== value) steps.remember(name, now.current);
    write({ state: { ...before, [name]: value }, drafts: without(...boxes), stop: '' });
  };
  /** Puts what was read, or keeps the refused text with a sentence. */
  const typeSlot = async (slot: string, text: string) => {
    const by = await reading().catch(() => undefined);
    setUnread(!by);
    const told = by?.readSlot(calculator, slot, text, nameOf);
    if (told?.ok) {
      steps.remember(slot, now.current);
      write({ state: told.value(now.current.state), drafts: without(slot), stop: '' });
    } else {
      const refusal: Draft = { text, sentence: told?.sentence ?? noReader() };
      write({ ...now.current, drafts: { ...now.current.drafts, [slot]: refusal } });
    }
  };
  const sayStop = (slot: string, asked: number, decimals: number) => {
    const stopped = now.current;
    reading().then(
      (by) => {
        const told = by.readSlot(calculator, slot, asked.toFixed(decimals), nameOf);
        if (now.current === stopped) write({ ...stopped, stop: told?.sentence ?? '' });
      },
      () => undefined,
    );
  };

  const slideTo = (name: keyof S & string, asked: number) => {
    const { control } = calculator.fields[name];
    if (control.kind !== 'number') return;
    const { lo, hi, decimals } = control;
    change(name, inside(asked, [lo, hi], decimals), name);
    if (isBeyond(asked, [lo, hi])) sayStop(name, asked, decimals);
  };
  const last = steps.last();

  return {
    calculator,
    state,
    result,
    refused,
    missing: isUnread && reader,
    draft: (slot) => drafts[slot],
    type: typeSlot,
    typeAxis: (name, axis, text) => void typeSlot(`${name}.${axis}`, text),
    now: () => now.current.state,
    change,
    sayStop,
    slideTo,
    slideBy: (name, by) => slideTo(name, Number(now.current.state[name]) + by),
    stop,
    hold: { take: steps.take, letGo: steps.close, putBack: () => goBack(steps.broken()) },
    undo: () => goBack(steps.back()),
    undoes: last && nameOf(last.replace(/\.[xy]$/, '')),
    reset: () => {
      steps.remember('', now.current);
      write({ state: startState(calculator), drafts: noDrafts, stop: '' });
      setRefused(undefined);
      setUnread(false);
    },
    copyLink: (path) => reading().then((by) => by.copyLink(calculator, state, path), noReader),
  };
}
