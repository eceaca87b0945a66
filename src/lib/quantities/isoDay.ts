/** A calendar day written `YYYY-MM-DD`. Days are never Date objects: a Date shifts with the time zone. */
export type IsoDay = `${number}-${number}-${number}`;

const pattern = /^(\d{4})-(\d{2})-(\d{2})$/;

function isLeapYear(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}

function daysInMonth(year: number, month: number): number {
  if (month === 2) return isLeapYear(year) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

function parts(text: string): Readonly<{ year: number; month: number; day: number }> | undefined {
  const found = pattern.exec(text);
  if (!found) return undefined;
  const [year, month, day] = [Number(found[1]), Number(found[2]), Number(found[3])];
  const isReal = month >= 1 && month <= 12 && day >= 1 && day <= daysInMonth(year, month);
  return isReal ? { year, month, day } : undefined;
}

/** True for a real calendar day, years 0000 to 9999. */
export function isIsoDay(text: string): text is IsoDay {
  return parts(text) !== undefined;
}

/**
 * Whole days since 1970-01-01 in the proleptic Gregorian calendar, by the civil-calendar count
 * (years start in March, so the leap day is last). Throws on a text that is not a day: a fault in the
 * program.
 */
export function dayNumber(day: IsoDay): number {
  const found = parts(day);
  if (!found) throw new Error(`"${day}" is not a calendar day written YYYY-MM-DD.`);
  const year = found.month > 2 ? found.year : found.year - 1;
  const monthFromMarch = (found.month + 9) % 12;
  const beforeYear = 365 * year + Math.floor(year / 4) - Math.floor(year / 100) + Math.floor(year / 400);
  return beforeYear + Math.floor((153 * monthFromMarch + 2) / 5) + found.day - 719_469;
}

/** The day with this number; the inverse of `dayNumber`. Throws outside the years 0000 to 9999. */
export function dayFromNumber(number: number): IsoDay {
  const fromMarchOfYear0 = number + 719_468;
  const era = Math.floor(fromMarchOfYear0 / 146_097);
  const inEra = fromMarchOfYear0 - era * 146_097;
  const yearOfEra = Math.floor(
    (inEra - Math.floor(inEra / 1460) + Math.floor(inEra / 36_524) - Math.floor(inEra / 146_096)) / 365,
  );
  const inYear = inEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const monthFromMarch = Math.floor((5 * inYear + 2) / 153);
  const day = inYear - Math.floor((153 * monthFromMarch + 2) / 5) + 1;
  const month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  const text = [
    String(year).padStart(4, '0'),
    String(month).padStart(2, '0'),
    String(day).padStart(2, '0'),
  ].join('-');
  if (!isIsoDay(text)) throw new Error(`Day number ${number} lies outside the years 0000 to 9999.`);
  return text;
}

/**
 * The day `days` later (earlier when negative). No clock and no time zone: 2026-03-28 + 28 is 2026-04-25
 * everywhere.
 */
export function addDays(day: IsoDay, days: number): IsoDay {
  return dayFromNumber(dayNumber(day) + days);
}

/** Days from the first to the second, negative when the second is earlier. */
export function daysBetween(from: IsoDay, to: IsoDay): number {
  return dayNumber(to) - dayNumber(from);
}
