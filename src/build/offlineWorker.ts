import { clientsClaim } from 'workbox-core';
import { cleanupOutdatedCaches, matchPrecache, precacheAndRoute } from 'workbox-precaching';
import { registerRoute } from 'workbox-routing';
import { NetworkOnly } from 'workbox-strategies';

/** Each address that is kept, and the mark of its content; none where the name of the file carries it. The build writes it in front of this script. */
declare const keptOffline: Readonly<Record<string, string | null>>;

// It never skips waiting: the version a page was opened with stays until every tab is closed, so nothing changes in the middle of an
// exercise. It claims the first page, so one visit is enough.
clientsClaim();
// A calculator's state lives in the query: the page is the same page.
precacheAndRoute(
  Object.entries(keptOffline).map(([url, revision]) => ({ url, revision })),
  { ignoreURLParametersMatching: [/./] },
);
cleanupOutdatedCaches();
registerRoute(
  ({ request, sameOrigin }) => sameOrigin && request.mode === 'navigate',
  new NetworkOnly({ plugins: [{ handlerDidError: () => matchPrecache('404.html') }] }),
);
