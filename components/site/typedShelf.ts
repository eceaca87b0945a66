import { today } from '#components/practice/today.ts';
import { typedPrefix } from './typedToday.ts';

/**
 * What was typed in one place of the site, on one day, by the version of what it was typed into.
 */
type Entry = Readonly<{ day: string; version: number; typed: unknown }>;

/** Long enough that a mark which is dragged is not written at every step, short enough for a crash. */
const pauseMs = 300;

const keyOf = (what: string): string => `${typedPrefix}${location.pathname} ${what}`;

function entryOf(text: string | null): Entry | undefined {
  try {
    const found: unknown = JSON.parse(text ?? '');
    if (typeof found !== 'object' || found === null || !('day' in found) || !('version' in found))
      return undefined;
    const { day, version } = found;
    if (typeof day !== 'string' || typeof version !== 'number') return undefined;
    return { day, version, typed: 'typed' in found ? found.typed : undefined };
  } catch {
    return undefined;
  }
}

/** Takes away what is not of today, and what cannot be read. Where storage is denied there is nothing. */
function clearEarlierDays(): void {
  try {
    const day = today();
    for (const key of Object.keys(localStorage))
      if (key.startsWith(typedPrefix) && entryOf(localStorage.getItem(key))?.day !== day)
        localStorage.removeItem(key);
  } catch {
    // Denied: nothing is kept either.
  }
}
clearEarlierDays();

/** What was typed into this part of this page today, with the version it was typed into. */
export function typedHere(what: string): Omit<Entry, 'day'> | undefined {
  try {
    clearEarlierDays();
    return entryOf(localStorage.getItem(keyOf(what)));
  } catch {
    return undefined;
  }
}

const waiting = new Map<string, Omit<Entry, 'day'> | undefined>();
let timer: ReturnType<typeof setTimeout> | undefined;

function write(): void {
  clearTimeout(timer);
  timer = undefined;
  for (const [key, entry] of waiting) {
    try {
      if (entry) localStorage.setItem(key, JSON.stringify({ day: today(), ...entry } satisfies Entry));
      else localStorage.removeItem(key);
    } catch {
      // Denied or full: the page works as it did before anything was kept.
    }
  }
  waiting.clear();
}
// A page that is left may not come to its timers again.
addEventListener('pagehide', write);
document.addEventListener('visibilitychange', write);

/**
 * Keeps what was typed into this part of this page until the day is over, after a short pause and at the
 * latest when the page is left. Nothing takes away what was kept.
 */
export function keepTyped(what: string, entry: Omit<Entry, 'day'> | undefined): void {
  waiting.set(keyOf(what), entry);
  timer ??= setTimeout(write, pauseMs);
}
