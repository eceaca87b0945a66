import { unified } from '@astrojs/markdown-remark';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import sitemap from '@astrojs/sitemap';
import { defineConfig } from 'astro/config';
import rehypeKatex from 'rehype-katex';
import remarkMath from 'remark-math';
import { bundleScript } from './src/build/bundleScript.ts';
import { bundlerJsx } from './src/build/bundlerJsx.ts';
import { drawnAtBuild } from './src/build/drawnAtBuild.ts';
import { formulaBoxes } from './src/build/formulaBoxes.ts';
import { house } from './src/build/house.ts';
import { plainImports } from './src/build/plainImports.ts';
import { scriptHash } from './src/build/scriptHash.ts';
import { sharedChunks } from './src/build/sharedChunks.ts';
import { tieNumbers } from './src/build/tieNumbers.ts';
import { withoutFacades } from './src/build/withoutFacades.ts';
import { withoutSignals } from './src/build/withoutSignals.ts';

// No usage reports leave this machine.
process.env.ASTRO_TELEMETRY_DISABLED = '1';

/** Stands in every page, so the content policy names it by its hash. */
const firstScript = await bundleScript(new URL('components/site/first.ts', import.meta.url));

export default defineConfig({
  site: 'https://tautline.example',
  output: 'static',
  trailingSlash: 'always',
  build: { inlineStylesheets: 'never', format: 'directory' },
  devToolbar: { enabled: false },
  markdown: {
    // Formulas leave as MathML: no styles, no script. Errors are caught by a gate on the built pages.
    syntaxHighlight: false,
    processor: unified({
      remarkPlugins: [remarkMath, tieNumbers],
      rehypePlugins: [[rehypeKatex, { output: 'mathml', strict: 'error' }], formulaBoxes],
    }),
  },
  integrations: [preact(), mdx(), sitemap(), house()],
  vite: {
    define: { firstScript: JSON.stringify(firstScript) },
    plugins: [bundlerJsx(), drawnAtBuild(), plainImports(), withoutFacades(), withoutSignals()],
    build: {
      rolldownOptions: {
        output: {
          // What belongs together travels together: fewer requests, and the parts compress better in one.
          codeSplitting: { groups: sharedChunks },
        },
      },
    },
  },
  security: {
    csp: {
      directives: [
        "default-src 'self'",
        "img-src 'self' data: blob:",
        "font-src 'self'",
        "connect-src 'self'",
        "worker-src 'self'",
        "manifest-src 'self'",
        "object-src 'none'",
        "base-uri 'none'",
        "form-action 'self'",
      ],
      styleDirective: { resources: ["'self'"] },
      // The search index is WebAssembly, compiled in the page when a reader asks for it.
      scriptDirective: { resources: ["'self'", "'wasm-unsafe-eval'"], hashes: [scriptHash(firstScript)] },
    },
  },
});
