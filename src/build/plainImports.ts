import type { Plugin } from 'vite';

/** The bundler's preload helper in a file of its own, and a line that asks for it. */
const helperFile = /(?:^|\/)fetch\.[\w-]+\.js$/;
const helperImport = /import\s*\{\s*(?:\w+ as )?([\w$]+)\s*\}\s*from\s*["']\.\/fetch\.[\w-]+\.js["'];?/;

/**
 * Parts fetched on demand here never bring style sheets of their own, so the bundler's preload helper (1 kB
 * on every page) and its lists of what to fetch beside each part have nothing to do: a plain import() is
 * enough. What is left of the helper is one word, written where it is used: a file of 48 bytes would cost
 * every page a request.
 */
export function plainImports(): Plugin {
  return {
    name: 'plain-imports',
    enforce: 'post',
    configEnvironment: (name) => (name === 'client' ? { build: { modulePreload: false } } : undefined),
    load: {
      order: 'pre',
      handler: (id) =>
        id.includes('vite/preload-helper') ? 'export const __vitePreload = (load) => load();' : null,
    },
    generateBundle: {
      order: 'post',
      handler(_, bundle) {
        for (const [file, part] of Object.entries(bundle)) {
          if (helperFile.test(file)) delete bundle[file];
          else if (part.type === 'chunk') {
            part.code = part.code.replace(helperImport, 'const $1=e=>e();');
            part.imports = part.imports.filter((name) => !helperFile.test(name));
          }
        }
      },
    },
  };
}
