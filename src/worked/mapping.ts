import { growthFromMarginMm } from '#lib/mapping/plan/growth.ts';
import { coverMarginFactor } from '#lib/mapping/numbers/plan.ts';
import {
  budgetMm,
  differenceUncertaintyMm,
  markUncertaintyMm,
  rectangularMm,
  smallestRealDifferenceMm,
} from '#lib/mapping/uncertainty/budget.ts';
import { outlineOf } from '#lib/mapping/outline/outline.ts';
import { thicknessAtStation } from '#lib/mapping/outline/station.ts';
import { goldenShare, goldenShareFromTail } from '#lib/mapping/placing/goldenShare.ts';
import { lengthOfMm } from '#lib/mapping/under/stretch.ts';
import { underOutline } from '#lib/mapping/under/underOutline.ts';
import { settleBrow } from '#lib/mapping/placing/settleBrow.ts';
import { intervalAround } from '#lib/quantities/interval.ts';
import { chaseFromMm } from '#lib/mapping/numbers/again.ts';
import { nextStep } from '#lib/mapping/again/nextStep.ts';
import { shortOfOutlineMm } from '#lib/mapping/again/shortOfOutline.ts';
import { familyCoverageFactor } from '#lib/mapping/uncertainty/familyWise.ts';
import { compareHeights } from '#lib/mapping/compare/compareHeights.ts';
import { fakedHeightMm } from '#lib/mapping/level/fakedHeight.ts';
import { mappingValues } from '#lib/mapping/numbers/values.ts';
import { sizeFacts } from '#lib/mapping/facts/sizes.ts';
import { mmPerUnit, scaleDoubtMm } from '#lib/mapping/pose/irisScale.ts';
import { fitMidline } from '#lib/mapping/midline/midline.ts';
import { tailBand } from '#lib/mapping/placing/tailBand.ts';
import { tailAgainstLine } from '#lib/mapping/placing/tailLine.ts';
import { worked } from './worked.ts';

/** The library's midline of pairs read off one ruler, [right, left] in millimetres from its end. */
function middleMm(...pairs: readonly (readonly [number, number])[]): number {
  const fit = fitMidline(
    pairs.map(([right, left]) => ({ right: { xMm: right, yMm: 0 }, left: { xMm: left, yMm: 0 } })),
  );
  if (!fit.ok) throw new Error('The worked example has no midline: its marks lie on one point.');
  return fit.line.offsetMm;
}

/** Invented readings: three pairs that agree and a nose that leans. */
const midlineByPairMiddles = worked({
  id: 'midline-by-pair-middles',
  inputs: {
    innerRight: 41.4,
    innerLeft: 73.6,
    pupilRight: 26.3,
    pupilLeft: 88.9,
    outerRight: 12.1,
    outerLeft: 102.9,
    wingRight: 43.6,
    wingLeft: 81.0,
  },
  run: ({ innerRight, innerLeft, pupilRight, pupilLeft, outerRight, outerLeft, wingRight, wingLeft }) => {
    const answer = middleMm([innerRight, innerLeft], [pupilRight, pupilLeft], [outerRight, outerLeft]);
    const wingMiddle = middleMm([wingRight, wingLeft]);
    return {
      innerMiddle: middleMm([innerRight, innerLeft]),
      pupilMiddle: middleMm([pupilRight, pupilLeft]),
      outerMiddle: middleMm([outerRight, outerLeft]),
      wingMiddle,
      noseOff: wingMiddle - answer,
      answer,
    };
  },
  shown: { digits: 1, unit: 'mm' },
  facts: [],
});

/** Invented reading error and budget; the sums are the Guide's. */
const smallestRealDifference = worked({
  id: 'smallest-real-difference',
  inputs: {
    temMm: 0.3,
    readings: 1,
    comparisons: 10,
    pencilHalfMm: 0.25,
    caliperHalfMm: 0.05,
    threadHalfMm: 0.25,
    archDifference: 1.8,
  },
  run: ({ temMm, readings, comparisons, pencilHalfMm, caliperHalfMm, threadHalfMm }) => {
    const lines = [pencilHalfMm, caliperHalfMm, threadHalfMm].map((halfWidthMm) => ({ halfWidthMm }));
    const [pencil = 0, caliper = 0, thread = 0] = lines.map(rectangularMm);
    const tools = budgetMm(lines);
    const factor = familyCoverageFactor(comparisons);
    return {
      pencil,
      caliper,
      thread,
      tools,
      factor,
      answer: smallestRealDifferenceMm({ temMm, readings, budgetMm: tools }, factor),
    };
  },
  shown: { digits: 1, unit: 'mm' },
  facts: [],
});

