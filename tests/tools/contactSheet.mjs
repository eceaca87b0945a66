import { mkdirSync, writeFileSync } from 'node:fs';
import puppeteer from 'puppeteer-core';
import { drawFace } from '#components/pictures/face/drawFace.ts';
import { faceSvgText } from '#components/pictures/faceSvgText.ts';
import { practiceFace } from '#lib/face/practiceFace.ts';
import { withOldWork } from '#lib/face/withOldWork.ts';
import { browsers, chromiumFlags } from './browsers.mjs';

// Draws practice faces side by side, to be looked at: node tests/tools/contactSheet.mjs [view] [levels]
// [first seed] [count] [ink] [old colour] For example `whole 1,3 0 24 light`, or `band 3 100 12 deep 46_1_4`
// with old work of that L*a*b* in the skin. Writes reports/contactSheet.html and .png.

const [view = 'whole', levels = '1', first = '0', count = '24', ink = 'light', old] = process.argv.slice(2);
/** Measured skins to draw on, L*a*b*. */
const skins = { pale: { l: 70, a: 8, b: 13 }, mid: { l: 54, a: 10, b: 18 }, deep: { l: 32, a: 10, b: 13 } };
const columns = view === 'whole' ? 6 : 4;

const cells = Array.from({ length: Number(count) }, (_, i) => Number(first) + i).flatMap((seed) =>
  levels.split(',').map((level) => {
    const drawn = practiceFace(seed, Number(level)).face;
    const [L, a, b] = (old ?? '').split('_').map(Number);
    const face = old ? withOldWork(drawn, seed, { l: L, a, b }) : drawn;
    const { lid, hair, age, beard, noseWidthMm } = {
      ...face.form,
      noseWidthMm: 2 * Math.abs(face.landmarks.right.noseWing[0]),
    };
    const svg = faceSvgText(drawFace(face, view, seed), skins[ink] ?? ink)
      .replaceAll('"f-c', `"f${seed}-${level}-c`)
      .replaceAll('#f-c', `#f${seed}-${level}-c`);
    return `<figure>${svg}<figcaption>${seed} · level ${level} · ${lid} · ${hair} · age ${age.toFixed(2)} · nose ${noseWidthMm.toFixed(0)}${beard > 0 ? ` · beard ${beard.toFixed(1)}` : ''}</figcaption></figure>`;
  }),
);
const page = `<!doctype html><meta charset="utf-8"><title>Practice faces</title><style>body{margin:8px;background:${ink === 'dark' ? '#1a212a;color:#eee' : '#fff'};font:12px sans-serif;display:grid;grid-template-columns:repeat(${columns},1fr);gap:8px}figure{margin:0}svg{width:100%;height:auto;display:block}</style>${cells.join('')}`;
mkdirSync('reports', { recursive: true });
writeFileSync('reports/contactSheet.html', page);
const browser = await puppeteer.launch({ executablePath: browsers.chromium.path, args: chromiumFlags });
const tab = await browser.newPage();
await tab.setViewport({ width: 1500, height: 900 });
await tab.setContent(page);
writeFileSync('reports/contactSheet.png', await tab.screenshot({ fullPage: true }));
await browser.close();
console.log(`${cells.length} faces in reports/contactSheet.png`);
