import { describe, expect, it } from 'vitest';
import { defaultBones } from '#lib/face/bones.ts';
import type { Form } from '#lib/face/form.ts';
import { practiceForm } from '#lib/face/practiceForm.ts';
import { always, correlation, draw0, meanOf, sample, shareWithin } from './draws.ts';

const bones = { ...defaultBones, noseDropMm: 38 };
const count = 2000;
const aged = (age: number): readonly Form[] => sample(count, (draw) => practiceForm(draw, bones, age));

describe('the mean practice form', () => {
  it('[hand] half widths: skull over cheek over jaw over chin', () => {
    const form = practiceForm(draw0, bones, 0.5);
    expect(form.cheekMm).toBe(67);
    expect(form.skullMm).toBeCloseTo(71.8, 9);
    expect(form.jawMm).toBeCloseTo(54.605, 9); // 0.815 of the cheek
    expect(form.chinHalfWidthMm).toBe(20);
  });

  it('[hand] heights: hairline, nose, mouth 30 mm under the wings, jaw', () => {
    const form = practiceForm(draw0, bones, 0.5);
    expect([form.hairlineV, form.mouthV, form.jawV]).toEqual([66, -68, -75]);
    expect(practiceForm(draw0, { ...bones, noseDropMm: 41 }, 0.5).mouthV).toBe(-71);
  });

  it('[hand] eyes in the middle of their range, bridge and mouth in theirs', () => {
    const form = practiceForm(draw0, bones, 0.5);
    expect([form.eyeOpening, form.eyeRoundness, form.lidPeak]).toEqual([0.98, 0, 0]);
    expect([form.bridgeWidthMm, form.mouthWidthMm]).toEqual([15.8, 50]);
    expect(form.glasses).toBe(false);
    expect(form.strokes).toBeUndefined();
    expect(form.oldWork).toBeUndefined();
  });

  it.each([
    [0, 6.8, 9],
    [0.5, 5.8, 8.2],
    [1, 4.8, 7.4],
  ])('[hand] lips at age %d: %d and %d mm', (age, upper, lower) => {
    const form = practiceForm(draw0, bones, age);
    expect(form.upperLipMm).toBeCloseTo(upper, 9);
    expect(form.lowerLipMm).toBeCloseTo(lower, 9);
    expect(form.age).toBe(age);
  });

  it('[hand] brow hair thins to 0.6 after 0.65 of the age scale: 235 hairs become 141; head hair pales', () => {
    for (const age of [0, 0.5, 0.65]) {
      expect(practiceForm(draw0, bones, age).browHair.count).toBe(235);
      expect(practiceForm(draw0, bones, age).hairTone).toBe(0.3);
    }
    for (const age of [0.66, 1]) {
      expect(practiceForm(draw0, bones, age).browHair.count).toBe(141);
      expect(practiceForm(draw0, bones, age).hairTone).toBe(0.05);
    }
  });
});

