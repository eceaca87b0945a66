import type { Answered, Progress } from '#lib/practice/progress.ts';
import { daysBetween, isIsoDay, type IsoDay } from '#lib/quantities/isoDay.ts';
import { browserPlaces } from './places.ts';
import { openStore, type Kept } from './store.ts';

/** The one store of this page, opened at first use and never during rendering. */
const store = openStore(browserPlaces());
let loaded: Promise<Kept> | undefined;

const channel = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('tautline-practice');
const listeners = new Set<(kept: Kept) => void>();
const tell = (kept: Kept) => {
  for (const listener of listeners) listener(kept);
  return kept;
};
channel?.addEventListener('message', () => void store.load().then(tell));

/** What is kept at this moment. */
export const keptNow = (): Promise<Kept> => (loaded ??= store.load());

/** Calls back now and whenever this tab or another one adds something. Returns the way to stop. */
export function onKept(listener: (kept: Kept) => void): () => void {
  listeners.add(listener);
  void keptNow().then((kept) => listeners.has(listener) && listener(kept));
  return () => listeners.delete(listener);
}

async function change(how: () => Promise<Kept>): Promise<Kept> {
  await keptNow();
  const kept = await how();
  loaded = Promise.resolve(kept);
  channel?.postMessage('changed');
  return tell(kept);
}

export const keepAnswer = (answered: Answered): Promise<Kept> => change(() => store.add(answered));
export const keepProgress = (progress: Progress): Promise<Kept> => change(() => store.merge(progress));
export const copyOfProgress = (): Promise<string> => store.copy();

/** Today by the learner's own calendar. */
export function today(): IsoDay {
  const now = new Date();
  const text = [
    String(now.getFullYear()).padStart(4, '0'),
    String(now.getMonth() + 1).padStart(2, '0'),
    String(now.getDate()).padStart(2, '0'),
  ].join('-');
  return isIsoDay(text) ? text : '2000-01-01';
}

/** Days from today to a day, negative when it has passed. */
export const daysUntil = (day: IsoDay): number => daysBetween(today(), day);
