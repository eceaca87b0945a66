import { pathToFileURL } from 'node:url';
import type { Plugin } from 'vite';

/**
 * In what goes to the browser, facts keep value, unit and status only. Quotes and places are words for the built pages:
 * shipping them would double the script of a calculator.
 */
export function bareFacts(): Plugin {
  return {
    name: 'bare-facts',
    enforce: 'pre',
    applyToEnvironment: ({ name }) => name === 'client',
    async load(id) {
      if (!/\/src\/lib\/[^/]+\/facts\/[^/]+\.ts$/.test(id)) return null;
      const loaded: Record<string, Record<string, { value: unknown; unit: string; range?: unknown; backing: { status: string } }>> = await import(pathToFileURL(id).href);
      return Object.entries(loaded)
        .map(([name, facts]) => {
          const bare = Object.entries(facts).map(([key, { value, unit, range, backing }]) => [key, { value, unit, ...(range !== undefined && { range }), backing: { status: backing.status } }]);
          return `export const ${name} = ${JSON.stringify(Object.fromEntries(bare))};`;
        })
        .join('\n');
    },
  };
}
