import { fileURLToPath } from 'node:url';
import { build } from 'vite';

/** The offline worker and what it imports as one classic script, which every browser starts as a worker. */
export async function bundleWorker(): Promise<string> {
  const built = await build({
    configFile: false,
    publicDir: false,
    logLevel: 'warn',
    define: { 'process.env.NODE_ENV': '"production"' },
    build: {
      write: false,
      lib: {
        entry: fileURLToPath(new URL('offlineWorker.ts', import.meta.url)),
        formats: ['iife'],
        name: 'offlineWorker',
      },
    },
  });
  const parts = [built].flat().flatMap((made) => ('output' in made ? made.output : []));
  const [script] = parts;
  if (parts.length !== 1 || script?.type !== 'chunk')
    throw new Error('The offline worker did not become one script.');
  return script.code;
}
