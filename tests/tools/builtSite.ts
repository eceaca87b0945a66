import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { filesUnder } from '#build/builtPages.ts';
import { serve } from '#build/serve.mjs';

/** The folder under test: dist, or another build named by TAUTLINE_DIST. */
export const builtFolder = resolve(
  fileURLToPath(new URL('../..', import.meta.url)),
  process.env['TAUTLINE_DIST'] ?? 'dist',
);

/** The address of every built page. */
export const builtAddresses: readonly string[] = filesUnder(builtFolder)
  .filter((file) => file.endsWith('.html'))
  .map((file) => `/${file.replace(/(^|\/)index\.html$/, '$1')}`);

/** The pages below one address, that page itself left out. */
export const addressesUnder = (start: string): readonly string[] =>
  builtAddresses.filter((address) => address.startsWith(start) && address !== start);

/** Serves the built site with its headers, on a free port. `folder`: another copy of it. */
export async function startSite(
  folder = builtFolder,
): Promise<Readonly<{ origin: string; close: () => Promise<void> }>> {
  const server = await serve(folder);
  const place = server.address();
  if (place === null || typeof place === 'string') throw new Error('The test server has no port.');
  return {
    origin: `http://localhost:${place.port}`,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}