/** The violinist, invented: her head leans in the picture and fakes most of what was read. */
const leaningHead = worked({
  id: 'leaning-head',
  inputs: {
    spanMm: 82,
    tiltDeg: 2,
    read: 3.1,
    temMm: 0.3,
    readings: 3,
    pencilHalfMm: 0.25,
    caliperHalfMm: 0.05,
    threadHalfMm: 0.25,
  },
  run: ({ spanMm, tiltDeg, read, temMm, readings, pencilHalfMm, caliperHalfMm, threadHalfMm }) => {
    const answer = fakedHeightMm(spanMm, tiltDeg);
    const tools = budgetMm(
      [pencilHalfMm, caliperHalfMm, threadHalfMm].map((halfWidthMm) => ({ halfWidthMm })),
    );
    return {
      sine: fakedHeightMm(1, tiltDeg),
      left: read - answer,
      real: smallestRealDifferenceMm({ temMm, readings, budgetMm: tools }, familyCoverageFactor(1)),
      answer,
    };
  },
  shown: { digits: 1, unit: 'mm' },
  facts: ['arches-apart-mm'],
});

/** The bell-ringer of Tern Quay: invented readings. Her sides differ by 0.7 mm. */
const bellRinger = worked({
  id: 'bell-ringer',
  inputs: {
    sidesMm: 0.7,
    temMm: 0.3,
    readings: 3,
    comparisons: 10,
    pencilHalfMm: 0.25,
    caliperHalfMm: 0.05,
    threadHalfMm: 0.25,
  },
  run: ({ temMm, readings, comparisons, pencilHalfMm, caliperHalfMm, threadHalfMm }) => {
    const tools = budgetMm(
      [pencilHalfMm, caliperHalfMm, threadHalfMm].map((halfWidthMm) => ({ halfWidthMm })),
    );
    const reading = { temMm, readings, budgetMm: tools };
    const factor = familyCoverageFactor(comparisons);
    return {
      tools,
      mean: temMm / Math.sqrt(readings),
      side: markUncertaintyMm(reading),
      both: differenceUncertaintyMm(reading),
      factor,
      answer: smallestRealDifferenceMm(reading, factor),
    };
  },
  shown: { digits: 1, unit: 'mm' },
  facts: [],
});

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

