import type { Plugin } from 'vite';

/**
 * An island's file may also hold what other files take from it. Held to an island's own names, the bundler writes a second file that hands
 * on those names and nothing else: one request more for the framework's starter on every page with an island, and one for some islands.
 */
export function withoutFacades(): Plugin {
  return {
    name: 'without-facades',
    configEnvironment: (name) =>
      name === 'client'
        ? { build: { rolldownOptions: { preserveEntrySignatures: 'allow-extension' } } }
        : undefined,
  };
}
