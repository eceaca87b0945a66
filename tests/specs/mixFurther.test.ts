import { expect, test } from 'vitest';
import { mixByDrops } from '#calculators/mixByDrops.ts';
import { lookAgainUnder } from '#calculators/mixByDropsFields.ts';
import { mixFurther } from '#calculators/mixFurther.ts';
import { startState } from '#calculators/startState.ts';
import { causeWords, mattersSay, weeksWords } from '#words/mixFurther.ts';
import { mixOnPaper } from '#words/mixOnPaper.ts';
import { looksSay } from '#words/underLamps.ts';

const start = startState(mixByDrops);

test('[property] six weeks and two years are those of the calculator, L* interval and all; more pigment never reflects more than the skin', () => {
  const further = mixFurther(start);
  const mix = mixByDrops.solve(start);
  if (!further || !mix.ok) throw new Error('no mix');
  const [six, two] = [
    further.points.find(({ weeks }) => weeks === 6),
    further.points.find(({ weeks }) => weeks === 110),
  ];
  expect(six).toMatchObject({ plain: mix.outlook.times[0]?.plain, l: mix.outlook.times[0]?.lightness });
  expect(two).toMatchObject({ plain: mix.outlook.times[2]?.plain, l: mix.outlook.times[2]?.lightness });
  further.spectra.healed.forEach((share, band) => {
    expect(share).toBeLessThan(further.spectra.today[band] ?? 0);
    expect(further.spectra.fresh[band] ?? 1).toBeLessThanOrEqual(share);
  });
});

test('[hand] nothing to draw without a drop, or without a skin', () => {
  expect(mixFurther({ ...start, orange: 0, 'brown-yellow-heavy': 0 })).toBeUndefined();
  expect(
    mixFurther({ ...start, skinL: 25, skinA: 2, skinB: 30, oldWork: 'grey-blue', lamp: 'A' })?.points[0]
      ?.plain.l ?? 0,
  ).not.toBeNaN();
});

test('[hand] daylight is compared with tungsten, any other lamp with daylight', () => {
  expect((['D65', 'D50', 'A', 'LED-B3'] as const).map(lookAgainUnder)).toEqual(['A', 'D50', 'A', 'LED-B3']);
});

test('[hand] what is said about lamps, causes, dates and paper', () => {
  const at = (a: number) => ({ l: 50, a, b: 15 });
  const times = [
    { day: at(10), seen: at(14.6), sinceDay: 0, sinceSeen: 0 },
    { day: at(12), seen: at(16), sinceDay: 2.3, sinceSeen: 2.4 },
  ];
  expect(looksSay({ skin: { day: at(10), seen: at(9) }, times }, 'white LED')).toBe(
    'Under the white LED the brow reads 4.6 redder in a* than in daylight, the skin 1.0 less red. From six weeks to two years the brow moves by 2.3 in daylight and 2.4 under the white LED. Compare only readings under one lamp.',
  );
  expect(looksSay({ skin: { day: at(10), seen: at(10.04) }, times }, 'white LED')).toContain(
    'the skin no redder.',
  );
  expect(mattersSay([{ cause: 'coverage' }, { cause: 'depth' }, { cause: '77891' }])).toBe(
    'Here skin covered moves the colour most, then model depth; titanium white moves it least.',
  );
  expect(Object.values(causeWords).every((words) => words.includes(': '))).toBe(true);
  expect([0, 6, 32, 58, 84, 110].map(weeksWords)).toEqual([
    'fresh',
    'six weeks',
    'half a year',
    'one year',
    'a year and a half',
    'two years',
  ]);
  expect(
    mixOnPaper(
      [
        { name: 'orange', count: 1 },
        { name: 'white', count: 0 },
        { name: 'brown', count: 3 },
      ],
      start,
    ),
  ).toBe(
    'Drops: 1 × orange; 3 × brown. Dose 0.3. Skin L* 63.0, a* 10.0, b* 19.0. Old pigment: none. Skin covered 60 %, model depth 0.1 mm. Seen under daylight (D65).',
  );
});
