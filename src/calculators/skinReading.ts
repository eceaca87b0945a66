import { readSkin, type SkinReading, type Touch } from '#lib/colour/reading/skinReading.ts';
import { labToSrgb } from '#lib/colour/spaces/srgb.ts';
import { choiceField, numberField } from './fields.ts';
import type { Calculator } from './spec.ts';

export type SkinReadingState = Readonly<{
  l1: number;
  a1: number;
  b1: number;
  l2: number;
  a2: number;
  b2: number;
  l3: number;
  a3: number;
  b3: number;
  count: '1' | '2' | '3';
  touch: Touch;
}>;
/** `isClipped`: the screen cannot show this colour and shows the nearest it can. */
export type SkinReadingResult = Readonly<{ reading: SkinReading; isClipped: boolean }>;

const lightness = (key: string, start: number) =>
  numberField(key, start, { unit: '1', lo: 20, hi: 85, step: 0.5, decimals: 1 });
const red = (key: string, start: number) =>
  numberField(key, start, { unit: '1', lo: 0, hi: 30, step: 0.5, decimals: 1 });
const yellow = (key: string, start: number) =>
  numberField(key, start, { unit: '1', lo: 1, hi: 35, step: 0.5, decimals: 1 });

/**
 * A skin from up to three readings of L*a*b*. Starts on one reading of the violinist of Tern Quay, invented.
 */
export const skinReading: Calculator<SkinReadingState, SkinReadingResult> = {
  id: 'skin-reading',
  fields: {
    l1: lightness('l1', 62),
    a1: red('a1', 10),
    b1: yellow('b1', 17),
    l2: lightness('l2', 61.4),
    a2: red('a2', 10.6),
    b2: yellow('b2', 16.8),
    l3: lightness('l3', 62.5),
    a3: red('a3', 9.6),
    b3: yellow('b3', 17.4),
    count: choiceField<SkinReadingState['count']>('count', '1', ['1', '2', '3']),
    touch: choiceField<Touch>('touch', 'untouched', ['untouched', 'touched', 'not-known']),
  },
  solve: (state) => {
    const all = [
      { l: state.l1, a: state.a1, b: state.b1 },
      { l: state.l2, a: state.a2, b: state.b2 },
      { l: state.l3, a: state.a3, b: state.b3 },
    ];
    const used = all.slice(0, Number(state.count));
    return { reading: readSkin(used, state.touch), isClipped: used.some((lab) => labToSrgb(lab).isClipped) };
  },
};
