import puppeteer, { type Browser, type Page } from 'puppeteer-core';
import { browsers, chromiumFlags } from './browsers.mjs';

export type BrowserName = keyof typeof browsers;
export const browserNames = ['chromium', 'firefox'] as const satisfies readonly BrowserName[];

/** Opens one of the two browsers, without a window. */
export function openBrowser(name: BrowserName): Promise<Browser> {
  const { path: executablePath } = browsers[name];
  return name === 'chromium'
    ? puppeteer.launch({ executablePath, args: chromiumFlags })
    : puppeteer.launch({
        browser: 'firefox',
        executablePath,
        extraPrefsFirefox: { 'datareporting.policy.dataSubmissionEnabled': false, 'app.update.auto': false },
      });
}

/** How long a test waits for what a reader would see. */
const patienceMs = 60_000;

/** A tab that remembers what must never happen: errors, blocked content, requests to another origin. */
export type WatchedPage = Readonly<{ page: Page; faults: string[] }>;

/** Opens a tab that watches itself. `allowed` is the one origin it may talk to. */
export async function openPage(
  browser: Pick<Browser, 'newPage'>,
  allowed: string,
  width = 1280,
  height = 900,
): Promise<WatchedPage> {
  const page = await browser.newPage();
  await page.setViewport({ width, height });
  // What is waited for comes at last on a slow device too; a test that hangs is ended by its own limit.
  page.setDefaultTimeout(patienceMs);
  const faults: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) =>
    faults.push(`script: ${error instanceof Error ? error.message : String(error)}`),
  );
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(`${allowed}/`) && !/^(data|blob|about):/.test(url))
      faults.push(`request to another origin: ${url}`);
  });
  await page.evaluateOnNewDocument(() => {
    document.addEventListener('securitypolicyviolation', (event) =>
      console.error(
        `policy: ${event.violatedDirective} ${event.blockedURI} ${event.sourceFile}:${event.lineNumber}`,
      ),
    );
  });
  return { page, faults };
}
