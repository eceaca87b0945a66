import fc from 'fast-check';
import { expect, test } from 'vitest';
import { solidPoint } from '#lib/geometry/solid.ts';
import { archFacts } from '#lib/mapping/facts/arch.ts';
import {
  archRules,
  habitArchRules,
  irisEdgeByEyeWidthMm,
  irisEdgeMm,
  placeArch,
  placeArchBySide,
  publishedArchRules,
  type ArchInputs,
} from '#lib/mapping/placing/archRules.ts';
import { archSpread } from '#lib/mapping/placing/archSpread.ts';
import { archTwoThirds } from '#lib/mapping/numbers/arch.ts';
import { irisWidthMm } from '#lib/mapping/numbers/iris.ts';
import { goldenShare, goldenShareFromTail } from '#lib/mapping/placing/goldenShare.ts';
import { ownShareOf } from '#lib/mapping/placing/ownShare.ts';
import { pointAlongSkin } from '#lib/mapping/placing/pointAlongSkin.ts';
import { settleBrow, settledBrow, settleMm } from '#lib/mapping/placing/settleBrow.ts';
import { browLengths } from '#lib/mapping/pose/browLength.ts';
import { canonicalFace } from '#lib/tables/canonicalFace.ts';
import { mappingValues } from '#lib/mapping/numbers/values.ts';
import { real } from '#tests/tools/real.ts';

const eye = { innerCornerMm: 16, pupilMm: 31.5, outerCornerMm: 46, irisWidthMm: 12 };
const inputs: ArchInputs = { brow: { frontMm: 14, tailMm: 57.25 }, eye, ownShare: 0.6 };

function placed(given: ArchInputs) {
  const result = placeArch(given);
  if (!result.ok) throw new Error(result.reason);
  return result.places;
}

test('[table] front 14 and tail 57.25: golden section at 40.73 from the front, 30.52 from the tail', () => {
  const places = placed(inputs);
  expect(places['golden-from-front']).toBeCloseTo(40.73, 2);
  expect(places['golden-from-tail']).toBeCloseTo(30.52, 2);
});

test('[hand] every rule on one face: eye 16 to 46, pupil 31.5, iris 12, brow 14 to 57.25', () => {
  const places = placed(inputs);
  expect(places.pupil).toBe(31.5);
  expect(places['iris-edge']).toBe(37.5);
  expect(places['iris-edge-to-corner']).toBe(41.75);
  expect(places['two-thirds']).toBeCloseTo(14 + 28.8333333333, 9);
  expect(places.women).toBeCloseTo(43.87, 12); // 16 + 0.929 × 30
  expect(places.models).toBeCloseTo(45.34, 12); // 16 + 0.978 × 30
  expect(places['outer-corner']).toBe(46);
  expect(places['own-share']).toBeCloseTo(39.95, 12); // 14 + 0.6 × 43.25
  expect(Object.keys(places).sort()).toEqual([...archRules].sort());
  expect([...publishedArchRules, ...habitArchRules]).toEqual([...archRules]);
});

test('[hand] the edge of the iris: from the pupil, or by the eye’s width where the iris was not measured', () => {
  expect(irisEdgeMm({ pupilMm: 30, irisWidthMm: 11 })).toBe(35.5);
  expect(irisEdgeByEyeWidthMm(eye, 'women')).toBeCloseTo(38.86, 12); // 16 + 0.762 × 30
  expect(irisEdgeByEyeWidthMm(eye, 'models')).toBeCloseTo(38.05, 12); // 16 + 0.735 × 30
});

test('[hand] refused: no length, or eye marks that do not follow each other', () => {
  expect(placeArch({ ...inputs, brow: { frontMm: 20, tailMm: 20 } })).toEqual({
    ok: false,
    reason: 'no-length',
  });
  expect(placeArch({ ...inputs, brow: { frontMm: 20.1, tailMm: 20 } })).toEqual({
    ok: false,
    reason: 'no-length',
  });
  for (const wrong of [
    { innerCornerMm: 31.5 },
    { pupilMm: 16 },
    { outerCornerMm: 37.5 },
    { irisWidthMm: 29 },
  ]) {
    expect(placeArch({ ...inputs, eye: { ...eye, ...wrong } })).toEqual({
      ok: false,
      reason: 'eye-not-in-order',
    });
  }
  expect(placeArch({ ...inputs, eye: { ...eye, irisWidthMm: 28.9 } }).ok).toBe(true);
  expect(placeArch({ ...inputs, eye: { ...eye, innerCornerMm: 31.4 } }).ok).toBe(true);
});

