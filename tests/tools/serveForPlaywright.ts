import { startSite } from '#tests/tools/builtSite.ts';

/** Serves the built site for the run; the workers read its address from the environment. */
export default async function serveForPlaywright(): Promise<() => Promise<void>> {
  const site = await startSite();
  process.env['TAUTLINE_ORIGIN'] = site.origin;
  return site.close;
}
