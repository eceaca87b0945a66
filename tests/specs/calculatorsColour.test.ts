import { expect, test } from 'vitest';
import { fromAddress } from '#calculators/address.ts';
import { mixByDrops } from '#calculators/mixByDrops.ts';
import { startState } from '#calculators/startState.ts';
import { skinReading } from '#calculators/skinReading.ts';
import { mixAddress } from '#calculators/mixLink.ts';
import { strokesFor } from '#calculators/strokesLink.ts';
import { strokesAndDots } from '#calculators/strokesAndDots.ts';
import { strokesForShare } from '#lib/colour/coverage/coverage.ts';
import { strokeValues } from '#lib/colour/numbers/strokes.ts';
import { skinPlausibility } from '#lib/colour/reading/skinPlausibility.ts';
import { skinReadingCaution, skinReadingSays } from '#words/skinReading.ts';
import { percent, strokesCaution, strokesSays } from '#words/strokesAndDots.ts';

test('[hand] skin reading starts on the violinist: 59.5° and 35.2°, three classes possible; touched skin widens; three readings narrow', () => {
  const start = startState(skinReading);
  const says = (part: Partial<typeof start>) =>
    Object.values(skinReadingSays(skinReading.solve({ ...start, ...part }))).join(' ');
  expect(says({})).toBe(
    'Hue angle 59.5°, typology angle 35.2°: “intermediate” in the scheme of Chardon and Del Bino. Hue lies between 51.3 and 67.2°. Which way it leans is not shown. The typology angle lies between 27.8 and 43.0°. With the doubt it may be “light”, “intermediate” or “tan”.',
  );
  // Lightness 60.9 to 63, yellow 16.3 to 17.9: arctan(10.9/17.9) and arctan(13/16.3).
  expect(says({ count: '3' })).toContain(
    'The typology angle lies between 31.3 and 38.6°. The class is sure.',
  );
  expect(says({ touch: 'touched' })).toContain('Hue lies between 41.2 and 78.7°.');
  expect(says({ touch: 'not-known' })).toBe(says({ touch: 'touched' }));
  expect(says({ b1: 2 })).toContain('outside the scale');
  expect(skinReadingCaution(skinReading.solve(start), 'untouched', 'like-the-measured')).toBeUndefined();
  expect(skinReadingCaution(skinReading.solve(start), 'touched', 'outside-the-measured')).toContain(
    'Wait until it looks',
  );
  expect(skinReadingCaution(skinReading.solve(start), 'untouched', 'outside-the-measured')).toContain(
    'gap in the measuring',
  );
  expect(
    skinPlausibility({ l: start.l1, a: start.a1, b: start.b1 }),
    'what the island shows before it has asked',
  ).toBe('like-the-measured');
});

test('[hand] strokes and dots: the lesson stands answered, 30 and 58 %; crossing 26 and 44; dots 22 and 43; each with its words', () => {
  const start = startState(strokesAndDots);
  const says = (part: Partial<typeof start>) =>
    strokesSays(strokesAndDots.solve({ ...start, ...part }), { ...start, ...part });
  expect(says({}).answer).toBe('60 strokes cover 30\u00a0% of the brow fresh, and 58\u00a0% once spread.');
  // √(0.05² + 0.0625² + 0.1667² + 0.05215²) = 0.1930, e^ = 1.2129; with 0.2286 for the width 0.2485, e^ =
  // 1.2821.
  expect(says({}).doubt).toBe(
    '95 in 100: 25 to 36\u00a0% fresh, 46 to 75\u00a0% spread. 1.9 times as much skin is coloured, and nothing was added.',
  );
  expect(says({ made: 'crossing' }).answer).toBe(
    '60 strokes that cross cover 26\u00a0% of the brow fresh, and 44\u00a0% once spread.',
  );
  expect(says({ made: 'dots' }).answer).toBe(
    '8 dots in each square millimetre, 0.2 mm across, cover 22\u00a0% of the brow fresh, and 43\u00a0% once spread.',
  );
  expect(says({ count: 1 }).answer).toBe(
    'One stroke covers 0.5\u00a0% of the brow fresh, and 1.0\u00a0% once spread.',
  );
  expect(says({ spread: 0.18 }).doubt).not.toContain('times as much');
  expect(strokesCaution(strokesAndDots.solve(start))).toBeUndefined();
  expect(strokesCaution(strokesAndDots.solve({ ...start, count: 100 }))).toContain('hardly any bare skin');
  expect([percent(1), percent(0.999), percent(0.05)]).toEqual(['100\u00a0%', '99\u00a0%', '5.0\u00a0%']);
});

test('[property] coverage goes to the strokes and back by address: every whole per cent comes back at most one higher', () => {
  // 287.6 mm² × 0.6 ÷ (8 mm × 0.35 mm) = 61.6.
  expect(strokesFor(60).address).toBe('/calculators/strokes-and-dots/?count=62');
  const query = (address: string) => address.slice(address.indexOf('?'));
  for (let coverage = 5; coverage <= 100; coverage++) {
    const { exampleStrokeMm: lengthMm, exampleAreaMm2: areaMm2, strokeSpreadMm: widthMm } = strokeValues;
    expect(strokesFor(coverage).count).toBe(strokesForShare(coverage / 100, { lengthMm, widthMm, areaMm2 }));
    const there = fromAddress(strokesAndDots, query(strokesFor(coverage).address));
    expect(there.refused).toEqual([]);
    const back = fromAddress(mixByDrops, query(mixAddress(strokesAndDots.solve(there.state).spread.share)));
    expect(back.refused).toEqual([]);
    expect(back.state.coverage).toBeGreaterThanOrEqual(coverage);
    expect(back.state.coverage).toBeLessThanOrEqual(coverage + 1);
  }
  expect([mixAddress(0), mixAddress(2)]).toEqual([
    '/calculators/mix-by-drops/?coverage=5',
    '/calculators/mix-by-drops/?coverage=100',
  ]);
});
