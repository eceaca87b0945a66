import type { BuiltPage } from '../builtPages.ts';

/** Something in the built pages that must not ship: where, and what to do about it. */
export type Fault = Readonly<{ file: string; line: number; says: string }>;

export type BuiltSite = Readonly<{ origin: string; files: ReadonlySet<string> }>;

/**
 * A gate sees each page once and names its faults. What only all pages together can show, it says at the end.
 * It keeps no page.
 */
export type Gate = Readonly<{ read: (page: BuiltPage) => readonly Fault[]; end?: () => readonly Fault[] }>;
export type OpenGate = (site: BuiltSite) => Gate;
