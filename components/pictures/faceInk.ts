import type { Lab } from '#lib/colour/spaces/lab.ts';
import { labToSrgb, srgbToHex } from '#lib/colour/spaces/srgb.ts';
import { linearLight } from '#lib/colour/spaces/srgbToLab.ts';
import type { FacePicture } from './face/drawFace.ts';
import type { Role } from './face/shape.ts';

/** A measured colour, CIE L*a*b* under D65. */
export type SkinLab = Lab;

/** One colour for each role. */
export type FaceInk = Readonly<Record<Role | 'sheen', string>>;

/** Four steps of hair tone for the style sheet: white, light, mid, dark. */
export function hairClass({ hairTone }: Pick<FacePicture, 'hairTone'>): string {
  return `hair-${hairTone < 0.12 ? 1 : hairTone < 0.45 ? 2 : hairTone < 0.75 ? 3 : 4}`;
}

export function hexOf(colour: SkinLab): string {
  return srgbToHex(labToSrgb(colour));
}

/** Contrast ratio as the accessibility guidelines define it, 1 to 21. */
export function contrastOf(one: SkinLab, other: SkinLab): number {
  const luminance = (colour: SkinLab) => {
    const { r, g, b } = labToSrgb(colour);
    const asSent = (coded: number) => linearLight(Math.round(coded * 255) / 255);
    return 0.2126 * asSent(r) + 0.7152 * asSent(g) + 0.0722 * asSent(b);
  };
  const [a, b] = [luminance(one), luminance(other)];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}

const black: SkinLab = { l: 0, a: 0, b: 0 };

function mixed(one: SkinLab, other: SkinLab, t: number): SkinLab {
  const part = (key: 'l' | 'a' | 'b') => one[key] + (other[key] - one[key]) * t;
  return { l: part('l'), a: part('a'), b: part('b') };
}

/**
 * The nearest tone of the ground's own hue that keeps the contrast: darker if it can be, else lighter, as
 * chalk on toned paper.
 */
function lineOn(ground: SkinLab, least: number, chalk = false): SkinLab {
  if (!chalk) {
    for (let L = ground.l; L >= 0; L--) {
      const tone = { l: L, a: (ground.a * L) / ground.l, b: (ground.b * L) / ground.l };
      if (contrastOf(tone, ground) >= least) return tone;
    }
  }
  for (let L = ground.l; L <= 100; L++) {
    const tone = { l: L, a: ground.a * 0.9, b: ground.b * 0.9 };
    if (contrastOf(tone, ground) >= least) return tone;
  }
  return { l: 100, a: 0, b: 0 };
}

/**
 * Colours for a face on measured skin. Skin so deep that even black stays under 3.3 : 1 is drawn in chalk,
 * and dark brow hair gets a broad dark bed with a thin light core, its sheen: it reads as dark hair and the
 * core keeps 3 : 1.
 */
export function inkOnSkin(skin: SkinLab, hairTone: number): FaceInk {
  const isDeep = contrastOf(skin, black) < 3.3;
  const hair = hairColour(hairTone);
  const line = lineOn(skin, isDeep ? 4.2 : Math.min(5.2, 0.97 * contrastOf(skin, black)), isDeep);
  const soft = lineOn(skin, 3.1, isDeep);
  const hairIsClear = contrastOf(hair, skin) >= 3;
  const brow = hairIsClear ? hair : isDeep ? { l: 4, a: 0, b: 1 } : lineOn(skin, 3.1);
  const pale = mixed(skin, { l: 90, a: 3, b: 9 }, 0.72);
  const lip = mixed(skin, { l: Math.max(18, skin.l - 14), a: skin.a + 14, b: skin.b }, 0.6);
  const all = {
    skin,
    pale,
    line,
    soft,
    lip,
    brow,
    white: mixed({ l: 91, a: 0, b: 2 }, skin, isDeep ? 0.26 : 0.1),
    iris: { l: 30, a: 7, b: 11 },
    pupil: { l: 8, a: 0, b: 0 },
    lash: isDeep ? { l: 6, a: 1, b: 1 } : line,
    glint: { l: 100, a: 0, b: 0 },
    mass: hair,
    strand: lineOn(hair, 3.1),
    paleHair: { l: 98, a: 0, b: 2 },
    old: { l: 42, a: 16, b: -18 },
    pigment: { l: 30, a: 9, b: 11 },
    cloth: { l: 84, a: -2, b: -6 },
    fold: { l: 42, a: -2, b: -10 },
  } as const satisfies Record<Role, SkinLab>;
  const hex = (role: Role): string => hexOf(all[role]);
  return {
    skin: hex('skin'),
    pale: hex('pale'),
    line: hex('line'),
    soft: hex('soft'),
    white: hex('white'),
    iris: hex('iris'),
    pupil: hex('pupil'),
    lash: hex('lash'),
    glint: hex('glint'),
    lip: hex('lip'),
    mass: hex('mass'),
    strand: hex('strand'),
    brow: hex('brow'),
    paleHair: hex('paleHair'),
    old: hex('old'),
    pigment: hex('pigment'),
    cloth: hex('cloth'),
    fold: hex('fold'),
    sheen: isDeep && !hairIsClear ? hexOf(soft) : 'none',
  };
}

function hairColour(tone: number): SkinLab {
  if (tone < 0.12) return { l: 68, a: 0, b: 2 };
  return mixed({ l: 52, a: 8, b: 18 }, { l: 14, a: 1, b: 2 }, Math.min(1, tone * 1.1));
}
