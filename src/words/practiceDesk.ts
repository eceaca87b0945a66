/** "4 done, 3 right" */
export function tallyWords(done: number, right: number): string {
  return done === 0 ? 'Not started' : `${done} done, ${right} right`;
}

/** The desk's own labels. */
export const deskWords = {
  skills: 'Skills',
  mixed: 'Ten minutes, mixed',
  mixedLine: 'Six questions from different skills. What is due for review comes first.',
  reviewLine: 'A skill you can do unaided comes back after 1, 3, 7 and 21 days.',
  nothingDue: 'Nothing is due for review today.',
  dueNow: 'Due today',
  copyTitle: 'Your practice stays on this device',
  copyLine:
    'No account, nothing sent. A browser may clear what a page has kept, some of them after seven days. Save a copy now and then, or to move to another device.',
  load: 'Load a copy',
  add: 'Add these answers',
  leave: 'Leave it',
  added: 'Added.',
  notFetched:
    'What you have done could not be fetched. It is still kept: load the page again when you have a connection.',
  setAside:
    'Some of what was kept here could not be read. It was set aside, not deleted, and goes into the copy you save.',
} as const;

/** "2 skills are due for review today." */
export function dueWords(count: number): string {
  if (count === 0) return deskWords.nothingDue;
  return count === 1 ? '1 skill is due for review today.' : `${count} skills are due for review today.`;
}

/** Before a copy is loaded: what it holds and what is new here. */
export function copyPreview(total: number, fresh: number, dropped: number): string {
  const spoilt =
    dropped === 0
      ? ''
      : dropped === 1
        ? ' 1 entry could not be read.'
        : ` ${dropped} entries could not be read.`;
  const held = total === 1 ? 'This copy holds 1 answer' : `This copy holds ${total} answers`;
  return fresh === 0
    ? `${held}, all of them already here.${spoilt}`
    : `${held}, ${fresh} of them new here. Nothing here is lost by adding them.${spoilt}`;
}

export function refusedCopy(reason: 'too-large' | 'not-a-copy' | 'newer-schema'): string {
  if (reason === 'too-large') return 'This file is too large to be a copy of your practice.';
  if (reason === 'newer-schema')
    return 'This copy comes from a newer version of the site. Load the page again, then choose the file once more.';
  return 'This file is not a copy of your practice.';
}
