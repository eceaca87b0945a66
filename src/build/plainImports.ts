import type { Plugin } from 'vite';

/**
 * Parts fetched on demand here never bring style sheets of their own, so the bundler's preload helper (1 kB on every page)
 * and its lists of what to fetch beside each part have nothing to do: a plain import() is enough.
 */
export function plainImports(): Plugin {
  return {
    name: 'plain-imports',
    enforce: 'pre',
    configEnvironment: (name) => (name === 'client' ? { build: { modulePreload: false } } : undefined),
    load: (id) => (id.includes('vite/preload-helper') ? 'export const __vitePreload = (load) => load();' : null),
  };
}
