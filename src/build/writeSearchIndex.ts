import { readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { close, createIndex } from 'pagefind';

/** What the site does not use: ready-made page parts, the worker, the engine for pages without a language. */
const unused = /^(pagefind-(ui|modular-ui|component-ui|highlight|worker)\b|wasm\.unknown)/;

/**
 * Words and places of the index in one file. Small files: a search fetches those its words are in, so its
 * weight hardly grows with the site.
 */
const entriesAFile = 2000;

/** Indexes the words of the built pages. Returns how many pages can be found; none is an error. */
export async function writeSearchIndex(folder: string): Promise<number> {
  // Read when the indexer starts; it has no other way in. Unknown to it, the files would be large again, and
  // the site's test of the search's weight would say so.
  process.env['PAGEFIND_UNSTABLE_INDEX_CHUNK_SIZE'] = String(entriesAFile);
  const { index, errors } = await createIndex({
    excludeSelectors: ['math', 'astro-island', 'svg', 'nav', 'script', 'template'],
    forceLanguage: 'en',
  });
  if (!index) throw new Error(`The search index could not be made: ${errors.join('; ')}`);
  const { page_count: found } = await index.addDirectory({ path: folder });
  const written = await index.writeFiles({ outputPath: join(folder, 'pagefind') });
  await close();
  if (written.errors.length > 0)
    throw new Error(`The search index could not be written: ${written.errors.join('; ')}`);
  for (const name of readdirSync(join(folder, 'pagefind')))
    if (unused.test(name)) rmSync(join(folder, 'pagefind', name));
  if (found === 0) throw new Error('The search index is empty: no page carries data-pagefind-body.');
  return found;
}
