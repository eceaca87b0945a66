import { serve } from '#build/serve.mjs';
import { openBrowser } from '#tests/tools/openBrowser.ts';

// node tests/tools/compareStyles.ts before after /rules/ /lessons/mapping/the-arch/ …
// What is laid out or drawn otherwise on these pages of two built folders, element by element: narrow, wide and on paper.

const [before, after, ...addresses] = process.argv.slice(2);
if (before === undefined || after === undefined || addresses.length === 0)
  throw new Error('Two built folders and some addresses, please.');

const settings = [
  { width: 390, media: 'screen' },
  { width: 1280, media: 'screen' },
  { width: 700, media: 'print' },
] as const;
const mostShown = 8;

/** Each element's name and a hash of all its computed styles and those of its two generated boxes; for the elements asked for, the styles themselves. */
const stylesOnPage = (wanted: readonly number[]) => {
  // No script runs, so that both pages stand still; styles that wait for scripts are looked at all the same.
  document.documentElement.dataset['js'] = '';
  // Variables stand in any order, and show in what uses them.
  const told = (style: CSSStyleDeclaration) =>
    [...style]
      .filter((name) => !name.startsWith('--'))
      .map((name) => `${name}:${style.getPropertyValue(name)}`);
  const hashOf = (text: string) => {
    let hash = 7;
    for (let i = 0; i < text.length; i++) hash = (Math.imul(hash, 31) + text.charCodeAt(i)) | 0;
    return hash;
  };
  return [document.documentElement, ...document.querySelectorAll('body, body *')].map((element, at) => {
    const styles = [null, '::before', '::after'].flatMap((part) => told(getComputedStyle(element, part)));
    return {
      name: `${element.tagName.toLowerCase()}.${element.getAttribute('class') ?? ''}`,
      hash: hashOf(styles.join()),
      styles: wanted.includes(at) ? styles : [],
    };
  });
};

const browser = await openBrowser('chromium');
const servers = await Promise.all([before, after].map((folder) => serve(folder)));
const origins = servers.map((server) => {
  const place = server.address();
  if (place === null || typeof place === 'string') throw new Error('The server has no port.');
  return `http://localhost:${place.port}`;
});
for (const address of addresses) {
  for (const { width, media } of settings) {
    const pages = await Promise.all(
      origins.map(async (origin) => {
        const page = await browser.newPage();
        await page.setJavaScriptEnabled(false);
        await page.setViewport({ width, height: 900 });
        await page.emulateMediaType(media);
        await page.goto(origin + address, { waitUntil: 'load' });
        return page;
      }),
    );
    const read = (wanted: readonly number[]) =>
      Promise.all(pages.map((page) => page.evaluate(stylesOnPage, wanted)));
    const [old = [], now = []] = await read([]);
    const differing = [...now.keys()].filter(
      (at) => old[at]?.name !== now[at]?.name || old[at]?.hash !== now[at]?.hash,
    );
    const [oldShown = [], nowShown = []] =
      differing.length > 0 ? await read(differing.slice(0, mostShown)) : [];
    for (const at of differing.slice(0, mostShown)) {
      const other = (nowShown[at]?.styles ?? []).flatMap((style, i) =>
        style === oldShown[at]?.styles[i] ? [] : `${oldShown[at]?.styles[i]} → ${style}`,
      );
      console.log(
        `${address} ${media} ${width}: ${old[at]?.name} → ${now[at]?.name}: ${other.slice(0, 4).join('; ')} (${other.length})`,
      );
    }
    console.log(`${address} ${media} ${width}: ${differing.length} of ${now.length} elements differ`);
    if (differing.length > 0) process.exitCode = 1;
    for (const page of pages) await page.close();
  }
}
await browser.close();
for (const server of servers) server.close();
