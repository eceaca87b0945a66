/**
 * Pages and parts whose answers come from sums that are being mended, by kind and id. Each of them shows one
 * notice, answers nothing that could be mixed, and asks, marks and counts no problem. An id that is taken off
 * here has its page back.
 */
const beingMended = {
  calculators: ['which-hue', 'find-a-recipe'],
  skills: ['neutralise-direction', 'green-trap', 'simplest-recipe', 'do-not-cover'],
  lessons: ['colour/neutralise-or-darken'],
  rules: ['a-brown-dark-enough', 'choose-the-simplest-recipe', 'old-red-heals-pink'],
  worked: ['drops-against-difference'],
} as const;

export type MendedKind = keyof typeof beingMended;
export const mendedIds: Readonly<Record<MendedKind, readonly string[]>> = beingMended;

/** True while a page or part is on the list. */
export const isBeingMended = (kind: MendedKind, id: string): boolean => mendedIds[kind].includes(id);

/** The notice, in the order it is read, and the mark behind a name in a list. */
export const mendedWords = {
  title: 'Being mended: do not mix from this page.',
  why: 'Some of its answers, above all for old colours, are wrong.',
  instead:
    'Use your own training and the advice of the bottle’s maker. When in doubt, do not cover: lighten first, or leave it.',
  lesson: 'This holds for the whole lesson: the figure, the worked examples and the problems.',
  skill:
    'Until it is mended no problem of this kind is asked or marked, and none is due. Answers you have given are kept. A link to one of these problems leads here too.',
  mark: 'being mended',
} as const;

/** A name in a list, marked while its page is being mended. */
export const markedName = (kind: MendedKind, id: string, name: string): string =>
  isBeingMended(kind, id) ? `${name} (${mendedWords.mark})` : name;

/** What a page says of itself elsewhere, as in the preview of a link: the notice comes first. */
export const markedLine = (kind: MendedKind, id: string, line: string): string =>
  isBeingMended(kind, id) ? `${mendedWords.title} ${line}` : line;
