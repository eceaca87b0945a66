import { expect, test } from 'vitest';
import { attribute, builtPages, elementsOf } from '#build/builtPages.ts';
import { builtAddresses, builtFolder } from '#tests/tools/builtSite.ts';
import { footSections, innerSections, mainSections } from '#words/sections.ts';

const listed = [...mainSections, ...footSections].map(({ path }) => path);

test('[hand] every section in the list is built, and every built section is in the list', () => {
  const built = builtAddresses.filter((address) => /^\/[^/]+\/$/.test(address));
  expect([...built].sort()).toEqual([...listed, ...innerSections.map(({ path }) => path)].sort());
});

test.each(innerSections)(
  '[hand] $label, which no navigation names, is linked from the pages it belongs to',
  ({ path, from }) => {
    for (const address of from) {
      const page = builtPages(builtFolder).find((built) => built.address === address);
      expect(
        page &&
          [...elementsOf(page)].some(
            (element) => element.tagName === 'a' && attribute(element, 'href') === path,
          ),
        address,
      ).toBe(true);
    }
  },
);

test('[hand] every page shows exactly the sections of the list, in its order', () => {
  for (const page of builtPages(builtFolder)) {
    const elements = [...elementsOf(page)];
    const linksOf = (label: string) =>
      elements
        .filter((element) => element.tagName === 'nav' && attribute(element, 'aria-label') === label)
        .map((nav) =>
          nav.childNodes.flatMap((child) =>
            'tagName' in child && child.tagName === 'a' ? [attribute(child, 'href')] : [],
          ),
        );
    for (const links of linksOf('Main'))
      expect(links, page.file).toEqual(mainSections.map(({ path }) => path));
    expect(linksOf('About this site'), page.file).toEqual([footSections.map(({ path }) => path)]);
  }
});

test('[hand] a page marks its own section, once', () => {
  for (const page of builtPages(builtFolder)) {
    const section = `/${page.address.split('/')[1]}/`;
    const current = [...elementsOf(page)].filter(
      (element) =>
        attribute(element, 'aria-current') === 'page' &&
        element.tagName === 'a' &&
        listed.some((path) => path === attribute(element, 'href')),
    );
    if (mainSections.some(({ path }) => path === section))
      expect(new Set(current.map((link) => attribute(link, 'href'))), page.file).toEqual(new Set([section]));
  }
});
