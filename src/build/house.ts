import type { AstroIntegration } from 'astro';

/** What the build does after the pages are written: search index, gates, headers, offline list. */
export function house(): AstroIntegration {
  return {
    name: 'house',
    hooks: {},
  };
}
