import type { Source } from './source.ts';

/** Every source the site cites. Keys are first author and year. */
export const bibliography = {} as const satisfies Readonly<Record<string, Source>>;

export type SourceId = keyof typeof bibliography;
