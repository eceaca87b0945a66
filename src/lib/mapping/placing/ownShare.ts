import { settledBrow, type BrowEnds } from './settleBrow.ts';

export type OwnShare =
  | Readonly<{ ok: true; share: number }>
  | Readonly<{ ok: false; reason: 'no-length' | 'arch-outside-brow' }>;

/** The share of its own length at which a brow's arch already stands: what a client is used to seeing. */
export function ownShareOf(ends: BrowEnds, archMm: number): OwnShare {
  const settled = settledBrow(ends);
  if (!settled.ok) return settled;
  const share = (archMm - ends.frontMm) / settled.brow.lengthMm;
  return share >= 0 && share <= 1 ? { ok: true, share } : { ok: false, reason: 'arch-outside-brow' };
}
