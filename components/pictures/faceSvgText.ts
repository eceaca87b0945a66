import type { FacePicture } from './face/drawFace.ts';
import { hexOf, inkOnSkin, type FaceInk, type SkinLab } from './faceInk.ts';
import { faceMarkup } from './faceMarkup.ts';

/** What a face file is drawn in: the ink of one theme, or a measured skin. */
export type FaceFileInk = 'light' | 'dark' | SkinLab;

/**
 * The theme's drawing tokens as fixed colours, because a file sees no style sheet; a test holds them against
 * the tokens.
 */
export const themeInks = {
  light: {
    pencil: '#4a5463',
    ref: '#5b6675',
    hair: '#3d4654',
    skin: '#fbfaf7',
    pupil: '#2b3340',
    glint: '#ffffff',
    old: '#6a5580',
    plan: '#1c4fa8',
  },
  dark: {
    pencil: '#b4bcc7',
    ref: '#9aa6b5',
    hair: '#c9cfd8',
    skin: '#1a212a',
    pupil: '#0a0d11',
    glint: '#ffffff',
    old: '#c3b0d8',
    plan: '#93bbff',
  },
} as const;

/**
 * A face as a file of its own: pages serve many faces without carrying them inline. Deterministic text, no
 * style, no script.
 */
export function faceSvgText(picture: FacePicture, inkWish: FaceFileInk): string {
  const ink =
    typeof inkWish === 'string' ? themeInk(inkWish, picture.hairTone) : inkOnSkin(inkWish, picture.hairTone);
  const [left, top, width, height] = picture.viewBox;
  const { clips, paths } = faceMarkup(picture, 'f', ink);
  const shown = paths.filter(({ colour }) => colour !== 'none');
  const defs = clips.map(({ id, d }) => `<clipPath id="${id}"><path d="${d}"/></clipPath>`).join('');
  const isCrop = picture.view !== 'whole' && picture.view !== 'midline';
  const ground =
    isCrop && typeof inkWish !== 'string'
      ? `<path d="M${left} ${top}h${width}v${height}h${-width}z" fill="${hexOf(inkWish)}"/>`
      : '';
  const body = shown.map(({ d, role, colour = '#000', strokeMm, opacity, clipId }) => {
    const drawn =
      strokeMm === undefined
        ? `fill="${colour}"`
        : `fill="none" stroke="${colour}" stroke-width="${strokeMm}"`;
    const rule = role === 'cloth' ? ' fill-rule="evenodd"' : '';
    const see = opacity === undefined ? '' : ` opacity="${opacity}"`;
    return `<path ${drawn}${rule}${see}${clipId ? ` clip-path="url(#${clipId})"` : ''} d="${d}"/>`;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${picture.viewBox.join(' ')}"><defs>${defs}</defs>${ground}<g stroke-linecap="round" stroke-linejoin="round">${body.join('')}</g></svg>`;
}

function themeInk(theme: 'light' | 'dark', hairTone: number): FaceInk {
  const t = themeInks[theme];
  const share = theme === 'light' ? 0.08 + 0.48 * hairTone : 0.5 - 0.4 * hairTone;
  return {
    skin: t.skin,
    pale: t.skin,
    white: t.skin,
    line: t.pencil,
    soft: t.ref,
    iris: t.ref,
    paleHair: t.ref,
    pupil: t.pupil,
    glint: t.glint,
    lash: t.hair,
    brow: hairTone < 0.12 ? t.ref : t.hair,
    strand: t.hair,
    mass: mixedHex(t.pencil, t.skin, share),
    lip: mixedHex(t.ref, t.skin, 0.24),
    old: t.old,
    pigment: t.plan,
    fold: t.plan,
    cloth: mixedHex(t.plan, t.skin, 0.13),
    sheen: 'none',
  };
}

function mixedHex(one: string, other: string, share: number): string {
  const channel = (hex: string, i: number): number => Number.parseInt(hex.slice(1 + 2 * i, 3 + 2 * i), 16);
  return `#${[0, 1, 2]
    .map((i) =>
      Math.round(channel(one, i) * share + channel(other, i) * (1 - share))
        .toString(16)
        .padStart(2, '0'),
    )
    .join('')}`;
}