test('[property] the golden section cuts the line so that whole to longer is as longer to shorter, from either end', () => {
  expect(1 / goldenShare).toBeCloseTo(goldenShare / goldenShareFromTail, 12);
  expect(goldenShare + goldenShareFromTail).toBe(1);
  fc.assert(
    fc.property(real(5, 30), real(25, 60), (frontMm, lengthMm) => {
      const places = placed({ ...inputs, brow: { frontMm, tailMm: frontMm + lengthMm } });
      const long = places['golden-from-front'] - frontMm;
      expect(lengthMm / long).toBeCloseTo(long / (lengthMm - long), 9);
      // Counted from the tail, the longer part lies at the tail.
      expect(frontMm + lengthMm - places['golden-from-tail']).toBeCloseTo(long, 9);
      expect(places['golden-from-tail']).toBeLessThan(places['golden-from-front']);
      expect(places['golden-from-front']).toBeLessThan(places['two-thirds']);
    }),
  );
});

test('[property] one settled arch lies midway between the arches of the sides, for every rule', () => {
  fc.assert(
    fc.property(real(10, 20), real(10, 20), real(50, 62), real(50, 62), (a, b, c, d) => {
      const side = (frontMm: number, tailMm: number): ArchInputs => ({
        ...inputs,
        brow: { frontMm, tailMm },
      });
      const sides = placeArchBySide({ right: side(a, c), left: side(b, d) });
      const settled = settleBrow(
        { right: { frontMm: a, tailMm: c }, left: { frontMm: b, tailMm: d } },
        'mean',
      );
      if (!settled.ok || !sides.right.ok || !sides.left.ok) throw new Error('brows have length');
      const one = placed({ ...inputs, brow: settled.brow });
      for (const rule of archRules)
        expect(one[rule]).toBeCloseTo((sides.right.places[rule] + sides.left.places[rule]) / 2, 9);
    }),
  );
});

test('[hand] by side: right 14.2 to 57.5 and left 13.8 to 57.0 give 41.0 and 40.5; settled they give one', () => {
  const right = { frontMm: 14.2, tailMm: 57.5 };
  const left = { frontMm: 13.8, tailMm: 57 };
  const sides = placeArchBySide({ right: { ...inputs, brow: right }, left: { ...inputs, brow: left } });
  expect(sides.right.ok && sides.right.places['golden-from-front']).toBeCloseTo(14.2 + 0.618034 * 43.3, 4);
  expect(sides.left.ok && sides.left.places['golden-from-front']).toBeCloseTo(13.8 + 0.618034 * 43.2, 4);
  expect(settleBrow({ right, left }, 'mean')).toEqual({
    ok: true,
    brow: { frontMm: 14, tailMm: 57.25, lengthMm: 43.25 },
  });
  expect(settleBrow({ right, left }, 'right')).toEqual({ ok: true, brow: { ...right, lengthMm: 43.3 } });
  expect(settleBrow({ right, left }, 'left')).toEqual({ ok: true, brow: { ...left, lengthMm: 43.2 } });
  expect(settleBrow({ right: { frontMm: 50, tailMm: 20 }, left }, 'right')).toEqual({
    ok: false,
    reason: 'no-length',
  });
  expect(settledBrow({ frontMm: 3, tailMm: 3 })).toEqual({ ok: false, reason: 'no-length' });
  expect(
    ['mean', 'right', 'left'].map((from) =>
      settleMm({ right: 4, left: 7 }, from === 'mean' ? 'mean' : from === 'right' ? 'right' : 'left'),
    ),
  ).toEqual([5.5, 4, 7]);
});

test('[hand] the spread of a group: its innermost and outermost rule, the first of equals', () => {
  const places = placed(inputs);
  expect(archSpread(places, publishedArchRules)).toEqual({
    innermost: 'pupil',
    outermost: 'outer-corner',
    fromMm: 31.5,
    toMm: 46,
    spreadMm: 14.5,
  });
  expect(archSpread(places, ['models'])).toMatchObject({
    innermost: 'models',
    outermost: 'models',
    spreadMm: 0,
  });
  expect(archSpread(places, ['models', 'women', 'outer-corner', 'iris-edge'])).toMatchObject({
    innermost: 'iris-edge',
    outermost: 'outer-corner',
    fromMm: 37.5,
    toMm: 46,
  });
  const equal = { ...places, pupil: 40, women: 40 };
  expect(archSpread(equal, ['women', 'pupil'])).toMatchObject({ innermost: 'women', outermost: 'women' });
});

