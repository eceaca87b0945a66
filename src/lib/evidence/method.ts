import type { SourceId } from './bibliography.ts';

/**
 * A piece of mathematics and where it comes from. Papers not opened are named, and no printed value rests on
 * them.
 */
export type Method = Readonly<{ sources: readonly SourceId[]; file: string }>;
