import * as v from 'valibot';
import { finishes } from '#lib/colour/own/calibrateSwatches.ts';
import { readyBottle, type OwnBottle } from '#lib/colour/own/ownBottle.ts';
import { ownSlots } from '#lib/colour/own/ownSlots.ts';
import { pigmentIds } from '#lib/colour/pigment/pigments.ts';
import { libraryVersion } from '#lib/version.ts';
import { bottleName, longestBottleName } from './bottleName.ts';
import { openOurs, writeOurs } from './openOurs.ts';
import { labLimits, mostParts, mostTintDrops } from './ownLimits.ts';

/** The form of the files of bottles that this version writes. */
const bottleFileSchema = 1;

const within = (lo: number, hi: number) => v.pipe(v.number(), v.finite(), v.minValue(lo), v.maxValue(hi));
const lab = v.strictObject({
  l: within(labLimits.l.lo, labLimits.l.hi),
  a: within(labLimits.a.lo, labLimits.a.hi),
  b: within(labLimits.b.lo, labLimits.b.hi),
});
const finish = v.picklist(finishes);
const drops = within(1, mostTintDrops);
const part = v.optional(within(0, mostParts), 0);
const parts = v.strictObject({
  '77891': part,
  '77492': part,
  '77491': part,
  '77499': part,
  '77266': part,
} satisfies Readonly<Record<(typeof pigmentIds)[number], unknown>>);

const bottle = v.strictObject({
  slot: v.picklist(ownSlots),
  name: v.pipe(
    v.string(),
    v.maxLength(4 * longestBottleName),
    v.check((name) => bottleName(name) === name),
  ),
  content: v.variant('from', [
    v.strictObject({ from: v.literal('shares'), parts }),
    v.strictObject({ from: v.literal('swatch'), lab, finish }),
    v.strictObject({
      from: v.literal('two-swatches'),
      masstone: lab,
      tint: lab,
      drops,
      whiteDrops: drops,
      finish,
    }),
  ]),
});
const frame = v.strictObject({
  schema: v.literal(bottleFileSchema),
  holds: v.literal('bottles'),
  library: v.pipe(v.string(), v.maxLength(40)),
  bottles: v.pipe(v.array(v.unknown()), v.maxLength(ownSlots.length)),
});

export type ReadBottleFile =
  | Readonly<{ ok: true; bottles: readonly OwnBottle[] }>
  | Readonly<{ ok: false; reason: 'too-large' | 'not-a-file-of-ours' | 'damaged' }>
  | Readonly<{ ok: false; reason: 'newer-schema'; schema: number }>
  /** `place` counts from 1. `part`: the key that is wrong, or what the colour model refuses. */
  | Readonly<{ ok: false; reason: 'bottle'; place: number; part: string }>;

/** The bottles of one's own as a file. */
export function writeBottleFile(bottles: readonly OwnBottle[]): string {
  return writeOurs({ schema: bottleFileSchema, holds: 'bottles', library: libraryVersion, bottles });
}

/** Reads a file of bottles: all of it, or the first thing that is wrong. Never throws. */
export function readBottleFile(content: string): ReadBottleFile {
  const opened = openOurs(content, 'bottles', bottleFileSchema);
  if (!opened.ok) return opened;
  const outer = v.safeParse(frame, opened.value);
  if (!outer.success) return { ok: false, reason: 'damaged' };
  const read: OwnBottle[] = [];
  for (const [i, one] of outer.output.bottles.entries()) {
    const place = i + 1;
    const inner = v.safeParse(bottle, one);
    if (!inner.success)
      return {
        ok: false,
        reason: 'bottle',
        place,
        part: v.getDotPath(inner.issues[0])?.slice(0, 60) ?? 'bottle',
      };
    if (read.some(({ slot }) => slot === inner.output.slot))
      return { ok: false, reason: 'bottle', place, part: 'slot' };
    const ready = readyBottle(inner.output);
    if (!ready.ok) return { ok: false, reason: 'bottle', place, part: ready.at };
    read.push(inner.output);
  }
  return { ok: true, bottles: read };
}