test('[hand] the own share: nothing at the front, all at the tail, refused outside', () => {
  const brow = { frontMm: 10, tailMm: 60 };
  expect(ownShareOf(brow, 10)).toEqual({ ok: true, share: 0 });
  expect(ownShareOf(brow, 60)).toEqual({ ok: true, share: 1 });
  expect(ownShareOf(brow, 41)).toEqual({ ok: true, share: 0.62 });
  expect(ownShareOf(brow, 9.9)).toEqual({ ok: false, reason: 'arch-outside-brow' });
  expect(ownShareOf(brow, 60.1)).toEqual({ ok: false, reason: 'arch-outside-brow' });
  expect(ownShareOf({ frontMm: 10, tailMm: 10 }, 10)).toEqual({ ok: false, reason: 'no-length' });
});

test('[property] a brow’s own share puts the arch back where it was', () => {
  fc.assert(
    fc.property(real(5, 30), real(25, 60), real(0, 1), (frontMm, lengthMm, share) => {
      const brow = { frontMm, tailMm: frontMm + lengthMm };
      const archMm = placed({ ...inputs, brow, ownShare: share })['own-share'];
      const own = ownShareOf(brow, Math.min(brow.tailMm, archMm));
      expect(own.ok && own.share).toBeCloseTo(share, 9);
    }),
  );
});

test('[table] on the model head: 43.3, 50.5 and 53.1 mm; along the skin the golden point lies 3.4 mm further out', () => {
  const { straightMm, chordMm, alongSkinMm } = browLengths();
  const onSkin = pointAlongSkin(canonicalFace.left.browTop.map(solidPoint), goldenShare);
  if (!onSkin.ok) throw new Error('five points are enough');
  const movesMm = onSkin.point.xMm - (canonicalFace.left.browTop[0][0] + goldenShare * straightMm);
  expect([straightMm, chordMm, alongSkinMm, movesMm].map((mm) => Number(mm.toFixed(1)))).toEqual([
    43.3, 50.5, 53.1, 3.4,
  ]);
  expect(archFacts['golden-point-moves-mm'].value).toBe(3.4);
});

test('[hand] a share of the length of a bent line: 3-4-0, then 0-0-12', () => {
  const [a, b, c] = [
    { xMm: 10, yMm: 0, zMm: 0 },
    { xMm: 13, yMm: 4, zMm: 0 },
    { xMm: 13, yMm: 4, zMm: -12 },
  ];
  expect(pointAlongSkin([a, b, c], 0)).toEqual({ ok: true, point: a });
  expect(pointAlongSkin([a, b, c], 2.5 / 17)).toEqual({ ok: true, point: { xMm: 11.5, yMm: 2, zMm: 0 } });
  expect(pointAlongSkin([a, b, c], 5 / 17)).toEqual({ ok: true, point: b });
  const deep = pointAlongSkin([a, b, c], 11 / 17);
  expect(deep.ok && deep.point.zMm).toBeCloseTo(-6, 12);
  expect(deep.ok && deep.point.xMm).toBe(13);
  expect(pointAlongSkin([a, b, c], 1)).toEqual({ ok: true, point: c });
  expect(pointAlongSkin([a, b, c], 2)).toEqual({ ok: true, point: c });
  expect(pointAlongSkin([a, a], 0.5)).toEqual({ ok: true, point: a });
  for (const few of [[], [a]])
    expect(pointAlongSkin(few, 0.5)).toEqual({ ok: false, reason: 'too-few-points' });
});

test('[hand] rules and facts say the same numbers', () => {
  expect(Number((100 * goldenShare).toFixed(1))).toBe(archFacts['golden-share'].value);
  expect(Number((100 * goldenShareFromTail).toFixed(1))).toBe(archFacts['golden-share-from-tail'].value);
  expect(Number((100 * archTwoThirds).toFixed(1))).toBe(archFacts['arch-two-thirds'].value);
  expect(mappingValues['iris-width-mm']).toBe(irisWidthMm);
});
