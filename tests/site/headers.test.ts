import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { attribute, builtPages, elementsOf } from '#build/builtPages.ts';
import { unitePolicies } from '#build/writeHeaders.ts';
import { builtAddresses, builtFolder, startSite } from '#tests/tools/builtSite.ts';

let site: Awaited<ReturnType<typeof startSite>>;
beforeAll(async () => {
  site = await startSite();
});
afterAll(() => site?.close());

const directives = (policy: string) =>
  new Map(
    policy
      .split(';')
      .map((part) => part.trim().split(/\s+/))
      .map(([name, ...values]) => [name, values]),
  );

test('[hand] policies unite by directive, and framing is refused', () => {
  expect(
    unitePolicies(["default-src 'self'; script-src 'self' 'sha256-a'", "script-src 'self' 'sha256-b'"]),
  ).toBe("default-src 'self'; script-src 'self' 'sha256-a' 'sha256-b'; frame-ancestors 'none'");
});

test('[property] the header allows all that each page allows, and nothing inline or foreign', async () => {
  const answer = await fetch(`${site.origin}/`);
  const header = directives(answer.headers.get('content-security-policy') ?? '');
  for (const page of builtPages(builtFolder)) {
    const meta = [...elementsOf(page)].find(
      (element) => attribute(element, 'http-equiv')?.toLowerCase() === 'content-security-policy',
    );
    for (const [name, values] of directives(meta ? (attribute(meta, 'content') ?? '') : ''))
      expect(header.get(name), `${page.file} ${name}`).toEqual(expect.arrayContaining(values));
  }
  const all = [...header.values()].flat();
  expect(all.filter((value) => /unsafe-inline|'unsafe-eval'|https?:|\*/.test(value))).toEqual([]);
  expect(header.get('frame-ancestors')).toEqual(["'none'"]);
});

test('[property] the policy of a page allows the scripts and styles that stand in it, and no others', () => {
  for (const page of builtPages(builtFolder)) {
    const elements = [...elementsOf(page)];
    const meta = elements.find(
      (element) => attribute(element, 'http-equiv')?.toLowerCase() === 'content-security-policy',
    );
    const policy = directives(meta ? (attribute(meta, 'content') ?? '') : '');
    for (const [name, tag] of [
      ['script-src', 'script'],
      ['style-src', 'style'],
    ] as const) {
      const inline = elements
        .filter((element) => element.tagName === tag && attribute(element, 'src') === undefined)
        .map((element) => element.childNodes.map((child) => ('value' in child ? child.value : '')).join(''))
        .map((text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`);
      const allowed = policy.get(name)?.filter((value) => value.startsWith("'sha256-")) ?? [];
      expect(new Set(allowed), `${page.file} ${name}`).toEqual(new Set(inline));
    }
  }
});

test('[hand] every page is sent with the headers; an address without a page says so', async () => {
  for (const address of builtAddresses) {
    const answer = await fetch(site.origin + address);
    expect(answer.status, address).toBe(200);
    expect(answer.headers.get('x-content-type-options'), address).toBe('nosniff');
    expect(answer.headers.get('permissions-policy'), address).toContain('camera=()');
    expect(answer.headers.get('content-type'), address).toBe('text/html; charset=utf-8');
  }
  expect((await fetch(`${site.origin}/no-such-page/`)).status).toBe(404);
  expect((await fetch(`${site.origin}/lessons`, { redirect: 'manual' })).headers.get('location')).toBe(
    '/lessons/',
  );
  expect((await fetch(`${site.origin}/.htaccess`)).status).toBe(404);
});

test('[hand] hashed files may be kept for a year, the worker is asked for anew', async () => {
  const style = /href="(\/_astro\/[^"]+\.css)"/.exec(
    readFileSync(join(builtFolder, 'index.html'), 'utf8'),
  )?.[1];
  expect((await fetch(site.origin + style)).headers.get('cache-control')).toContain('immutable');
  expect((await fetch(`${site.origin}/sw.js`)).headers.get('cache-control')).toBe('no-cache');
});

test('[hand] robots.txt leads to the site map, and the map names every page but the one for missing pages', () => {
  expect(readFileSync(join(builtFolder, 'robots.txt'), 'utf8')).toMatch(
    /^Sitemap: https:\/\/\S+\/sitemap-index\.xml$/m,
  );
  const mapped = [
    ...readFileSync(join(builtFolder, 'sitemap-0.xml'), 'utf8').matchAll(
      /<loc>https?:\/\/[^/]+([^<]+)<\/loc>/g,
    ),
  ].map((hit) => hit[1]);
  expect(mapped.sort()).toEqual(builtAddresses.filter((address) => address !== '/404.html').sort());
});
