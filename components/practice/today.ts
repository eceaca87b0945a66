import { isIsoDay, type IsoDay } from '#lib/quantities/isoDay.ts';

/** Today by the learner's own calendar. */
export function today(): IsoDay {
  const now = new Date();
  const text = [
    String(now.getFullYear()).padStart(4, '0'),
    String(now.getMonth() + 1).padStart(2, '0'),
    String(now.getDate()).padStart(2, '0'),
  ].join('-');
  return isIsoDay(text) ? text : '2000-01-01';
}
