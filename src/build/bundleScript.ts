import { fileURLToPath } from 'node:url';
import { build } from 'vite';

/**
 * A file of ours and what it imports as one classic script, small: for the offline worker, which every browser
 * starts so, and for what stands within the pages.
 */
export async function bundleScript(entry: URL): Promise<string> {
  const built = await build({
    configFile: false,
    publicDir: false,
    logLevel: 'warn',
    define: { 'process.env.NODE_ENV': '"production"' },
    build: {
      write: false,
      lib: { entry: fileURLToPath(entry), formats: ['iife'], name: 'ours' },
    },
  });
  const parts = [built].flat().flatMap((made) => ('output' in made ? made.output : []));
  const [script] = parts;
  if (parts.length !== 1 || script?.type !== 'chunk')
    throw new Error(`${entry.pathname} did not become one script.`);
  return script.code.trim();
}
