import type { Plugin } from 'vite';

/**
 * Parts that a browser fetches on demand may well be drawn at build: only there is their import() no division of the scripts, and the
 * bundler's warning of it says nothing. In the browser's own scripts the warning stays.
 */
export function drawnAtBuild(): Plugin {
  return {
    name: 'drawn-at-build',
    configEnvironment: (name) =>
      name === 'prerender'
        ? { build: { rolldownOptions: { checks: { ineffectiveDynamicImport: false } } } }
        : undefined,
  };
}
