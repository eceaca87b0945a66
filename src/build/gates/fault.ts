import type { BuiltPage } from '../builtPages.ts';

/** Something in the built pages that must not ship: where, and what to do about it. */
export type Fault = Readonly<{ file: string; line: number; says: string }>;

/** A gate reads all built pages and names every fault it finds. */
export type Gate = (pages: readonly BuiltPage[], site: Readonly<{ origin: string; files: ReadonlySet<string> }>) => readonly Fault[];
