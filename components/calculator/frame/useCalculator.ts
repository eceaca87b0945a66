import type { PointMm } from '#lib/geometry/point.ts';
import type { Calculator, State, Value } from '#calculators/spec.ts';
import { startState } from '#calculators/startState.ts';
import { onDemand } from '#components/site/onDemand.ts';
import { notFetched } from '#words/fetching.ts';
import type { VNode } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { type Hold, useSteps } from '../fields/useSteps.ts';
import type { Told } from './reading.ts';

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
  /** The state as last written, also before it is drawn. */
  now: () => S;
  /** Writes a value, as a step that can be taken back, and drops the refused texts of these boxes. */
  change: (name: keyof S & string, value: Value, ...boxes: readonly string[]) => void;
  /** Reads a typed text and puts it, or keeps it in its box with a sentence. */
  settle: <T extends Value>(
    box: string,
    text: string,
    read: (by: Reading) => Told<T>,
    put: (value: T) => void,
  ) => Promise<void>;
  /** Says which limit stopped what was moved beyond it, in the words that a typed number gets. */
  sayStop: (read: (by: Reading) => Told<number>) => void;
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
export const inside = (asked: number, [lo, hi]: Ends, { decimals }: Readonly<{ decimals: number }>) =>
  rounded(Math.min(hi, Math.max(lo, asked)), decimals);
/** By more than the noise of sums. */
export const isBeyond = (asked: number, [lo, hi]: Ends) => asked < lo - 1e-6 || asked > hi + 1e-6;

/** What is written down: the state, the refused texts, and the limit that stopped a moved mark. */
type Written<S extends State> = Readonly<{ state: S; drafts: Readonly<Record<string, Draft>>; stop: string }>;

type Reading = typeof import('./reading.ts');
/** Everything typed waits on the same promise, so answers arrive in the order of the keys. */
const reading = onDemand(() => import('./reading.ts'));
const reader = 'What reads and links numbers';
const noReader = () => notFetched(reader);

/**
 * The first render equals the server's: the address is read after mount. `nameOf` gives a field's label for
 * messages.
 */
export function useCalculator<S extends State, R>(
  calculator: Calculator<S, R>,
  nameOf: (name: string) => string,
): Desk<S, R> {
  const [written, draw] = useState<Written<S>>(() => ({
    state: startState(calculator),
    drafts: {},
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

  useEffect(() => {
    if (location.search.length < 2) return;
    reading().then(
      ({ fromLink }) => {
        const { state: given, note } = fromLink(calculator, location.search, nameOf);
        write({ ...now.current, state: given });
        setRefused(note);
      },
      () => setUnread(true),
    );
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- names never change under a calculator.
  }, [calculator]);

  // A tenth of a millisecond at most: cheaper to work out again than to remember.
  const result = calculator.solve(state);

  const change = (name: keyof S & string, value: Value, ...boxes: readonly string[]) => {
    const before = now.current;
    if (before.state[name] !== value) steps.remember(name, before);
    write({
      state: { ...before.state, [name]: value },
      drafts: Object.fromEntries(Object.entries(before.drafts).filter(([box]) => !boxes.includes(box))),
      stop: '',
    });
  };
  const settle = async <T extends Value>(
    slot: string,
    text: string,
    read: (by: Reading) => Told<T>,
    put: (value: T) => void,
  ) => {
    const by = await reading().catch(() => undefined);
    setUnread(!by);
    const told = by && read(by);
    if (told?.ok) put(told.value);
    else {
      const refusal: Draft = { text, sentence: told?.sentence ?? noReader() };
      write({ ...now.current, drafts: { ...now.current.drafts, [slot]: refusal } });
    }
  };
  const sayStop = (read: (by: Reading) => Told<number>) => {
    const stopped = now.current;
    reading().then(
      (by) => now.current === stopped && write({ ...stopped, stop: read(by).sentence ?? '' }),
      () => undefined,
    );
  };

  const slideTo = (name: keyof S & string, asked: number) => {
    const { control } = calculator.fields[name];
    if (control.kind !== 'number') return;
    const ends = [control.lo, control.hi] as const;
    change(name, inside(asked, ends, control), name);
    if (isBeyond(asked, ends)) sayStop((by) => by.readNumber(control, nameOf(name), asked));
  };
  const last = steps.last();

  return {
    calculator,
    state,
    result,
    refused,
    missing: isUnread && reader,
    draft: (slot) => drafts[slot],
    type: (name, text) =>
      settle(
        name,
        text,
        (by) => by.readField(calculator.fields[name], nameOf(name), text),
        (value) => change(name, value, name),
      ),
    now: () => now.current.state,
    change,
    settle,
    sayStop,
    slideTo,
    slideBy: (name, by) => slideTo(name, Number(now.current.state[name]) + by),
    stop,
    hold: { take: steps.take, letGo: steps.close, putBack: () => goBack(steps.broken()) },
    undo: () => goBack(steps.back()),
    undoes: last === undefined ? undefined : last && nameOf(last),
    reset: () => {
      steps.remember('', now.current);
      write({ state: startState(calculator), drafts: {}, stop: '' });
      setRefused(undefined);
      setUnread(false);
    },
    copyLink: (path) => reading().then((by) => by.copyLink(calculator, state, path), noReader),
  };
}