/** The baker, invented: apart when she talks, not shown to be apart at rest. */
const bakerTalking = worked({
  id: 'baker-talking',
  inputs: {
    talkRight: 19.6,
    talkLeft: 21.2,
    restRight: 18.2,
    restLeft: 18.6,
    temMm: 0.3,
    readings: 3,
    pencilHalfMm: 0.25,
    caliperHalfMm: 0.05,
    threadHalfMm: 0.25,
  },
  run: ({
    talkRight,
    talkLeft,
    restRight,
    restLeft,
    temMm,
    readings,
    pencilHalfMm,
    caliperHalfMm,
    threadHalfMm,
  }) => {
    const tools = budgetMm(
      [pencilHalfMm, caliperHalfMm, threadHalfMm].map((halfWidthMm) => ({ halfWidthMm })),
    );
    const how = { posture: 'sitting', skin: 'normal' } as const;
    const { first, second } = compareHeights(
      { taken: { pose: 'raised', ...how }, archMm: { right: talkRight, left: talkLeft } },
      { taken: { pose: 'rest', ...how }, archMm: { right: restRight, left: restLeft } },
      { temMm, readings, budgetMm: tools },
    );
    return {
      tools,
      factor: first.k,
      both: first.standardUncertainty,
      real: first.k * first.standardUncertainty,
      talking: first.value,
      answer: second.value,
    };
  },
  shown: { digits: 1, unit: 'mm' },
  facts: [],
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

/** Invented readings of one picture, in its own dots; the iris's width and spread are published. */
const scaleByIris = worked({
  id: 'scale-by-iris',
  inputs: {
    irisDots: 195,
    differenceDots: 25,
    lengthDots: 750,
    irisMm: mappingValues['iris-width-mm'],
    spreadMm: sizeFacts['iris-width-spread-mm'].value,
  },
  run: ({ irisDots, differenceDots, lengthDots, irisMm, spreadMm }) => {
    const dotMm = mmPerUnit(irisDots, { irisMm, spreadMm });
    const answer = differenceDots * dotMm;
    const lengthMm = lengthDots * dotMm;
    return {
      dotMm,
      lengthMm,
      differenceDoubt: scaleDoubtMm(answer, { irisMm, spreadMm }, 2),
      lengthDoubt: scaleDoubtMm(lengthMm, { irisMm, spreadMm }, 2),
      answer,
    };
  },
  shown: { digits: 1, unit: 'mm' },
  facts: ['iris-width-mm', 'iris-width-spread-mm'],
});

/** The baker of Tern Quay, invented: her right arch after the first pass. */
const bakerFirstPass = worked({
  id: 'baker-first-pass',
  inputs: {
    approvedMm: 33,
    pigmentMm: 31.5,
    lowerApprovedMm: 27,
    lowerMm: 27,
    temMm: 0.3,
    readings: 5,
    comparisons: 5,
    pencilHalfMm: 0.25,
    caliperHalfMm: 0.05,
    threadHalfMm: 0.25,
  },
  run: ({
    approvedMm,
    pigmentMm,
    lowerApprovedMm,
    lowerMm,
    temMm,
    readings,
    comparisons,
    pencilHalfMm,
    caliperHalfMm,
    threadHalfMm,
  }) => {
    const reading = {
      temMm,
      readings,
      budgetMm: budgetMm([pencilHalfMm, caliperHalfMm, threadHalfMm].map((halfWidthMm) => ({ halfWidthMm }))),
    };
    const factor = familyCoverageFactor(comparisons);
    const both = differenceUncertaintyMm(reading);
    const at = (vMm: number) => ({ uMm: 0, vMm });
    const short = shortOfOutlineMm('archTop', at(approvedMm), at(pigmentMm));
    const across = shortOfOutlineMm('archLower', at(lowerApprovedMm), at(lowerMm));
    const step = nextStep(
      { short: intervalAround(short, both, factor), across: intervalAround(across, both, factor) },
      'swollen',
      chaseFromMm,
    );
    if (step.do !== 'add-here') throw new Error('The worked example adds nothing.');
    return {
      both,
      factor,
      real: smallestRealDifferenceMm(reading, factor),
      thick: approvedMm - lowerMm,
      answer: step.addMm,
    };
  },
  shown: { digits: 1, unit: 'mm' },
  facts: ['swollen-chase-from-mm'],
});

/** Invented: the potter's tail. Bone edge −1 mm at the arch, +2 mm at the tail. */
const nothingUnderTheTail = worked({
  id: 'nothing-under-the-tail',
  inputs: { outline: 42, arch: 27, hairFrom: 1, hairTo: 30, boneArch: -1, boneTail: 2 },
  run: ({ outline, arch, hairFrom, hairTo, boneArch, boneTail }) => {
    const read = underOutline({
      bone: { lengthMm: outline, archMm: arch, atArchMm: boneArch, atTailMm: boneTail },
      hair: { fromMm: hairFrom, toMm: hairTo },
      thinFromMm: hairTo,
    });
    if (!read.ok) throw new Error('The worked example has no brow to read.');
    const { nothing, offBone } = read.under;
    return {
      span: outline - arch,
      rise: boneTail - boneArch,
      under: -boneArch,
      leaves: offBone[0]?.fromMm ?? outline,
      from: nothing[0]?.fromMm ?? outline,
      answer: lengthOfMm(nothing),
    };
  },
  shown: { digits: 1, unit: 'mm' },
  facts: ['shape-sits-on-something'],
});

/** The ferry pilot's first sketch, invented: its right tail falls more steeply than its left one. */
const pilotThickness = worked({
  id: 'pilot-thickness',
  inputs: {
    frontOut: 16,
    frontUp: 11,
    topOut: 16.6,
    topUp: 17.6,
    archOut: 41,
    archLowerOut: 40.2,
    tailOut: 56,
    share: 0.75,
    archRight: 24.4,
    archLowerRight: 17.9,
    tailRight: 11,
    archLeft: 21.4,
    archLowerLeft: 15.4,
    tailLeft: 13.2,
  },
  run: (given) => {
    const tenth = (mm: number) => Math.round(mm * 10) / 10;
    const read = (archUp: number, archLowerUp: number, tailUp: number) => {
      const at = (uMm: number, vMm: number) => ({ uMm, vMm });
      const outline = outlineOf({
        frontLower: at(given.frontOut, given.frontUp),
        frontTop: at(given.topOut, given.topUp),
        archTop: at(given.archOut, archUp),
        archLower: at(given.archLowerOut, archLowerUp),
        tail: at(given.tailOut, tailUp),
      });
      const thickness = thicknessAtStation(outline, 'frontLower', given.share);
      if (!thickness.ok) throw new Error('The worked example has no thickness.');
      const { lower, upper } = thickness;
      const [lowerOut, lowerUp] = [tenth(lower.uMm), tenth(lower.vMm)];
      const [upperOut, upperUp] = [tenth(upper.uMm), tenth(upper.vMm)];
      return {
        lowerOut,
        lowerUp,
        upperOut,
        upperUp,
        straightUp: tenth(thickness.straightUpMm),
        out: upperOut - lowerOut,
        up: upperUp - lowerUp,
      };
    };
    const right = read(given.archRight, given.archLowerRight, given.tailRight);
    const left = read(given.archLeft, given.archLowerLeft, given.tailLeft);
    return {
      rightOut: right.out,
      rightUp: right.up,
      rightStraightUp: right.straightUp,
      rightLowerOut: right.lowerOut,
      rightLowerUp: right.lowerUp,
      rightUpperOut: right.upperOut,
      rightUpperUp: right.upperUp,
      leftOut: left.out,
      leftUp: left.up,
      leftStraightUp: left.straightUp,
      leftLowerOut: left.lowerOut,
      leftLowerUp: left.lowerUp,
      leftUpperOut: left.upperOut,
      leftUpperUp: left.upperUp,
      seeming: right.straightUp - left.straightUp,
      left: Math.hypot(left.out, left.up),
      answer: Math.hypot(right.out, right.up),
    };
  },
  shown: { digits: 1, unit: 'mm' },
  facts: ['thickness-equal'],
});

/** The ferry pilot of Tern Quay, invented: old work above the top she allows. */
const ferryPilotOldShape = worked({
  id: 'ferry-pilot-old-shape',
  inputs: { topMm: 20.5, raiseMm: 1, oldTopMm: 23.3, uncertaintyMm: 0.3, oldThicknessMm: 6.5 },
  run: ({ topMm, raiseMm, oldTopMm, uncertaintyMm, oldThicknessMm }) => {
    const grows = growthFromMarginMm(coverMarginFactor, uncertaintyMm);
    return {
      allowed: topMm + raiseMm,
      factor: coverMarginFactor,
      grows,
      share: (100 * grows) / oldThicknessMm,
      chased: oldTopMm - topMm + grows / 2,
      answer: oldTopMm - (topMm + raiseMm),
    };
  },
  shown: { digits: 1, unit: 'mm' },
  facts: ['cover-margin-factor', 'old-brow-thickness-mm', 'lighten-what-does-not-fit'],
});

export const mappingWorked = {
  'ferry-pilot-old-shape': ferryPilotOldShape,
  'baker-talking': bakerTalking,
  'leaning-head': leaningHead,
  'midline-by-pair-middles': midlineByPairMiddles,
  'smallest-real-difference': smallestRealDifference,
  'violinist-tail': violinistTail,
  'pilot-thickness': pilotThickness,
  'bell-ringer': bellRinger,
  'one-arch-for-both': oneArchForBoth,
  'scale-by-iris': scaleByIris,
  'baker-first-pass': bakerFirstPass,
  'nothing-under-the-tail': nothingUnderTheTail,
} as const;
