import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { attribute, type BuiltPage, builtPages, elementsOf, nodesUnder } from '#build/builtPages.ts';
import { builtFolder } from '#tests/tools/builtSite.ts';

type Node = BuiltPage['document'];
type Part = Readonly<{ file: string; ranges: readonly (readonly [number, number])[] }>;

/** The parts of the two faces of text, with the letters a browser fetches each for. */
const parts: readonly Part[] = [
  ...readFileSync(new URL('../../src/styles/tokens.css', import.meta.url), 'utf8').matchAll(
    /url\(\.\/fonts\/([\w-]+)\.woff2[^)]*\)[^}]*unicode-range:([^}]+)\}/g,
  ),
].map(([, file = '', ranges = '']) => ({
  file,
  ranges: ranges.split(',').map((range) => {
    const [from = '', to = from] = range.trim().replace('U+', '').split('-');
    return [Number.parseInt(from, 16), Number.parseInt(to, 16)] as const;
  }),
}));
const holds = ({ ranges }: Part, code: number) => ranges.some(([from, to]) => code >= from && code <= to);
const facePages = builtPages(builtFolder);

/** The letters of a page that its own faces write: formulas have a face of their own. */
function lettersOf(page: BuiltPage): ReadonlySet<string> {
  const letters = new Set<string>();
  const isWritten = (node: Node): boolean =>
    !['math', 'script', 'style'].includes(node.nodeName) &&
    (!('parentNode' in node) || !node.parentNode || isWritten(node.parentNode));
  for (const node of nodesUnder(page.document))
    if ('value' in node && node.nodeName === '#text' && isWritten(node))
      for (const letter of node.value) letters.add(letter);
  return letters;
}

test('[property] no letter stands in two parts of a face', () => {
  expect(parts.map(({ file }) => file)).toContain('andada-signs');
  const codes = Array.from({ length: 0x2300 }, (_, code) => code);
  const twice = ['andada', 'public-sans'].flatMap((face) => {
    const own = parts.filter(({ file }) => file.startsWith(face));
    return codes.filter((code) => own.filter((part) => holds(part, code)).length > 1);
  });
  expect(twice).toEqual([]);
});

test('[hand] lessons, rule cards, calculators and problems are written with the first part of each face alone', () => {
  const further = parts.filter(({ file }) => !['andada', 'public-sans'].includes(file));
  const wants = facePages
    .filter(({ address }) => /^\/(lessons|rules|calculators|practice)\/./.test(address))
    .flatMap((page) =>
      [...lettersOf(page)]
        .filter((letter) => further.some((part) => holds(part, letter.codePointAt(0) ?? 0)))
        .map((letter) => `${page.address} ${letter}`),
    );
  expect(wants).toEqual([]);
});

test('[hand] a page asks at once for the first parts only', () => {
  for (const page of facePages) {
    const asked = [...elementsOf(page)]
      .filter((element) => element.tagName === 'link' && attribute(element, 'as') === 'font')
      .map((element) => attribute(element, 'href')?.replace(/^\/_astro\/([\w-]+)\..*$/, '$1'));
    expect(asked, page.address).toEqual(['andada', 'public-sans']);
  }
});
