/** Old work by how it looks, and none. */
export const oldWorks = ['none', 'grey-blue', 'ash-grey', 'green', 'violet', 'pink', 'orange'] as const;
export type OldWork = (typeof oldWorks)[number];
