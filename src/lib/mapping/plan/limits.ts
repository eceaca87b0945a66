import type { Brow } from '../marks/brow.ts';
import type { BrowRecord } from '../marks/browRecord.ts';
import { browMarks, type BrowMark, type Side } from '../marks/markSet.ts';
import { areaRow, heightRow, type EdgeSpans } from './edgeSpans.ts';
import type { Holder, Row } from './row.ts';

/** What the client and the artist approved for one side. Everything else gives way to it. */
export type ApprovedLimits = Readonly<{
  /** Each mark may be raised and lowered by so much, mm; nought or more. */
  raiseMostMm: BrowRecord<number>;
  lowerMostMm: BrowRecord<number>;
  /**
   * Thickness straight up, at the front, at the arch and half way between, mm. It is at least the thickness
   * across the brow.
   */
  thicknessMostMm?: number;
  /**
   * How much larger than the old work the outline may be: 0.1 is a tenth. Speaks only where there is old
   * work.
   */
  growthMostShare?: number;
  /** The tail tip stays no lower than the lower front mark and no higher than the upper one. */
  isTailWithinFront?: boolean;
}>;

/** The approved limits of one side as rows on its five heights. */
export function limitRows(
  brow: Brow,
  spans: EdgeSpans,
  side: Side,
  limits: ApprovedLimits,
  oldAreaMm2: number | undefined,
): readonly Row[] {
  const rows: Row[] = browMarks.flatMap((mark) => {
    const [up, down] = [limits.raiseMostMm[mark], limits.lowerMostMm[mark]];
    const room = up + down > pinnedMm ? 0 : pinnedMm;
    return [
      {
        coefficients: unit(mark, -1),
        atLeast: -brow[mark].vMm - up - room,
        holder: { kind: 'raise', side, mark },
      },
      {
        coefficients: unit(mark, 1),
        atLeast: brow[mark].vMm - down - room,
        holder: { kind: 'lower', side, mark },
      },
    ];
  });
  const { thicknessMostMm, growthMostShare, isTailWithinFront } = limits;
  if (thicknessMostMm !== undefined) {
    for (const uMm of thicknessPlacesMm(brow)) {
      const [upper, lower] = [heightRow(spans.upper, uMm), heightRow(spans.lower, uMm)];
      if (upper && lower)
        rows.push(
          atMost(
            upper.map((share, i) => share - (lower[i] ?? 0)),
            thicknessMostMm,
            { kind: 'thickness', side },
          ),
        );
    }
  }
  if (growthMostShare !== undefined && oldAreaMm2 !== undefined) {
    rows.push(atMost(areaRow(spans), oldAreaMm2 * (1 + growthMostShare), { kind: 'growth', side }));
  }
  if (isTailWithinFront) {
    const holder = { kind: 'tail', side } as const;
    rows.push({
      coefficients: browMarks.map((mark) => (mark === 'tail' ? 1 : mark === 'frontLower' ? -1 : 0)),
      atLeast: 0,
      holder,
    });
    rows.push({
      coefficients: browMarks.map((mark) => (mark === 'tail' ? -1 : mark === 'frontTop' ? 1 : 0)),
      atLeast: 0,
      holder,
    });
  }
  return rows;
}

/**
 * A mark that may not move at all gets this much room, mm: two rows through one point are one too many for
 * the programme.
 */
const pinnedMm = 1e-7;

/**
 * Where the thickness limit is held: where both edges stand at the front, half way to the arch, at both arch
 * marks.
 */
function thicknessPlacesMm({ frontLower, frontTop, archTop, archLower }: Brow): readonly number[] {
  const front = Math.max(frontLower.uMm, frontTop.uMm);
  const arch = Math.min(archTop.uMm, archLower.uMm);
  return [front, (front + arch) / 2, archLower.uMm, archTop.uMm];
}

function unit(mark: BrowMark, value: 1 | -1): readonly number[] {
  return browMarks.map((other) => (other === mark ? value : 0));
}

function atMost(coefficients: readonly number[], most: number, holder: Holder): Row {
  return { coefficients: coefficients.map((share) => -share), atLeast: -most, holder };
}
