import { fileURLToPath } from 'node:url';
import { build } from 'vite';

/**
 * A script bundled as the site's own parts are, and run as it is: the test runner wraps every import in a
 * getter, which takes longer than the sums. The name is looked for beside this file.
 */
export async function bundled<Exports>(name: string): Promise<Exports> {
  const built = await build({
    configFile: false,
    logLevel: 'error',
    build: {
      write: false,
      minify: false,
      lib: { entry: fileURLToPath(new URL(name, import.meta.url)), formats: ['es'] },
    },
  });
  const outputs = (Array.isArray(built) ? built : [built]).flatMap((one) =>
    'output' in one ? one.output : [],
  );
  const code = outputs.flatMap((part) => (part.type === 'chunk' ? [part.code] : [])).join('\n');
  const exports: Exports = await import(
    /* @vite-ignore */ `data:text/javascript;base64,${Buffer.from(code).toString('base64')}`
  );
  return exports;
}
