import { offlineWords as words } from '#words/offline.ts';

const line = document.querySelector('[data-offline]');
/** What the foot says on every page, before anything is added. */
const always = line?.textContent ?? '';

/**
 * Announced only on the visit that fills the copy, or fails to: on later pages it is old news. A reader hears
 * what changes in a line that was there before: so the line is made one first.
 */
function say(isNew: boolean, ...sentences: readonly string[]): void {
  if (isNew) line?.setAttribute('role', 'status');
  setTimeout(() => line?.replaceChildren([always, ...sentences].join(' ')), isNew ? 100 : 0);
}

/** Asks the worker to keep the rest. It says at once that this takes a while, and what became of it at the end. */
const askForRest = (worker: ServiceWorker, onFirst: () => void): Promise<unknown> =>
  new Promise((answer) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => (data === 'first' ? onFirst() : answer(data));
    worker.postMessage('rest', [port2]);
  });

async function versionKept(): Promise<string> {
  const list: unknown = await (await fetch('/offline.json')).json();
  return typeof list === 'object' && list !== null && 'version' in list ? String(list.version) : '';
}

/**
 * Says in the foot what of the site stands on this device, and asks the worker for the rest. `refused`: the
 * worker has just refused what came.
 */
export async function sayOffline(refused?: unknown): Promise<void> {
  const worker = (await navigator.serviceWorker.getRegistration())?.active;
  if (!worker) {
    if (refused) say(true, words.refused);
    return;
  }
  let isNew = Boolean(refused);
  const rest = await askForRest(worker, () => {
    isNew = true;
    say(isNew, words.first);
  });
  if (rest === 'whole')
    say(isNew, words.ready(await versionKept()), ...(refused ? [words.newerRefused] : []));
  else say(true, rest === 'refused' ? words.restRefused : words.restLater);
}
