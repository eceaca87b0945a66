import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { bundleScript } from './bundleScript.ts';
import { eachBuiltPage, filesUnder } from './builtPages.ts';
import { faultsIn, gates } from './gates/index.ts';
import { narrowed, writePolicy } from './narrowPolicy.ts';
import { skillIslands } from './skillIslands.ts';
import { sourcesHash, stampName } from './sourcesHash.mjs';
import { policyOf, writeHeaders } from './writeHeaders.ts';
import { writeSearchIndex } from './writeSearchIndex.ts';
import { writeServiceWorker } from './writeServiceWorker.ts';

const mostShown = 100;
const kilobytes = (bytes: number): string => `${Math.round(bytes / 1000)} kB`;

/**
 * What the build does before the pages are read (the islands of practice) and after they are written: each
 * page's content policy, gates, search index, headers, offline list.
 */
export function house(): AstroIntegration {
  let origin = '';
  let sources = '';
  return {
    name: 'house',
    hooks: {
      'astro:config:setup': ({ updateConfig, createCodegenDir, addWatchFile }) => {
        writeFileSync(new URL('SkillIsland.astro', createCodegenDir()), skillIslands());
        addWatchFile(new URL('../skills/index.ts', import.meta.url));
        // Every content file carries a directive of Astro's own that the bundler warns about, once a file:
        // the real lines drown.
        updateConfig({ vite: { build: { rolldownOptions: { checks: { moduleLevelDirective: false } } } } });
      },
      'astro:config:done': ({ config }) => {
        origin = new URL(config.site ?? 'http://localhost').origin;
      },
      'astro:build:start': () => {
        sources = sourcesHash();
      },
      'astro:build:done': async ({ dir, logger }) => {
        const folder = fileURLToPath(dir).replace(/[/\\]$/, '');
        const policies = new Set<string>();
        const withoutPolicy: string[] = [];
        let count = 0;
        function* read() {
          for (const page of eachBuiltPage(folder)) {
            count++;
            const policy = policyOf(page);
            if (policy) {
              const narrow = narrowed(policy, page);
              writePolicy(folder, page, policy, narrow);
              policies.add(narrow);
            } else withoutPolicy.push(page.file);
            yield page;
          }
        }
        // Before the gates: what the first script of every page names has to be there.
        writeFileSync(
          join(folder, 'again.js'),
          await bundleScript(new URL('../../components/site/again.ts', import.meta.url)),
        );
        const site = { origin, files: new Set(filesUnder(folder)) };
        const faults = faultsIn(read(), site);
        for (const line of faults.slice(0, mostShown)) logger.error(line);
        if (faults.length > 0)
          throw new Error(
            `The built pages do not pass the gates: ${faults.length} fault${faults.length === 1 ? '' : 's'}, named above.`,
          );
        if (withoutPolicy.length > 0)
          throw new Error(`Pages without a content policy: ${withoutPolicy.slice(0, mostShown).join(', ')}.`);
        logger.info(`${count} pages passed ${Object.keys(gates).length} gates`);
        writeFileSync(
          join(folder, 'robots.txt'),
          `User-agent: *\nAllow: /\nSitemap: ${origin}/sitemap-index.xml\n`,
        );
        writeHeaders(folder, policies);
        logger.info(`${await writeSearchIndex(folder)} pages can be searched`);
        const { version, count: files, bytes, transferBytes } = await writeServiceWorker(folder);
        logger.info(
          `offline list, version ${version}: ${files} files, ${kilobytes(bytes)} on the device, ${kilobytes(transferBytes)} sent`,
        );
        writeFileSync(join(folder, stampName), sources);
      },
    },
  };
}
