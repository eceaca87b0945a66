import { readWithin } from '#calculators/readWithin.ts';
import { useSteps } from '#components/calculator/fields/useSteps.ts';
import type { Draft } from '#components/calculator/frame/useCalculator.ts';
import { badAcross, placeMidlineWords } from '#words/skills/placeMidline.ts';
import { useRef, useState } from 'preact/hooks';
import type { Across, Judged } from './judge.ts';
import { pinReachMm } from './placeView.ts';

export type Pin = keyof Across;

/**
 * What one face has gone through; a new face starts from `fresh`. The thread starts on the ruler's 0, which
 * is never the midline.
 */
export type Attempt = Readonly<{
  across: Across;
  drafts: Partial<Readonly<Record<Pin, Draft>>>;
  hasMarks: boolean;
  hints: number;
  judged?: Judged;
  tries: number;
  firstCredit: number;
  slip?: string;
  isKept: boolean;
  review: string;
}>;
export const fresh: Attempt = {
  across: { top: 0, foot: 0 },
  drafts: {},
  hasMarks: false,
  hints: 0,
  tries: 0,
  firstCredit: 0,
  isKept: false,
  review: '',
};

const held = (mm: number) => Math.round(Math.min(pinReachMm, Math.max(-pinReachMm, mm)) * 10) / 10 + 0;

/** The attempt on one face and the ways to move its pins. Moving one takes the answer away. */
export function usePins(onTyped: (pin: Pin) => void) {
  const [attempt, draw] = useState(fresh);
  // Quick changes count from the last one, also before that is drawn.
  const now = useRef(attempt);
  const steps = useSteps<Attempt, Pin>();
  /** Where the ruler's end stopped a pin. */
  const [stop, setStop] = useState('');
  const write = (next: Attempt) => {
    now.current = next;
    draw(next);
  };
  /** A thread that is right stays where it is. */
  const isSettled = attempt.judged?.marked.right === true;
  const place = ({ across, drafts }: Pick<Attempt, 'across' | 'drafts'>, where = '') => {
    if (isSettled) return;
    const { judged: _, ...rest } = now.current;
    setStop(where);
    write({ ...rest, across, drafts });
  };
  const put = (pin: Pin, to: Readonly<{ xMm?: number; draft?: Draft }>, where = '') => {
    const { across, drafts } = now.current;
    const { [pin]: _, ...others } = drafts;
    const xMm = to.xMm ?? across[pin];
    if (xMm !== across[pin]) steps.remember(pin, now.current);
    place(
      { across: { ...across, [pin]: xMm }, drafts: to.draft ? { ...others, [pin]: to.draft } : others },
      where,
    );
  };
  const moveTo = (pin: Pin, asked: number) =>
    put(pin, { xMm: held(asked) }, Math.abs(asked) > pinReachMm + 1e-6 ? badAcross(pin) : '');
  const goBack = (before: Attempt | undefined) => before && place(before);
  const last = steps.last();

  return {
    attempt,
    now,
    write,
    isSettled,
    stop,
    /** Another face, with its pins where they stood earlier today. */
    forget: (placed?: Pick<Attempt, 'across' | 'drafts'>) => {
      steps.forget();
      setStop('');
      write(placed ? { ...fresh, ...placed } : fresh);
    },
    moveTo,
    moveBy: (pin: Pin, byMm: number) => moveTo(pin, now.current.across[pin] + byMm),
    type: (pin: Pin, text: string) => {
      if (isSettled) return;
      onTyped(pin);
      const read = readWithin(text, { unit: 'mm', lo: -pinReachMm, hi: pinReachMm });
      put(pin, read.ok ? { xMm: read.value } : { draft: { text, sentence: badAcross(pin) } });
    },
    hold: { take: steps.take, letGo: steps.close, putBack: () => goBack(steps.broken()) },
    undo: () => !isSettled && goBack(steps.back()),
    undoes: last && placeMidlineWords.pins[last],
    reset: () => {
      steps.remember('', now.current);
      place(fresh);
    },
  };
}
