import type { LinkVersion } from '#lib/practice/linkVersion.ts';
import type { OtherVersions } from '#lib/practice/otherVersions.ts';

const answers = (count: number): string => (count === 1 ? '1 answer' : `${count} answers`);

/** In the list of skills, beside its counts: "2 answers to an earlier version of this exercise are kept and not counted." Nothing where there are none. */
export function otherVersionsWords({ earlier, later }: OtherVersions): string {
  const kept = [
    ...(earlier > 0 ? [`${answers(earlier)} to an earlier version of this exercise`] : []),
    ...(later > 0 ? [`${answers(later)} to a later version of this exercise`] : []),
  ];
  return kept.length === 0
    ? ''
    : `${kept.join(' and ')} ${earlier + later === 1 ? 'is' : 'are'} kept and not counted.`;
}

/** About a link that was made for another version than the one on the page. Nothing where it is the same. */
export function linkVersionWords(link: LinkVersion): string {
  if (link === 'same') return '';
  if (link === 'unreadable')
    return 'The version in this link cannot be read. This is the exercise as it is today.';
  return link === 'earlier'
    ? 'This link was made for an earlier version of this exercise. It was made anew since then: the question or the right answer may be another.'
    : 'This link was made for a later version of this exercise than this page has. Load the page again to get it.';
}
