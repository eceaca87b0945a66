import { expect, test } from 'vitest';
import { addDays, dayFromNumber, dayNumber, daysBetween, isIsoDay } from '#lib/quantities/isoDay.ts';

test('[hand] printed calendars: clock changes, leap days, year ends', () => {
  expect(addDays('2026-03-28', 28)).toBe('2026-04-25');
  expect(addDays('2024-02-28', 1)).toBe('2024-02-29');
  expect(addDays('2023-02-28', 1)).toBe('2023-03-01');
  expect(addDays('1900-02-28', 1)).toBe('1900-03-01');
  expect(addDays('2000-02-28', 1)).toBe('2000-02-29');
  expect(addDays('2026-12-31', 1)).toBe('2027-01-01');
  expect(addDays('2026-01-01', -1)).toBe('2025-12-31');
  expect(daysBetween('2026-01-01', '2027-01-01')).toBe(365);
});

test('[library] the UTC calendar of the engine agrees for every day of 1899 to 2101', () => {
  const first = Date.UTC(1899, 0, 1) / 86_400_000;
  const last = Date.UTC(2101, 11, 31) / 86_400_000;
  for (let number = first; number <= last; number++) {
    const theirs = new Date(number * 86_400_000).toISOString().slice(0, 10);
    const ours = dayFromNumber(number);
    if (ours !== theirs || dayNumber(ours) !== number)
      throw new Error(`${number}: ours ${ours}, theirs ${theirs}`);
  }
});

test('[property] the answer is the same in every zone', () => {
  const before = process.env['TZ'];
  for (const zone of ['UTC', 'America/New_York', 'Australia/Sydney', 'Pacific/Kiritimati']) {
    process.env['TZ'] = zone;
    expect(addDays('2026-10-24', 1)).toBe('2026-10-25');
    expect(addDays('2026-03-28', 1)).toBe('2026-03-29');
  }
  if (before === undefined) delete process.env['TZ'];
  else process.env['TZ'] = before;
});

test('[hand] what is a day and what is not', () => {
  expect(isIsoDay('2024-02-29')).toBe(true);
  for (const text of [
    '2023-02-29',
    '2026-13-01',
    '2026-00-10',
    '2026-1-1',
    '2026-04-31',
    '',
    '2026-04-31T00:00',
    '٢٠٢٦-01-01',
  ]) {
    expect(isIsoDay(text), text).toBe(false);
  }
});
