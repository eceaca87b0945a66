import type { Plugin } from 'vite';

const presetName = 'vite:preact-jsx';

/**
 * JSX by the bundler itself. The framework's preset sends every script, with JSX or without, through Babel, once for the pages and once
 * for the browser: two fifths of the whole build, for the same files. So its step is taken out, and the bundler told what it did.
 */
export function bundlerJsx(): Plugin {
  let isOut = false;
  return {
    name: 'bundler-jsx',
    config: () => ({ oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } } }),
    // Asked several times in one build, with the same plugins each time.
    configResolved({ plugins }) {
      const preset = plugins.find(({ name }) => name === presetName);
      if (preset?.transform) {
        delete preset.transform;
        isOut = true;
      }
      if (!preset || !isOut)
        throw new Error(`The step “${presetName}” is not there: see how the framework now reads JSX.`);
    },
  };
}
