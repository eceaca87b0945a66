import { expect, test } from 'vitest';
import { anchorDistances } from '#lib/mapping/placing/anchorDistances.ts';
import { frontByThreeAnchors } from '#skills/mapping/frontByThreeAnchors.ts';
import { frontByThreeAnchorsWords } from '#words/skills/frontByThreeAnchors.ts';
import { checkSeed } from './skillCheck.ts';

const seeds = Array.from({ length: 1000 }, (_, seed) => seed);
const exactOf = (given: ReturnType<typeof frontByThreeAnchors.given>) => {
  const answer = frontByThreeAnchors.answer(given);
  if (answer.kind !== 'number') throw new Error('not a number');
  return answer.exact;
};

test('[property] every seed 0 to 999 has one right answer, apart from every slip, and says so', () => {
  for (const seed of seeds) checkSeed(frontByThreeAnchors, frontByThreeAnchorsWords, seed);
});

test('[property] the answer is half the anchor’s width, wherever the midline runs', () => {
  for (const seed of seeds) {
    const given = frontByThreeAnchors.given(seed);
    const { right, left } = given.placesMm[given.anchor];
    expect(exactOf(given)).toBeCloseTo((left - right) / 2, 9);
  }
});

test('[property] the calculator’s anchors give the same front', () => {
  for (const seed of seeds) {
    const given = frontByThreeAnchors.given(seed);
    if (given.anchor === 'nostril-middle') continue;
    const side = (way: 'right' | 'left') => ({
      noseWing: { uMm: Math.abs(given.placesMm['nose-wing'][way] - given.midlineMm), vMm: -38 },
      innerCorner: { uMm: Math.abs(given.placesMm['inner-corner'][way] - given.midlineMm), vMm: -1 },
    });
    expect(exactOf(given)).toBeCloseTo(
      anchorDistances({ right: side('right'), left: side('left') }, 0.6)[given.anchor].bothMm,
      9,
    );
  }
});

test('[property] every anchor is asked for often; the nose leans plainly; marks stand in order on the ruler', () => {
  const counts = new Map<string, number>();
  for (const seed of seeds) {
    const { anchor, midlineMm, tipMm, placesMm } = frontByThreeAnchors.given(seed);
    counts.set(anchor, (counts.get(anchor) ?? 0) + 1);
    expect(Math.abs(tipMm - midlineMm)).toBeGreaterThan(1.9);
    expect(placesMm['nose-wing'].right).toBeLessThan(placesMm['nostril-middle'].right);
    expect(placesMm['nostril-middle'].left).toBeLessThan(placesMm['nose-wing'].left);
    for (const { right, left } of Object.values(placesMm))
      expect(right > 32 && right < midlineMm && left > midlineMm && left < 93).toBe(true);
  }
  expect(counts.size).toBe(3);
  for (const count of counts.values()) expect(count).toBeGreaterThan(250);
});

test('[hand] midline 60, wings at 41 and 83: 19 and 23 mm, so 21; each slip by hand', () => {
  const given = {
    anchor: 'nose-wing',
    midlineMm: 60,
    tipMm: 63.4,
    placesMm: {
      'nose-wing': { right: 41, left: 83 },
      'nostril-middle': { right: 50, left: 74 },
      'inner-corner': { right: 44, left: 77 },
    },
  } as const;
  expect(frontByThreeAnchors.answer(given)).toEqual({
    kind: 'number',
    range: { lo: 209, hi: 211, decimals: 1 },
    exact: 21,
    unit: 'mm',
  });
  const values = Object.fromEntries(
    frontByThreeAnchors.slips.map(({ id, value }) => [id, Number(value(given))]),
  );
  expect(values).toEqual({
    'right-only': 19,
    'left-only': 23,
    'from-the-tip': expect.closeTo(22.4, 9),
    'other-anchor': 16.5,
    'whole-width': 42,
  });
  expect(
    frontByThreeAnchors.slips.map(({ value }) =>
      Number(value({ ...given, anchor: 'inner-corner' })).toFixed(1),
    ),
  ).toEqual(['16.0', '17.0', '19.4', '21.0', '33.0']);
  expect(
    frontByThreeAnchors.slips.map(({ value }) =>
      Number(value({ ...given, anchor: 'nostril-middle' })).toFixed(1),
    ),
  ).toEqual(['10.0', '14.0', '13.4', '21.0', '24.0']);
});
