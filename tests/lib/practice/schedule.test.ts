import { expect, test } from 'vitest';
import { isDue, nextReview } from '#lib/practice/schedule.ts';
import type { Review } from '#lib/practice/schedule.ts';

test('[hand] right each time: 1, 3, 7, 21 days, then every 21', () => {
  let review: Review | undefined;
  let today: Review['due'] = '2026-03-27';
  const days: string[] = [];
  for (let i = 0; i < 5; i++) {
    review = nextReview(review, true, today);
    today = review.due;
    days.push(review.due);
  }
  expect(days).toEqual(['2026-03-28', '2026-03-31', '2026-04-07', '2026-04-28', '2026-05-19']);
});

test('[hand] wrong begins again tomorrow; right too early changes nothing', () => {
  const before: Review = { stage: 2, due: '2026-04-07' };
  expect(nextReview(before, false, '2026-04-07')).toEqual({ stage: 0, due: '2026-04-08' });
  expect(nextReview(before, true, '2026-04-05')).toEqual(before);
  expect(nextReview(before, true, '2026-04-09')).toEqual({ stage: 3, due: '2026-04-30' });
});

test('[hand] due on the day and after', () => {
  const review: Review = { stage: 0, due: '2026-03-01' };
  expect(isDue(review, '2026-02-28')).toBe(false);
  expect(isDue(review, '2026-03-01')).toBe(true);
  expect(isDue(review, '2027-01-01')).toBe(true);
  expect(isDue(undefined, '2026-03-01')).toBe(false);
});
