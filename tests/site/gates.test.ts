import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { builtPages, filesUnder } from '#build/builtPages.ts';
import { faultsIn } from '#build/gates/index.ts';

const folder = mkdtempSync(join(tmpdir(), 'gates-'));
afterAll(() => rmSync(folder, { recursive: true }));

const head = '<title>One</title><meta name="description" content="A page about one thing.">';

/** Builds a small site of one page and looks at what the gates say of it. */
function faultsOf(body: string, inHead = head): readonly string[] {
  const files = {
    'index.html': `<!doctype html><html lang="en"><head>${inHead}</head><body><h1 id="top">One</h1>${body}</body></html>`,
    'two/index.html': `<!doctype html><html lang="en"><head>${head.replace('One', 'Two')}</head><body><h1 id="two">Two</h1></body></html>`,
  };
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  return faultsIn(builtPages(folder), {
    origin: 'https://tautline.example',
    files: new Set(filesUnder(folder)),
  });
}

test('[hand] a sound page passes every gate', () => {
  expect(
    faultsOf(
      '<h2>Part</h2><p><a href="/two/#two">two</a> <a href="#top">top</a> <a href="/two/?m=1">asked</a> <a href="https://elsewhere.example/">out</a></p><img src="data:image/png;base64," alt="">',
    ),
  ).toEqual([]);
});

test.each([
  ['<p style="color:red">x</p>', 'style="color:red"'],
  ['<template><p style="a">x</p></template>', 'style="a"'],
  ['<button onclick="x()">x</button>', 'onclick'],
  ['<span class="a katex-error" title="why">x</span>', 'a formula did not render'],
  ['<p id="top">x</p>', 'id="top" is already'],
  ['<label for="gone">x</label>', 'refers to id "gone"'],
  ['<svg><path fill="url(#gone)"/></svg>', 'refers to id "gone"'],
  ['<a href="/three/">x</a>', 'no such page'],
  ['<a href="/two">x</a>', 'write the slash'],
  ['<a href="/two/#three">x</a>', 'no such id'],
  ['<script src="/gone.js"></script>', 'no such page or file'],
  ['<img src="data:image/png;base64,">', 'has no words'],
  ['<svg role="img"></svg>', 'has no words'],
  ['<script src="https://elsewhere.example/x.js"></script>', 'another origin'],
  ['<img srcset="https://elsewhere.example/x.png 2x" alt="">', 'another origin'],
  ['<p>NaN mm</p>', 'missing value'],
  ['<svg><path d="M0 NaN"/></svg>', 'missing value'],
  ['<p>[object Object]</p>', 'missing value'],
  ['<h1>Again</h1>', '2 h1 headings'],
  ['<h3>Deep</h3>', 'jumps from h1 to h3'],
])('[hand] the gates stop %s', (body, says) => {
  expect(faultsOf(body).join('\n')).toContain(says);
});

test.each([
  ['<meta name="description" content="A page about one thing.">', 'no title'],
  ['<title>One</title>', 'no description'],
  [head.replace('One', 'Two'), 'is also that of'],
])('[hand] the gates stop a page with the head %s', (inHead, says) => {
  expect(faultsOf('', inHead).join('\n')).toContain(says);
});
