import type { FacePicture } from './face/drawFace.ts';
import type { Role } from './face/shape.ts';

/** A measured colour, CIE L*a*b* under D65. */
export type SkinLab = Readonly<{ L: number; a: number; b: number }>;

/** One colour for each role. */
export type FaceInk = Readonly<Record<Role | 'sheen', string>>;

/** Four steps of hair tone for the style sheet: white, light, mid, dark. */
export function hairClass({ hairTone }: Pick<FacePicture, 'hairTone'>): string {
  return `hair-${hairTone < 0.12 ? 1 : hairTone < 0.45 ? 2 : hairTone < 0.75 ? 3 : 4}`;
}

type Rgb = readonly [number, number, number];

function rgbOf({ L, a, b }: SkinLab): Rgb {
  const y = (L + 16) / 116;
  const cube = (t: number) => (t > 6 / 29 ? t ** 3 : 3 * (6 / 29) ** 2 * (t - 4 / 29));
  const [X, Y, Z] = [0.95047 * cube(y + a / 500), cube(y), 1.08883 * cube(y - b / 200)];
  const encode = (c: number) => Math.min(1, Math.max(0, c <= 0.0031308 ? 12.92 * c : 1.055 * c ** (1 / 2.4) - 0.055));
  return [
    encode(3.2404542 * X - 1.5371385 * Y - 0.4985314 * Z),
    encode(-0.969266 * X + 1.8760108 * Y + 0.041556 * Z),
    encode(0.0556434 * X - 0.2040259 * Y + 1.0572252 * Z),
  ];
}

export function hexOf(colour: SkinLab): string {
  return `#${rgbOf(colour).map((c) => Math.round(255 * c).toString(16).padStart(2, '0')).join('')}`;
}

/** Contrast ratio as the accessibility guidelines define it, 1 to 21. */
export function contrastOf(one: SkinLab, other: SkinLab): number {
  const luminance = (colour: SkinLab) => {
    const [r, g, b] = rgbOf(colour).map((c) => Math.round(c * 255) / 255).map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
    return 0.2126 * (r ?? 0) + 0.7152 * (g ?? 0) + 0.0722 * (b ?? 0);
  };
  const [a, b] = [luminance(one), luminance(other)];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}

const black: SkinLab = { L: 0, a: 0, b: 0 };

function mixed(one: SkinLab, other: SkinLab, t: number): SkinLab {
  const part = (key: 'L' | 'a' | 'b') => one[key] + (other[key] - one[key]) * t;
  return { L: part('L'), a: part('a'), b: part('b') };
}

/** The nearest tone of the ground's own hue that keeps the contrast: darker if it can be, else lighter, as chalk on toned paper. */
function lineOn(ground: SkinLab, least: number, chalk = false): SkinLab {
  if (!chalk) {
    for (let L = ground.L; L >= 0; L--) {
      const tone = { L, a: (ground.a * L) / ground.L, b: (ground.b * L) / ground.L };
      if (contrastOf(tone, ground) >= least) return tone;
    }
  }
  for (let L = ground.L; L <= 100; L++) {
    const tone = { L, a: ground.a * 0.9, b: ground.b * 0.9 };
    if (contrastOf(tone, ground) >= least) return tone;
  }
  return { L: 100, a: 0, b: 0 };
}

/**
 * Colours for a face on measured skin. Skin so deep that even black stays under 3.3 : 1 is drawn in chalk, and dark brow hair gets
 * a broad dark bed with a thin light core, its sheen: it reads as dark hair and the core keeps 3 : 1.
 */
export function inkOnSkin(skin: SkinLab, hairTone: number): FaceInk {
  const isDeep = contrastOf(skin, black) < 3.3;
  const hair = hairColour(hairTone);
  const line = lineOn(skin, isDeep ? 4.2 : Math.min(5.2, 0.97 * contrastOf(skin, black)), isDeep);
  const soft = lineOn(skin, 3.1, isDeep);
  const hairIsClear = contrastOf(hair, skin) >= 3;
  const brow = hairIsClear ? hair : isDeep ? { L: 4, a: 0, b: 1 } : lineOn(skin, 3.1);
  const pale = mixed(skin, { L: 90, a: 3, b: 9 }, 0.72);
  const lip = mixed(skin, { L: Math.max(18, skin.L - 14), a: skin.a + 14, b: skin.b }, 0.6);
  const all = {
    skin, pale, line, soft, lip, brow,
    white: mixed({ L: 91, a: 0, b: 2 }, skin, isDeep ? 0.26 : 0.1),
    iris: { L: 30, a: 7, b: 11 }, pupil: { L: 8, a: 0, b: 0 }, lash: isDeep ? { L: 6, a: 1, b: 1 } : line, glint: { L: 100, a: 0, b: 0 },
    mass: hair, strand: lineOn(hair, 3.1), paleHair: { L: 98, a: 0, b: 2 },
    old: { L: 42, a: 16, b: -18 }, pigment: { L: 30, a: 9, b: 11 }, cloth: { L: 84, a: -2, b: -6 }, fold: { L: 42, a: -2, b: -10 },
  } as const satisfies Record<Role, SkinLab>;
  const hex = (role: Role): string => hexOf(all[role]);
  return {
    skin: hex('skin'), pale: hex('pale'), line: hex('line'), soft: hex('soft'), white: hex('white'), iris: hex('iris'), pupil: hex('pupil'),
    lash: hex('lash'), glint: hex('glint'), lip: hex('lip'), mass: hex('mass'), strand: hex('strand'), brow: hex('brow'),
    paleHair: hex('paleHair'), old: hex('old'), pigment: hex('pigment'), cloth: hex('cloth'), fold: hex('fold'),
    sheen: isDeep && !hairIsClear ? hexOf(soft) : 'none',
  };
}

function hairColour(tone: number): SkinLab {
  if (tone < 0.12) return { L: 68, a: 0, b: 2 };
  return mixed({ L: 52, a: 8, b: 18 }, { L: 14, a: 1, b: 2 }, Math.min(1, tone * 1.1));
}
