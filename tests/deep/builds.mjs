import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { addLessons } from './manyLessons.mjs';
import { copySources, timeBuild } from './timeBuild.mjs';

/** The last commit before the build was made lighter. */
const before = 'b100dd4';
const rounds = 3;
const largerPages = 400;

/** Processor seconds a page of this build: as a share of an earlier commit's, built in turn with it, and with three times the pages. Ratios only; no bar. */
export function builds(asked = before) {
  const folder = mkdtempSync(join(tmpdir(), 'tautline-builds-'));
  try {
    const [now, then] = ['now', 'then'].map((name) => join(folder, name));
    copySources(now);
    copySources(then, asked);
    const timed = (place) => {
      const time = timeBuild(place);
      console.log(JSON.stringify({ build: place === now ? 'now' : 'then', ...time }));
      return time;
    };
    // The first build of each only warms the disk.
    for (const place of [now, then]) timeBuild(place);
    const runs = Array.from({ length: rounds }, () => ({ then: timed(then), now: timed(now) }));
    const { pages } = runs[0].now;
    addLessons(now, largerPages - pages);
    const larger = Array.from({ length: rounds }, () => timed(now));
    const perPage = (list) => middle(list.map(({ cpuSeconds, pages: count }) => cpuSeconds / count));
    const here = perPage(runs.map((run) => run.now));
    return {
      before: asked,
      runs,
      larger,
      cpuSecondsAPage: thousandth(here),
      ofBefore: thousandth(here / perPage(runs.map((run) => run.then))),
      largerOfThis: thousandth(perPage(larger) / here),
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const middle = (values) => values.toSorted((a, b) => a - b)[values.length >> 1];
const thousandth = (value) => Math.round(value * 1000) / 1000;
