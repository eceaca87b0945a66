import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { contrastOf, hexOf, inkOnSkin, type SkinLab } from '#components/pictures/faceInk.ts';
import { faceMarkup } from '#components/pictures/faceMarkup.ts';
import { faceSvgText, themeInks } from '#components/pictures/faceSvgText.ts';
import { drawFace } from '#components/pictures/face/drawFace.ts';
import { people } from '#components/pictures/face/people.ts';

/** Relative luminance of a hex colour, written out again from the accessibility guidelines. */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5]
    .map((i) => Number.parseInt(hex.slice(i, i + 2), 16) / 255)
    .map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function ratio(one: string, other: string): number {
  const [a, b] = [luminance(one), luminance(other)];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}

describe('ink on measured skin', () => {
  it('[table] L*a*b* of sRGB white, black and mid grey (L* 53.585 is #808080)', () => {
    expect(hexOf({ l: 100, a: 0, b: 0 })).toBe('#ffffff');
    expect(hexOf({ l: 0, a: 0, b: 0 })).toBe('#000000');
    expect(hexOf({ l: 53.585, a: 0, b: 0 })).toBe('#808080');
    expect(contrastOf({ l: 100, a: 0, b: 0 }, { l: 0, a: 0, b: 0 })).toBeCloseTo(21, 6);
  });

  it('[property] lines, hair or its sheen, lashes and folds keep 3 : 1 on every skin from L* 14 to 96', () => {
    const hues = [
      [2, 6],
      [8, 14],
      [14, 16],
      [6, 20],
      [16, 12],
      [10, 24],
    ] as const;
    for (let L = 14; L <= 96; L += 2) {
      for (const [a, b] of hues) {
        for (const tone of [0.05, 0.3, 0.6, 0.95]) {
          const ink = inkOnSkin({ l: L, a, b } satisfies SkinLab, tone);
          const pairs = [
            [ink.line, ink.skin],
            [ink.soft, ink.skin],
            [ink.sheen === 'none' ? ink.brow : ink.sheen, ink.skin],
            [ink.strand, ink.mass],
            [ink.lash, ink.white],
            [ink.fold, ink.cloth],
            [ink.iris, ink.white],
          ] as const;
          for (const [one, other] of pairs) expect(ratio(one, other)).toBeGreaterThanOrEqual(2.98);
        }
      }
    }
  });

  it('[property] the 24 people span skins from L* 24 to 92, no two alike', () => {
    const lightness = people.map(({ skin }) => skin.l);
    expect(people.length).toBe(24);
    expect(Math.min(...lightness)).toBeLessThanOrEqual(30);
    expect(Math.max(...lightness)).toBeGreaterThanOrEqual(72);
    expect(new Set(people.map(({ skin }) => hexOf(skin))).size).toBe(24);
  });
});

describe('theme files', () => {
  it('[table] fixed inks are the drawing tokens of the style sheet', () => {
    const tokens = readFileSync(new URL('../../src/styles/tokens.css', import.meta.url), 'utf8');
    for (const [theme, inks] of Object.entries(themeInks)) {
      for (const [name, colour] of Object.entries(inks))
        expect(tokens, `${theme} ${name}`).toContain(`--draw-${name}:${colour}`);
    }
  });

  it('[property] a file carries no style attribute, no style element and no script, and its clips exist', () => {
    for (const { face, skin } of people.slice(0, 6)) {
      for (const ink of ['light', 'dark', skin] as const) {
        const text = faceSvgText(drawFace(face, 'whole'), ink);
        expect(text).not.toMatch(/style|script/);
        for (const [, id = ''] of text.matchAll(/url\(#([^)]+)\)/g)) expect(text).toContain(`id="${id}"`);
      }
    }
  });

  it('[property] clip ids carry the prefix of their figure', () => {
    const { clips, paths } = faceMarkup(
      drawFace(
        people[0]?.face ??
          (() => {
            throw new Error('no people');
          })(),
        'midline',
      ),
      'two',
    );
    expect(clips.length).toBeGreaterThan(0);
    for (const { id } of clips) expect(id).toMatch(/^two-/);
    for (const { clipId } of paths)
      if (clipId !== undefined) expect(clips.map(({ id }) => id)).toContain(clipId);
  });
});
