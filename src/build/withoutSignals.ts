import type { Plugin } from 'vite';

const asks = 'let signalsRaw = element.dataset.preactSignals;';

/**
 * No island here shares signals. Their half of the framework's starter would be fetched with every island all
 * the same: it is left out.
 */
export function withoutSignals(): Plugin {
  return {
    name: 'without-signals',
    transform: {
      filter: { id: /@astrojs\/preact\/dist\/client\.js/ },
      handler(code) {
        if (!code.includes(asks))
          throw new Error('The starter of islands has changed: see whether signals can still be left out.');
        return { code: code.replace(asks, 'const signalsRaw = false;'), map: null };
      },
    },
  };
}
