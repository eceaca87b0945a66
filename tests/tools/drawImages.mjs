import { readFileSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import puppeteer from 'puppeteer-core';
import { browsers, chromiumFlags } from './browsers.mjs';

// Draws the icons and the social card in public/ from the favicon and the wordmark. Run by hand when one of
// them changes:
//   node tests/tools/drawImages.mjs

const root = new URL('../../', import.meta.url);
const text = (name) => readFileSync(new URL(name, root), 'utf8');
const face = readFileSync(new URL('src/styles/fonts/andada.woff2', root)).toString('base64');
const mostBytes = 60_000;

const icon = text('public/favicon.svg').replace(/rx="6"/, 'rx="0"');
const wordmark = /<svg[\s\S]*<\/svg>/.exec(text('components/site/Wordmark.astro'))?.[0] ?? '';

const iconPage = (size) =>
  `<!doctype html><style>*{margin:0}svg{display:block;width:${size}px;height:${size}px}</style>${icon}`;
const cardPage = `<!doctype html><style>
@font-face{font-family:Andada;src:url(data:font/woff2;base64,${face})}
*{margin:0} body{width:1200px;height:630px;background:#fbfaf7;color:#1b2433;font:400 46px/1.35 Andada;position:relative;overflow:hidden}
.mm{position:absolute;left:0;right:0;bottom:0;height:190px;width:100%}
.wordmark{position:absolute;left:96px;top:120px;width:760px;color:#1b2433}
.wordmark-thread{stroke:#c5391a;fill:none}.wordmark-pin{fill:#c5391a}
p{position:absolute;left:102px;top:344px}
</style>
<svg class="mm" viewBox="0 0 1200 190"><defs><pattern id="m" width="10" height="10" patternUnits="userSpaceOnUse"><path d="M10 0H0V10" fill="none" stroke="#e2ddcf" stroke-width="1"/></pattern><pattern id="c" width="100" height="100" patternUnits="userSpaceOnUse"><path d="M100 0H0V100" fill="none" stroke="#cbc4b2" stroke-width="1.5"/></pattern></defs><rect width="1200" height="190" fill="url(#m)"/><rect width="1200" height="190" fill="url(#c)"/></svg>
${wordmark}<p>Brow mapping, worked out and practised</p>`;

const browser = await puppeteer.launch({ executablePath: browsers.chromium.path, args: chromiumFlags });
const page = await browser.newPage();
const draw = async (html, name, width, height) => {
  await page.setViewport({ width, height });
  await page.setContent(html);
  await page.evaluate(() => document.fonts.ready);
  const path = fileURLToPath(new URL(`public/${name}`, root));
  await page.screenshot({ path });
  const { size } = statSync(path);
  console.log(`${name}: ${size} bytes`);
  if (size > mostBytes) throw new Error(`${name} is larger than ${mostBytes} bytes.`);
};
for (const size of [180, 192, 512]) await draw(iconPage(size), `icon-${size}.png`, size, size);
await draw(cardPage, 'card.png', 1200, 630);
await browser.close();
