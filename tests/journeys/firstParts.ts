import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';
import { attribute, builtPages, elementsOf } from '#build/builtPages.ts';
import { builtFolder } from '#tests/tools/builtSite.ts';

export type FirstPart = Readonly<{ address: string; part: string; file: string }>;

const staticImports = (file: string): readonly string[] =>
  [
    ...readFileSync(join(builtFolder, file), 'utf8').matchAll(
      /(?:\bimport|\bfrom)\s*["'`]\.\/([^"'`]+)["'`]/g,
    ),
  ].map(([, name = '']) => `/_astro/${name}`);

/** The scripts that the first island of a page cannot do without: its own, the one that all share, one that some share. */
export const firstParts: readonly FirstPart[] = builtPages(builtFolder).flatMap((page) => {
  const island = [...elementsOf(page)].find(({ tagName }) => tagName === 'astro-island');
  const [own, client] = ['component-url', 'renderer-url'].map((name) => island && attribute(island, name));
  if (!own || !client) return [];
  const shared = staticImports(own).filter((file) => file !== client);
  return [
    { address: page.address, part: 'its own script', file: own },
    { address: page.address, part: 'the script of every figure', file: client },
    ...shared.slice(0, 1).map((file) => ({ address: page.address, part: 'a shared script', file })),
  ];
});

/** Nothing comes from the device: every part comes from the server or not at all. */
export const onServerOnly = (page: Page) =>
  page.evaluateOnNewDocument(() =>
    Object.defineProperty(navigator, 'connection', { value: { saveData: true } }),
  );

/** What a reader sees of the first island: whether it is shut, what its fields hold, and what it answers. */
export const look = (page: Page) =>
  page.$eval('astro-island', (island) => ({
    fields: [...island.querySelectorAll<HTMLInputElement>('input, select, textarea')].map(
      ({ type, value, checked }) => `${type} ${value} ${checked}`,
    ),
    isShut: [...island.querySelectorAll<HTMLInputElement>('input, select, textarea, button')].every(
      ({ disabled }) => disabled,
    ),
    answer: island.querySelector('.says')?.textContent ?? '',
  }));

export const bringIntoView = (page: Page) =>
  page.$eval('astro-island', (island) => island.firstElementChild?.scrollIntoView({ block: 'start' }));
