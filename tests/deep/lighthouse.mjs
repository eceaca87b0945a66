import { join } from 'node:path';
import lighthouse from 'lighthouse';
import puppeteer from 'puppeteer-core';
import { root } from '../../src/build/ensureInstalled.mjs';
import { serve } from '../../src/build/serve.mjs';
import { browsers, chromiumFlags } from '../tools/browsers.mjs';

const addresses = [
  '/',
  '/lessons/mapping/midline-when-the-nose-leans/',
  '/calculators/midline-and-sides/',
  '/practice/midline-from-pairs/',
  '/rules/',
  '/evidence/mapping/',
];
const runs = 5;
const median = (values) => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];

/** Loads pages as a phone on a slow line, five times each, and keeps the median of every score. */
export async function lighthouseScores() {
  const server = await serve(join(root, 'dist'));
  const rows = {};
  try {
    for (const address of addresses) {
      const results = [];
      for (let i = 0; i < runs; i++) {
        const browser = await puppeteer.launch({
          executablePath: browsers.chromium.path,
          args: chromiumFlags,
        });
        try {
          const page = await browser.newPage();
          const { lhr } = await lighthouse(
            `http://localhost:${server.address().port}${address}`,
            { logLevel: 'error', output: 'json' },
            undefined,
            page,
          );
          results.push(lhr);
        } finally {
          await browser.close();
        }
      }
      const score = (category) =>
        Math.round(100 * median(results.map(({ categories }) => categories[category]?.score ?? 0)));
      const failed = [
        ...new Set(
          results.flatMap(({ audits, categories }) =>
            Object.values(categories).flatMap(({ auditRefs }) =>
              auditRefs
                .filter(({ id, weight }) => weight > 0 && audits[id].score !== null && audits[id].score < 0.9)
                .map(({ id }) => id),
            ),
          ),
        ),
      ];
      rows[address] = {
        performance: score('performance'),
        access: score('accessibility'),
        practice: score('best-practices'),
        search: score('seo'),
        largestPaintMs: Math.round(
          median(results.map(({ audits }) => audits['largest-contentful-paint'].numericValue)),
        ),
        blockingMs: Math.round(
          median(results.map(({ audits }) => audits['total-blocking-time'].numericValue)),
        ),
        shift:
          Math.round(
            1000 * median(results.map(({ audits }) => audits['cumulative-layout-shift'].numericValue)),
          ) / 1000,
        failed,
      };
      console.log(address, JSON.stringify(rows[address]));
    }
  } finally {
    server.close();
    server.closeAllConnections();
  }
  return { runs, device: 'phone, simulated slow line', pages: rows };
}
