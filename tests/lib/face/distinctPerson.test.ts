import { describe, expect, test } from 'vitest';
import { distinctPerson, sheetOfFaces, visibleDifferences, type Person } from '#lib/face/distinctPerson.ts';
import { drawFrom, drawWhole, seedFrom } from '#lib/quantities/seed.ts';
import { practiceFace } from '#lib/face/practiceFace.ts';
import { practiceBones } from '#lib/face/practiceBones.ts';

const rowFrom = (first: number) => Array.from({ length: sheetOfFaces }, (_, i) => distinctPerson(first + i));

test('[property] within each row of 24 offered seeds, any two people differ in at least four of the eight', () => {
  for (let first = 0; first < 1000; first += sheetOfFaces) {
    const row = rowFrom(first);
    const alike = row.flatMap((one, i) =>
      row
        .slice(0, i)
        .flatMap((other, j) => (visibleDifferences(one, other) < 4 ? [`${first + i} and ${first + j}`] : [])),
    );
    expect(alike).toEqual([]);
  }
});

test('[property] one sheet shows every lid, faces from young to old, narrow and wide noses, thin and full lips, flat and strong brow bones', () => {
  const row = rowFrom(0);
  expect(new Set(row.map(({ form }) => form.lid))).toEqual(new Set(['open', 'hooded', 'single', 'deep']));
  const spread = (measure: (person: Person) => number) =>
    Math.max(...row.map(measure)) - Math.min(...row.map(measure));
  expect(spread(({ age }) => age)).toBeGreaterThan(0.8);
  expect(spread(({ bones }) => bones.noseWidthMm)).toBeGreaterThan(12);
  expect(spread(({ form }) => form.upperLipMm + form.lowerLipMm)).toBeGreaterThan(5);
  expect(spread(({ form }) => form.browBone)).toBeGreaterThan(0.8);
  expect(spread(({ form }) => 2 * form.jawMm)).toBeGreaterThan(12);
});

test('[property] a seed is always the same person, whoever was asked for before; its bones never depend on its neighbours', () => {
  const draw = drawFrom(5);
  for (let i = 0; i < 50; i++) {
    const seed = drawWhole(draw, 0, 999);
    expect(distinctPerson(seed)).toEqual(distinctPerson(seed));
    expect(distinctPerson(seed).bones).toEqual(practiceBones(drawFrom(seedFrom('bones', seed))));
    expect(practiceFace(seed, 1).face.form).toEqual(distinctPerson(seed).form);
  }
});

describe('[hand] differences to the eye', () => {
  const one = distinctPerson(0);
  const other = (bones: Partial<Person['bones']>, form: Partial<Person['form']>, age = one.age): Person => ({
    bones: { ...one.bones, ...bones },
    form: { ...one.form, ...form },
    age,
  });
  test('[hand] nobody differs from himself, and each of the eight counts once', () => {
    expect(visibleDifferences(one, one)).toBe(0);
    const { scar, vitiligo, lid, jawMm, upperLipMm, browBone } = one.form;
    const changed = [
      other({}, { lid: lid === 'deep' ? 'open' : 'deep' }),
      other({}, { browBone: browBone + 0.08 }),
      other({ noseWidthMm: one.bones.noseWidthMm - 1.01 }, {}),
      other({}, { upperLipMm: upperLipMm + 1.01 }),
      other({}, { jawMm: jawMm - 0.51 }),
      other({}, {}, one.age + 0.08),
      other({}, scar ? {} : { scar: { side: 'right', t: 0.5, lean: 0.3 } }),
      other({}, vitiligo ? {} : { vitiligo: [{ at: [0, 30], radiusMm: 5 }] }),
    ];
    expect(changed.map((person) => visibleDifferences(one, person))).toEqual([
      1,
      1,
      1,
      1,
      1,
      1,
      scar ? 0 : 1,
      vitiligo ? 0 : 1,
    ]);
    expect([scar, vitiligo]).toEqual([undefined, undefined]);
  });
  test('[hand] less than can be seen counts nothing: 0.9 mm of nose, lips and jaw, 0.06 of age and brow bone', () => {
    const { upperLipMm, jawMm, browBone } = one.form;
    expect(
      visibleDifferences(
        one,
        other(
          { noseWidthMm: one.bones.noseWidthMm + 0.9 },
          { upperLipMm: upperLipMm - 0.9, jawMm: jawMm + 0.45, browBone: browBone - 0.06 },
          one.age - 0.06,
        ),
      ),
    ).toBe(0);
  });
});

test('[property] the two eyes of a practice face are drawn a little apart, never much; a beard and a scarf never meet', () => {
  const forms = Array.from({ length: 500 }, (_, seed) => distinctPerson(seed).form);
  expect(forms.filter(({ leftEye }) => leftEye.openingShare === 1).length).toBe(0);
  for (const {
    leftEye: { openingShare, peakShift },
    hair,
    beard,
  } of forms) {
    expect(openingShare >= 0.92 && openingShare <= 1.08 && Math.abs(peakShift) <= 0.5).toBe(true);
    expect(hair === 'scarf' && beard > 0).toBe(false);
  }
  expect(forms.filter(({ beard }) => beard > 0).length).toBeGreaterThan(50);
  expect(forms.filter(({ hair }) => hair === 'scarf').length).toBeGreaterThan(20);
});
