import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';
import { afterAll, expect, test } from 'vitest';
import { press, retype, wake, waitForWords, wordsOf } from './onPage.ts';
import { withBrowsers } from './withBrowsers.ts';

const folder = mkdtempSync(join(tmpdir(), 'marks-'));
afterAll(() => rmSync(folder, { recursive: true }));

const tools = '[data-mark-files]';
const says = `${tools} [role=status]`;

/** Runs in the page: keeps the text of whatever is handed out as a file. */
function keepFiles(): void {
  const original = URL.createObjectURL;
  URL.createObjectURL = (blob) => {
    if (blob instanceof Blob)
      blob.text().then((text) => document.documentElement.setAttribute('data-handed-out', text));
    return original.call(URL, blob);
  };
}

async function choose(page: Page, name: string, content: string): Promise<void> {
  const file = join(folder, name);
  writeFileSync(file, content);
  const box = await page.waitForSelector(`${tools} input[type=file]`);
  if (!box) throw new Error('The page has no box for files.');
  // The handle's type is any element; the selector says which.
  await (await box.toElement('input')).uploadFile(file);
}

const isAt = (page: Page, query: string) =>
  page.waitForFunction(
    (part) => location.search.includes(part) && document.readyState === 'complete',
    {},
    query,
  );

withBrowsers('marks as a file', ({ open, site }) => {
  test('[hand] what was typed is saved, opened again, and Back brings what stood before', async () => {
    const { page, faults } = await open();
    await page.evaluateOnNewDocument(keepFiles);
    const address = `${site().origin}/calculators/usual-difference/`;
    await page.goto(address);
    await wake(page, '.calculator .says');
    await retype(page, '#usual-difference', '3.7');
    await waitForWords(page, '.calculator .says', /3\.7/);
    await press(page, tools, 'Save as a file');
    await waitForWords(page, says, /Saved/);
    await page.waitForFunction(() => document.documentElement.hasAttribute('data-handed-out'));
    const content = await page.$eval('html', (html) => html.getAttribute('data-handed-out') ?? '');
    expect(JSON.parse(content)).toMatchObject({
      schema: 1,
      calculator: 'usual-difference',
      fields: { difference: '3.7' },
    });

    await retype(page, '#usual-difference', '1.2');
    await waitForWords(page, '.calculator .says', /1\.2/);
    await choose(page, 'marks.json', content);
    await isAt(page, 'difference=3.7');
    await wake(page, '.calculator .says');
    await waitForWords(page, '.calculator .says', /3\.7/);
    // A page that comes back from memory never loads: waiting for the load would wait for ever.
    await page.evaluate(() => history.back());
    await isAt(page, 'difference=1.2');
    await wake(page, '.calculator .says');
    await waitForWords(page, '.calculator .says', /1\.2/);
    expect(faults).toEqual([]);
    await page.close();
  });

  test('[hand] a newer file, a foreign file and one of another calculator change nothing, and say so', async () => {
    const { page, faults } = await open();
    await page.goto(`${site().origin}/calculators/usual-difference/?difference=5.5`);
    await wake(page, '.calculator .says');
    const before = await waitForWords(page, '.calculator .says', /5\.5/);
    await choose(page, 'newer.json', '{"schema":2,"holds":"calculator"}');
    await waitForWords(page, says, /newer version.*Nothing on this page was changed/);
    await choose(page, 'foreign.json', '{"answers":"<img src=x onerror=alert(1)>"}');
    await waitForWords(page, says, /not a file saved by a calculator/);
    await choose(
      page,
      'other.json',
      JSON.stringify({
        schema: 1,
        holds: 'calculator',
        library: '0.1.0',
        calculator: 'midline-and-sides',
        fields: { level: 'pupils' },
      }),
    );
    await waitForWords(page, says, /belongs to/);
    expect(await page.$eval(`${says} a`, (link) => link.getAttribute('href'))).toBe(
      '/calculators/midline-and-sides/?level=pupils',
    );
    expect(await wordsOf(page, '.calculator .says')).toBe(before);
    expect(faults).toEqual([]);
    await page.close();
  });
});
