import { goldenShare, goldenShareFromTail } from '#lib/mapping/placing/goldenShare.ts';
import { settleBrow } from '#lib/mapping/placing/settleBrow.ts';
import { tailBand } from '#lib/mapping/placing/tailBand.ts';
import { tailAgainstLine } from '#lib/mapping/placing/tailLine.ts';
import { worked } from '../worked.ts';

/**
 * Invented: the bell-ringer's two sides, not shown to differ; check values 40.73 and 30.52 from 14 and 57.25.
 */
const oneArchForBoth = worked({
  id: 'one-arch-for-both',
  inputs: { frontRight: 14.2, frontLeft: 13.8, tailRight: 57.5, tailLeft: 57.0 },
  run: ({ frontRight, frontLeft, tailRight, tailLeft }) => {
    const settled = settleBrow(
      { right: { frontMm: frontRight, tailMm: tailRight }, left: { frontMm: frontLeft, tailMm: tailLeft } },
      'mean',
    );
    if (!settled.ok)
      throw new Error('The worked example has no brow: its tail is not further out than its front.');
    const { frontMm, tailMm, lengthMm } = settled.brow;
    return {
      front: frontMm,
      tail: tailMm,
      length: lengthMm,
      share: goldenShare,
      part: goldenShare * lengthMm,
      fromTail: frontMm + goldenShareFromTail * lengthMm,
      rightAlone: frontRight + goldenShare * (tailRight - frontRight),
      leftAlone: frontLeft + goldenShare * (tailLeft - frontLeft),
      answer: frontMm + goldenShare * lengthMm,
    };
  },
  shown: { digits: 1, unit: 'mm' },
  facts: ['golden-share'],
});

/** The violinist, invented: the numbers of the face under "Front and tail placement". */
const violinistTail = worked({
  id: 'violinist-tail',
  inputs: {
    frontRight: 15.6,
    tailRight: 56,
    frontLeft: 16.4,
    tailLeft: 53.4,
    frontUp: 11.4,
    tipUp: 10.2,
    wingOut: 20.2,
    wingUp: -38,
    cornerOut: 47,
    cornerUp: 1.6,
  },
  run: ({
    frontRight,
    tailRight,
    frontLeft,
    tailLeft,
    frontUp,
    tipUp,
    wingOut,
    wingUp,
    cornerOut,
    cornerUp,
  }) => {
    const tail = { uMm: tailRight, vMm: tipUp };
    const against = tailAgainstLine(
      { wing: { uMm: wingOut, vMm: wingUp }, corner: { uMm: cornerOut, vMm: cornerUp } },
      tail,
    );
    if (!against.ok) throw new Error('The worked example has no tail line.');
    const front = { uMm: frontRight, vMm: frontUp };
    const rightLength = tailRight - frontRight;
    const leftLength = tailLeft - frontLeft;
    return {
      rightLength,
      leftLength,
      below: -tailBand({ frontLower: front, frontTop: front, tail }).overLowerMm,
      out: cornerOut - wingOut,
      up: cornerUp - wingUp,
      slope: (cornerOut - wingOut) / (cornerUp - wingUp),
      rise: tipUp - cornerUp,
      limit: against.limitMm,
      past: -against.insideLevelMm,
      answer: rightLength - leftLength,
    };
  },
  shown: { digits: 1, unit: 'mm' },
  facts: ['tail-inside-the-line', 'tail-tip-in-the-band', 'lengths-equal'],
});

/** Worked examples about placing the arch and the tail. */
export const placingWorked = {
  'one-arch-for-both': oneArchForBoth,
  'violinist-tail': violinistTail,
} as const;
