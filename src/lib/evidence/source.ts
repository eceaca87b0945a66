import type { IsoDay } from '../quantities/isoDay.ts';

/** The chip's word; the pencil stroke before it says how strong the kind is. */
export type SourceKind = 'law' | 'standard' | 'label' | 'guidance' | 'study' | 'review' | 'data';

/**
 * How much was opened: all, a part, the abstract, or a copy on another site. `none` may be named, but no
 * value may rest on it.
 */
export type HowMuchRead = 'whole' | 'part' | 'abstract' | 'copy' | 'none';

/** One published source, cited by key. `read` says how much of it was opened, `readOn` when. */
export type Source = Readonly<{
  kind: SourceKind;
  authors: string;
  /** The chip's name, where first author and year do not make one. */
  short?: string;
  /** The country it speaks for: first aid is taught differently in each. */
  place?: string;
  /** Left out where the copy read does not say. */
  year?: number;
  title: string;
  where: string;
  doi?: string;
  address?: string;
  read: HowMuchRead;
  readOn: IsoDay;
}>;
