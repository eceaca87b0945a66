import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { filesUnder } from '#build/builtPages.ts';
import { builtFolder } from '#tests/tools/builtSite.ts';

/** What stands between the brace at a place and the one that closes it. */
function blockAt(style: string, open: number): string {
  let depth = 0;
  for (let i = open; i < style.length; i++) {
    if (style[i] === '{') depth++;
    if (style[i] === '}' && --depth === 0) return style.slice(open + 1, i);
  }
  throw new Error('A brace is not closed.');
}

/** Declarations that give text or its ground another colour, in queries that ask for a width or a height. */
const coloursByWidth = (style: string): readonly string[] =>
  [...style.matchAll(/@(?:media|container)[^{]*(?:width|height)[^{]*\{/g)].flatMap(
    (hit) =>
      blockAt(style, hit.index + hit[0].length - 1).match(
        /(?<=[{;])(?:color|background(?:-color|-image)?|opacity|fill|filter|mix-blend-mode|--[\w-]+)\s*:[^;}]*/g,
      ) ?? [],
  );

test('[hand] no width changes a colour: contrast looked at once for each theme holds at every width', () => {
  const styles = filesUnder(builtFolder).filter((file) => file.endsWith('.css'));
  expect(styles.length).toBeGreaterThan(0);
  expect(styles.flatMap((file) => coloursByWidth(readFileSync(join(builtFolder, file), 'utf8')))).toEqual([]);
});

test('[hand] a colour that a width changes is found', () => {
  expect(
    coloursByWidth(
      'a{color:red}@media(max-width:760px){.a .b{display:block;color:#ccc}.c{opacity:.5}}@media(prefers-color-scheme:dark){a{color:blue}}',
    ),
  ).toEqual(['color:#ccc', 'opacity:.5']);
});
