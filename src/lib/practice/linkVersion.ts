/** What a link says about the version of the exercise it was made for, against the version of today. */
export type LinkVersion = 'same' | 'earlier' | 'later' | 'unreadable';

/** Reads ?version= of a link that names a seed. A link without one was made when there was only the first version. */
export function linkVersion(text: string | null, today: number): LinkVersion {
  if (text !== null && !/^[1-9]\d{0,2}$/.test(text)) return 'unreadable';
  const made = Number(text ?? 1);
  if (made === today) return 'same';
  return made < today ? 'earlier' : 'later';
}

/** What a link to a seed carries besides it: nothing for the first version. */
export function versionInLink(version: number): string {
  return version === 1 ? '' : `&version=${version}`;
}
