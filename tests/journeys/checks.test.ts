import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { beforeAll, expect, test } from 'vitest';
import { checks } from '#checks/index.ts';
import { withBrowsers } from './withBrowsers.ts';

let script = '';

/** The outside checks as one script, bundled as the site's own parts are. */
beforeAll(async () => {
  const built = await build({
    configFile: false,
    logLevel: 'error',
    build: {
      write: false,
      minify: false,
      lib: {
        entry: fileURLToPath(new URL('../../src/checks/index.ts', import.meta.url)),
        formats: ['iife'],
        name: 'outside',
      },
    },
  });
  const outputs = (Array.isArray(built) ? built : [built]).flatMap((one) =>
    'output' in one ? one.output : [],
  );
  script = outputs.flatMap((part) => (part.type === 'chunk' ? [part.code] : [])).join('\n');
});

withBrowsers('outside checks', ({ open }) => {
  test('[table] every printed value comes out in the browser as it does in Node', async () => {
    const { page, faults } = await open();
    await page.goto('about:blank');
    const rows: unknown = await page.evaluate(
      `(() => { ${script}; return outside.checks.map((check) => ({ id: check.id, ours: check.ours(), isNear: Math.abs(check.ours() - check.printed) <= check.tolerance })); })()`,
    );
    if (!Array.isArray(rows)) throw new Error('The checks did not run.');
    expect(rows).toHaveLength(checks.length);
    expect(rows.filter(({ isNear }) => !isNear)).toEqual([]);
    for (const [i, { ours }] of rows.entries()) expect(ours).toBeCloseTo(checks[i]?.ours() ?? NaN, 10);
    expect(faults).toEqual([]);
    await page.close();
  });
});
