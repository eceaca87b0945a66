import type { Answered, Progress } from '#lib/practice/progress.ts';
import { daysBetween, type IsoDay } from '#lib/quantities/isoDay.ts';
import { browserPlaces } from './places.ts';
import { openStore, type Kept } from './store.ts';
import { clearPutDown, takeUp } from './takeUp.ts';
import { today } from './today.ts';

export { today } from './today.ts';

/** The one store of this page, opened at first use and never during rendering. */
const store = openStore(browserPlaces());
let loaded: Promise<Kept> | undefined;

const channel =
  typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('tautline-practice');
const listeners = new Set<(kept: Kept) => void>();
const tell = (kept: Kept) => {
  for (const listener of listeners) listener(kept);
  return kept;
};
channel?.addEventListener('message', () => void store.load().then(tell));

/** What is kept at this moment, with what an earlier page had to leave behind. */
export const keptNow = (): Promise<Kept> => (loaded ??= store.load().then((kept) => takeUp(store, kept)));

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

/** Keeps an answer for good; `putDown` has kept it until now. */
export async function keepAnswer(answered: Answered): Promise<Kept> {
  const kept = await change(() => store.add(answered));
  clearPutDown(answered, kept);
  return kept;
}
export const keepProgress = (progress: Progress): Promise<Kept> => change(() => store.merge(progress));
export const copyOfProgress = (): Promise<string> => store.copy();

/** Days from today to a day, negative when it has passed. */
export const daysUntil = (day: IsoDay): number => daysBetween(today(), day);