describe('features that only some faces have', () => {
  const has = {
    beard: (form: Form) => form.beard > 0,
    freckles: (form: Form) => form.freckles > 0,
    'a sparse tail': (form: Form) => form.browHair.sparseTail > 0,
    'a scar': (form: Form) => form.scar !== undefined,
    vitiligo: (form: Form) => form.vitiligo !== undefined,
  } as const;
  const chances = [
    ['beard', 0.25],
    ['freckles', 0.15],
    ['a sparse tail', 0.2],
    ['a scar', 0.08],
    ['vitiligo', 0.08],
  ] as const;

  it.each(chances)(
    '[hand] %s with a chance of %d: a draw under it has it, a draw on it has not',
    (name, chance) => {
      expect(has[name](practiceForm(always(chance - 0.001), bones, 0.3))).toBe(true);
      expect(has[name](practiceForm(always(chance), bones, 0.3))).toBe(false);
    },
  );

  it.each(chances)('[property] %s on a share of %d of many faces', (name, chance) => {
    const share = aged(0.3).filter(has[name]).length / count;
    expect(Math.abs(share - chance)).toBeLessThan(shareWithin(chance, count));
  });

  it('[hand] how much of each, every draw 0.04', () => {
    const form = practiceForm(always(0.04), bones, 0.3);
    expect(form.beard).toBeCloseTo(0.376, 9); // 0.35 + 0.65 × 0.04
    expect(form.freckles).toBe(32); // 30 + the whole part of 61 × 0.04
    expect(form.browHair.gaps).toBeCloseTo(0.02, 9);
    expect(form.browHair.sparseTail).toBeCloseTo(0.316, 9); // 0.3 + 0.4 × 0.04
    expect(form.scar?.side).toBe('right');
    expect(form.scar?.t).toBeCloseTo(0.464, 9); // 0.45 + 0.35 × 0.04
    expect(form.vitiligo).toHaveLength(1);
    expect(form.vitiligo?.[0]?.at[0]).toBeCloseTo(-27.6, 9); // -30 + 60 × 0.04
    expect(form.vitiligo?.[0]?.at[1]).toBeCloseTo(30.4, 9); // 30 + 10 × 0.04
    expect(form.vitiligo?.[0]?.radiusMm).toBeCloseTo(5.16, 9); // 5 + 4 × 0.04
  });

  it('[property] scars lie on either side, in the outer part of the brow', () => {
    const scars = aged(0.3).flatMap(({ scar }) => (scar ? [scar] : []));
    const onRight = scars.filter(({ side }) => side === 'right').length;
    expect(scars.filter(({ side }) => side === 'left')).toHaveLength(scars.length - onRight);
    expect(Math.abs(onRight / scars.length - 0.5)).toBeLessThan(shareWithin(0.5, scars.length));
    for (const { t, lean } of scars) {
      expect(t).toBeGreaterThanOrEqual(0.45);
      expect(t).toBeLessThanOrEqual(0.8);
      expect(lean).toBeGreaterThan(0);
    }
  });

  it('[property] pale patches lie on the forehead, towards either side', () => {
    const patches = aged(0.3).flatMap(({ vitiligo }) => vitiligo ?? []);
    for (const { at, radiusMm } of patches) {
      expect(Math.abs(at[0])).toBeLessThanOrEqual(30);
      expect(at[1]).toBeGreaterThanOrEqual(30);
      expect(at[1]).toBeLessThanOrEqual(40);
      expect(radiusMm).toBeGreaterThanOrEqual(5);
      expect(radiusMm).toBeLessThanOrEqual(9);
    }
    expect(patches.some(({ at }) => at[0] < -15)).toBe(true);
    expect(patches.some(({ at }) => at[0] > 15)).toBe(true);
  });
});

