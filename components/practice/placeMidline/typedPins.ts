import type { PracticeLevel } from '#lib/face/disturbance.ts';
import { keepTyped, typedHere } from '#components/site/typedShelf.ts';
import { seedCount } from '#lib/practice/itemSeed.ts';
import { readWithin } from '#calculators/readWithin.ts';
import { typedWords } from '#words/typed.ts';
import { badAcross } from '#words/skills/placeMidline.ts';
import type { Draft } from '#components/calculator/frame/useCalculator.ts';
import type { Across, Judged } from './judge.ts';
import { pinReachMm } from './placeView.ts';

const what = 'problem place-the-midline';
const pins = ['top', 'foot'] as const;
const levels = [0, 1, 2, 3, 4] as const;
type Drafts = Partial<Readonly<Record<keyof Across, Draft>>>;
type Face = Readonly<{ seed: number; level: PracticeLevel }>;

type Placed = Readonly<{ across: Across; drafts: Drafts }>;
type Kept = Readonly<{ face: Face; placed: Placed }>;

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

function readPins(typed: unknown): Kept | undefined {
  if (!isRecord(typed)) return undefined;
  const { seed } = typed;
  const level = levels.find((one) => one === typed['level']);
  if (typeof seed !== 'number' || !Number.isInteger(seed) || seed < 0 || seed >= seedCount) return undefined;
  if (level === undefined) return undefined;
  const across = { top: 0, foot: 0 };
  const drafts: { -readonly [K in keyof Across]?: Draft } = {};
  for (const pin of pins) {
    const mm = typed[pin];
    if (typeof mm !== 'number' || !(Math.abs(mm) <= pinReachMm)) return undefined;
    across[pin] = mm;
    const text = typed[`${pin}Text`];
    if (typeof text !== 'string') continue;
    const read = readWithin(text, { unit: 'mm', lo: -pinReachMm, hi: pinReachMm });
    if (read.ok) across[pin] = read.value;
    else drafts[pin] = { text, sentence: badAcross(pin) };
  }
  return { face: { seed, level }, placed: { across, drafts } };
}

/**
 * The face to open, and where its pins stood today; a link to another face than theirs wins. `said`: that what
 * is kept belongs to another version of the exercise.
 */
export function typedPins(
  version: number,
  linked: Face,
  query: string,
): Readonly<{ face: Face; placed?: Placed; said: string }> {
  const entry = typedHere(what);
  if (!entry) return { face: linked, said: '' };
  const found = entry.version === version ? readPins(entry.typed) : undefined;
  if (!found) return { face: linked, said: typedWords.problemLost };
  const { seed, level } = found.face;
  const isOther = query !== '' && (linked.seed !== seed || linked.level !== level);
  return isOther ? { face: linked, said: '' } : { ...found, said: '' };
}

/** Until a pin has been moved, what was kept earlier is not touched. */
let hasMoved = false;

/**
 * Keeps the pins until the day is over; on the ruler's 0, or once they are right, there is nothing to keep.
 * `isFresh`: nothing was done with this face yet.
 */
export function keepPins(
  version: number,
  { seed, level }: Face,
  { across, drafts, judged }: Readonly<{ across: Across; drafts: Drafts; judged?: Judged }>,
  isFresh: boolean,
): void {
  hasMoved ||= !isFresh;
  if (!hasMoved) return;
  const isMoved = across.top !== 0 || across.foot !== 0 || drafts.top || drafts.foot;
  const texts = Object.fromEntries(
    pins.flatMap((pin) => (drafts[pin] ? [[`${pin}Text`, drafts[pin].text.slice(0, 100)] as const] : [])),
  );
  keepTyped(
    what,
    isMoved && !judged?.marked.right ? { version, typed: { seed, level, ...across, ...texts } } : undefined,
  );
}
