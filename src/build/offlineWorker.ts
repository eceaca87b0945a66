import { clientsClaim } from 'workbox-core/clientsClaim.js';
import { copyResponse } from 'workbox-core/copyResponse.js';
import { cleanupOutdatedCaches, PrecacheController, PrecacheRoute } from 'workbox-precaching';
import { registerRoute } from 'workbox-routing';
import { NetworkOnly } from 'workbox-strategies';

type Page = Readonly<{ postMessage: (told: string) => void }>;

/**
 * Each address that is kept and the mark of its content, and how many of them are the first step. The build
 * writes both in front of this script.
 */
declare const keptOffline: Readonly<Record<string, string>>;
declare const keptFirst: number;
/** What a worker has of its own. */
declare const registration: ServiceWorkerRegistration;
declare const clients: Readonly<{
  matchAll: (which: { includeUncontrolled: boolean }) => Promise<readonly Page[]>;
}>;

/** What came is not what was published: an older or later version, half a file, or changed on the way. */
class Refused extends Error {}

const hashedNames = /^_astro\/[^/]+[.-][\w-]{8}\.\w+$/;
const markBytes = 6;
const atOneTime = 6;

const addresses = Object.keys(keptOffline);
const controller = new PrecacheController();
controller.addToCacheList(
  Object.entries(keptOffline).map(([url, mark]) => ({ url, revision: hashedNames.test(url) ? null : mark })),
);

/** The mark of a content: the start of its SHA-256. It finds what was changed by chance, not a forger. */
async function markOf(content: ArrayBuffer): Promise<string> {
  const hash = await crypto.subtle.digest('SHA-256', content);
  return btoa(String.fromCharCode(...new Uint8Array(hash, 0, markBytes)));
}

/** Asks the browser's own store first: the open page has just filled it. Where that holds another content, the network. */
async function fetchMarked(url: string): Promise<Response> {
  for (const cache of ['default', 'reload'] as const) {
    const answer = await fetch(url, { cache, credentials: 'same-origin' });
    if (answer.status >= 500) throw new Error(`${url}: ${answer.status}`);
    if (answer.ok && (await markOf(await answer.clone().arrayBuffer())) === keptOffline[url])
      return answer.redirected ? copyResponse(answer) : answer;
  }
  throw new Refused(url);
}

/** The store, and which of these addresses it lacks. */
async function look(urls: readonly string[]) {
  const store = await caches.open(controller.strategy.cacheName);
  const held = new Set((await store.keys()).map(({ url }) => url));
  const lacks = urls.filter((url) => !held.has(controller.getCacheKeyForURL(url) ?? ''));
  return { store, lacks };
}

/** Keeps what is lacking of these addresses, each looked at. Stops at the first that is refused. */
async function keep(urls: readonly string[]): Promise<void> {
  const { store, lacks } = await look(urls);
  const inTurn = async () => {
    for (let url = lacks.shift(); url !== undefined; url = lacks.shift())
      try {
        await store.put(controller.getCacheKeyForURL(url) ?? url, await fetchMarked(url));
      } catch (error) {
        lacks.length = 0;
        throw error;
      }
  };
  await Promise.all(Array.from({ length: atOneTime }, inTurn));
}

/**
 * A first version starts with its first step, so that it is there within seconds. A later one has to be whole
 * before it takes the place of an earlier: where a file is refused, the earlier stays, and the next visit tries
 * again.
 */
async function install(): Promise<void> {
  try {
    await keep(registration.active ? addresses : addresses.slice(0, keptFirst));
  } catch (error) {
    if (error instanceof Refused)
      for (const page of await clients.matchAll({ includeUncontrolled: true })) page.postMessage('refused');
    throw error;
  }
}

let rest: Promise<void> | undefined;
/** Keeps the rest when a page asks for it, and tells that page. Pages that ask meanwhile wait for the same. */
async function keepRest(page: Page): Promise<void> {
  try {
    if ((await look(addresses)).lacks.length > 0) {
      page.postMessage('first');
      await (rest ??= keep(addresses));
    }
    page.postMessage('whole');
  } catch (error) {
    page.postMessage(error instanceof Refused ? 'refused' : 'missing');
  } finally {
    rest = undefined;
  }
}

/** A worker is not put to sleep before this work is done; a step that fails is not taken. */
const during = (event: Event, work: Promise<unknown>): void =>
  Reflect.apply(Reflect.get(event, 'waitUntil'), event, [work]);

addEventListener('install', (event) => during(event, install()));
addEventListener('message', (event) => {
  const [page] = event.ports;
  if (page) during(event, keepRest(page));
});
// What no longer belongs to the site goes once this version starts.
addEventListener('activate', (event) => controller.activate(event));
cleanupOutdatedCaches();
// It never skips waiting: the version a page was opened with stays until every tab is closed, so nothing changes in the middle of an
// exercise. It claims the first page, so one visit is enough.
clientsClaim();
// A calculator's state lives in the query: the page is the same page.
registerRoute(new PrecacheRoute(controller, { ignoreURLParametersMatching: [/./] }));
registerRoute(
  ({ request, sameOrigin }) => sameOrigin && request.mode === 'navigate',
  new NetworkOnly({ plugins: [{ handlerDidError: () => controller.matchPrecache('404.html') }] }),
);
