import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ensureInstalled, root, run } from './ensureInstalled.mjs';
import { serve } from './serve.mjs';
import { sourcesHash, stampName } from './sourcesHash.mjs';

// `npm start`: from a fresh clone to the site in the browser, whatever is missing.

const firstPort = Number(process.env.PORT ?? 4321);

ensureInstalled();
const stamp = join(root, 'dist', stampName);
if (!existsSync(stamp) || readFileSync(stamp, 'utf8') !== sourcesHash()) {
  console.log('Building the site …');
  if (run('npm', ['run', '--silent', 'build']) !== 0) process.exit(1);
}

for (let port = firstPort; ; port++) {
  try {
    await serve(join(root, 'dist'), port);
    console.log(`\nTautline is at http://localhost:${port}/   (Ctrl+C stops it)`);
    break;
  } catch (error) {
    if (error.code !== 'EADDRINUSE' || port > firstPort + 20) throw error;
  }
}