describe('many practice forms', () => {
  it('[property] every number keeps to its limits and comes near both', () => {
    const all = aged(0.3);
    const ranges: readonly (readonly [string, (form: Form) => number, number, number])[] = [
      ['eye opening', (f) => f.eyeOpening, 0.8, 1.12],
      ['eye roundness', (f) => f.eyeRoundness, -1, 1],
      ['lid peak', (f) => f.lidPeak, -1, 1],
      ['iris tone', (f) => f.irisTone, 0, 1],
      ['bridge', (f) => f.bridgeWidthMm, 13, 19],
      ['cheek', (f) => f.cheekMm, 62, 72],
      ['skull less cheek', (f) => f.skullMm - f.cheekMm, 2, 7.5],
      ['jaw in cheeks', (f) => f.jawMm / f.cheekMm, 0.73, 0.9],
      ['jaw height', (f) => f.jawV, -82, -68],
      ['chin', (f) => f.chinHalfWidthMm, 12, 28],
      ['hairline', (f) => f.hairlineV, 58, 74],
      ['mouth under the wings', (f) => -f.mouthV - bones.noseDropMm, 27, 34],
      ['mouth width', (f) => f.mouthWidthMm, 43, 57],
      ['upper lip', (f) => f.upperLipMm, 3.4, 10],
      ['lower lip', (f) => f.lowerLipMm, 5.4, 12.4],
      ['brow bone', (f) => f.browBone, 0, 1],
      ['hairs', (f) => f.browHair.count, 110, 320],
      ['gaps', (f) => f.browHair.gaps, 0, 0.5],
    ];
    for (const [name, of, lo, hi] of ranges) {
      const values = all.map(of);
      const near = (hi - lo) * 0.15;
      expect(Math.min(...values), name).toBeGreaterThanOrEqual(lo - 1e-9);
      expect(Math.max(...values), name).toBeLessThanOrEqual(hi + 1e-9);
      expect(Math.min(...values), name).toBeLessThan(lo + near);
      expect(Math.max(...values), name).toBeGreaterThan(hi - near);
    }
  });

  it('[property] amounts of beard, freckles and sparse tail fill their ranges, or are nought', () => {
    const all = aged(0.3);
    for (const [of, lo, hi] of [
      [(f: Form) => f.beard, 0.35, 1],
      [(f: Form) => f.freckles, 30, 90],
      [(f: Form) => f.browHair.sparseTail, 0.3, 0.7],
    ] as const) {
      const some = all.map(of).filter((value) => value !== 0);
      const near = (hi - lo) * 0.1;
      expect(Math.min(...some)).toBeGreaterThanOrEqual(lo);
      expect(Math.max(...some)).toBeLessThanOrEqual(hi);
      expect(Math.min(...some)).toBeLessThan(lo + near);
      expect(Math.max(...some)).toBeGreaterThan(hi - near);
    }
  });

  it('[property] ten hair styles, one face in ten each; open lids twice as often as each other lid', () => {
    const all = aged(0.3);
    const styles = [
      'bald',
      'crop',
      'short',
      'tied',
      'bob',
      'long',
      'curls',
      'locs',
      'scarf',
      'wrap',
    ] as const;
    for (const style of styles) {
      const share = all.filter(({ hair }) => hair === style).length / count;
      expect(Math.abs(share - 0.1)).toBeLessThan(shareWithin(0.1, count));
    }
    for (const [lid, chance] of [
      ['open', 0.4],
      ['hooded', 0.2],
      ['single', 0.2],
      ['deep', 0.2],
    ] as const) {
      const share = all.filter((form) => form.lid === lid).length / count;
      expect(Math.abs(share - chance)).toBeLessThan(shareWithin(chance, count));
    }
  });

  it('[property] grey heads are old heads: no tone of the one group in the other but for the shared edge', () => {
    const [young, old] = [aged(0.2).map((f) => f.hairTone), aged(0.9).map((f) => f.hairTone)];
    expect(new Set(young).size).toBe(4);
    expect(new Set(old).size).toBe(3);
    expect(Math.min(...young)).toBe(0.3);
    expect(Math.max(...young)).toBe(0.95);
    expect(Math.min(...old)).toBe(0.05);
    expect(Math.max(...old)).toBe(0.35);
  });

  it('[property] older faces have thinner lips and thinner brows; nothing else follows age', () => {
    const all = sample(count, (draw, i) => practiceForm(draw, bones, i / count));
    const ages = all.map(({ age }) => age);
    const together = (of: (form: Form) => number): number => correlation(ages, all.map(of));
    expect(together((f) => f.upperLipMm)).toBeLessThan(-0.2);
    expect(together((f) => f.lowerLipMm)).toBeLessThan(-0.15);
    expect(together((f) => f.browHair.count)).toBeLessThan(-0.4);
    for (const of of [
      (f: Form) => f.cheekMm,
      (f: Form) => f.jawMm,
      (f: Form) => f.mouthWidthMm,
      (f: Form) => f.irisTone,
    ]) {
      expect(Math.abs(together(of))).toBeLessThan(4 / Math.sqrt(count));
    }
  });

  it('[property] features are drawn on their own: skin, hair, lids and lips tell nothing of each other', () => {
    const all = aged(0.3);
    const columns = [
      all.map((f) => f.hairTone),
      all.map((f) => f.irisTone),
      all.map((f) => f.upperLipMm),
      all.map((f) => f.bridgeWidthMm),
      all.map((f) => (f.lid === 'single' ? 1 : 0)),
      all.map((f) => (f.beard > 0 ? 1 : 0)),
    ];
    columns.forEach((a, i) => {
      for (const b of columns.slice(i + 1))
        expect(Math.abs(correlation(a, b))).toBeLessThan(4.5 / Math.sqrt(count));
    });
    expect(meanOf(columns[1] ?? [])).toBeCloseTo(0.5, 1);
  });
});
