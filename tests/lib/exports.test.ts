import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { expect, test } from 'vitest';
import * as library from '#lib/index.ts';

const functions: ReadonlyMap<string, (...args: readonly unknown[]) => unknown> = new Map(
  Object.entries(library).flatMap(
    ([name, value]): readonly (readonly [string, (...args: readonly unknown[]) => unknown])[] =>
      typeof value === 'function' ? [[name, (...args) => Reflect.apply(value, undefined, args)]] : [],
  ),
);

const must = <T>(value: T): Extract<T, { ok: true }> => {
  if (typeof value === 'object' && value !== null && Reflect.get(value, 'ok') !== true)
    throw new Error(JSON.stringify(value));
  return value as Extract<T, { ok: true }>;
};

const point = { xMm: 3, yMm: 4 };
const { markSet } = library.practiceFace(3, 2);
const pairs = library.mirrorMarksOf(markSet);
const line = must(library.fitMidline(pairs)).line;
const frame = library.faceFrame(markSet, line, 'pupils');
const facePoint = { uMm: 16, vMm: 22 };
const brow = {
  frontLower: { uMm: 15, vMm: 17 },
  frontTop: { uMm: 14, vMm: 25 },
  archTop: { uMm: 47, vMm: 33 },
  archLower: { uMm: 46, vMm: 27 },
  tail: { uMm: 64, vMm: 20 },
};
const brows = { right: brow, left: brow };
const outline = must(library.outlineOf(brow));
const old = must(library.readOldShape(library.spreadShape(outline, 0.3)));
const each = <T>(part: T) => ({
  frontLower: part,
  frontTop: part,
  archTop: part,
  archLower: part,
  tail: part,
});
const limits = {
  raiseMostMm: each(1),
  lowerMostMm: each(1),
  thicknessMostMm: 9,
  growthMostShare: 0.3,
  isTailWithinFront: false,
};
const task = {
  brows,
  free: 'both',
  old: { right: old },
  limits: { right: limits, left: limits },
  marginMm: 0.4,
  weights: { right: 1, left: 2 },
};
const reading = { temMm: 0.3, readings: 2, budgetMm: 0.2 };
const choices = {
  levelReference: 'midline',
  temMm: 0.3,
  readings: 2,
  budget: [{ halfWidthMm: 0.25 }],
  comparisons: 10,
  notice: { fewSeeMm: 1, mostSeeMm: 3 },
};
const taken = { pose: 'rest', posture: 'sitting', skin: 'normal' };
const again = { reading, comparisons: 10, chaseFromMm: 1 };
const sideMarks = {
  ...brow,
  noseWing: { uMm: 17, vMm: -38 },
  innerCorner: { uMm: 16, vMm: -1 },
  outerCorner: { uMm: 46, vMm: 2 },
};
const { archLower: _, ...placed } = sideMarks;
const anchors = { noseWing: sideMarks.noseWing, innerCorner: sideMarks.innerCorner };
const tailMarks = { noseWing: sideMarks.noseWing, outerCorner: sideMarks.outerCorner };
const onFace = { right: sideMarks, left: sideMarks };
const placing = {
  anchor: 'inner-corner',
  ownMm: 15,
  edge: 'frontTop',
  nostrilShare: 0.6,
  readingMm: 0.3,
  k: 2.8,
};
const archInputs = {
  brow: { frontMm: 15, tailMm: 64 },
  eye: { innerCornerMm: 16, pupilMm: 31, outerCornerMm: 46, irisWidthMm: 11.7 },
  ownShare: 0.65,
};
const scale = { irisMm: 11.7, spreadMm: 0.4 };

const lab = { l: 61, a: 10, b: 18 };
const skin = must(library.skinOptics(lab));
const bands = skin.reflectance;
const surface = { outside: 0.028, inside: 0.53 };
const patch = { mean: { r: 0.6, g: 0.5, b: 0.4 }, spread: { r: 0.01, g: 0.01, b: 0.01 }, clippedShare: 0 };
const grey = { ...patch, mean: { r: 0.5, g: 0.5, b: 0.5 } };
const dots = Array.from({ length: 16 }, (_, i) => [120, 100, 90, 255][i % 4] ?? 0);
const shares = library.bottleOf('brown', { '77492': 5, '77491': 2, '77499': 3 }).shares;
const setting = { depthMm: 0.1, coverage: 0.6, veilShare: 0.35 };
const plan = { shares, dose: 0.3, setting, ageing: library.startAgeing, doubts: library.startDoubts };
const left = library.leftOf(library.startAgeing, 1);
const layer = { k: 2, s: 1 };
const strokes = { count: 40, lengthMm: 8, widthMm: 0.3, areaMm2: 280 };
const dotWork = { perMm2: 1.5, diameterMm: 0.3 };
const month = { year: 2027, month: 5 };
const twoSwatches = {
  masstone: { l: 35, a: 12, b: 14 },
  tint: { l: 78, a: 6, b: 9 },
  drops: 1,
  whiteDrops: 10,
  finish: 'matt',
};
const cells = library.healingMap(
  {
    skin,
    shares,
    setting,
    ageing: library.startAgeing,
    readings: [{ years: 0, seen: { l: 45, a: 9, b: 12 } }],
    error: 2,
  },
  { depthsMm: [0.1, 0.2], doses: [0.2], losses: [1] },
);
const search = {
  skin,
  setting,
  bottles: library.bottles.slice(4, 7),
  ageing: library.startAgeing,
  doses: [0.2, 0.4],
  target: { l: 50, a: 9, b: 13 },
  times: [0, 2],
  mostBottles: 2,
  mostDrops: 3,
  mostWhiteShare: 1,
  mostDarker: 30,
  mostLeanDeg: 90,
};
const tautTo = { across: 0.001, down: 0, off: 0.0001 };

/** One good call of every exported function. A new export needs a row here, and a domain in `src/lib/entry`. */
const calls: Readonly<Record<string, readonly unknown[]>> = {
  signedDistanceMm: [point, line],
  reflectInLine: [point, line],
  fitSimilarity: [
    [point, { xMm: 9, yMm: 1 }],
    [point, { xMm: 8, yMm: 2 }],
  ],
  intervalAround: [1, 0.2, 2],
  includesZero: [{ value: 1, lo: 0.6, hi: 1.4, standardUncertainty: 0.2, k: 2 }],
  drawFrom: [7],
  seedFrom: ['a', 7],

  readFace: [markSet, choices],
  compareSets: [markSet, markSet, choices],
  mirrorMarksOf: [markSet],
  fitMidline: [pairs, pairs.map(() => 1)],
  fitRobustMidline: [pairs, 0.3],
  rollDeg: [line],
  faceFrame: [markSet, line, 'eye-corners'],
  toFace: [point, 'right', frame],
  toPicture: [facePoint, 'left', frame],
  compareSides: [markSet, frame],
  decomposeBrows: [
    {
      ...each({ right: facePoint, left: { uMm: 17, vMm: 22 } }),
      tail: { right: brow.tail, left: brow.tail },
    },
  ],
  technicalError: [[{ firstMm: 3, secondMm: 3.4 }]],
  repeatabilityMm: [0.3],
  budgetMm: [[{ halfWidthMm: 0.25 }]],
  markUncertaintyMm: [reading],
  smallestRealDifferenceMm: [reading, 1.96],
  readingsNeeded: [1.5, { temMm: 0.3, budgetMm: 0.2 }, 1.96],
  comparePasses: [
    [
      { firstMm: 3, secondMm: 3.4 },
      { firstMm: 5, secondMm: 5.1 },
    ],
  ],
  meanOfReadings: [[3, 3.4]],
  spreadInterval: [0.3, 20],
  studentFactor: [4],
  falseAlarmRate: [10, 0.05],
  familyCoverageFactor: [10, 0.05],
  shareAtLeast: [2, 1.3],
  differenceReachedByMm: [0.5, 1.3],
  browAfterFirstPass: [brow, brow, { approved: taken, now: taken }, again],
  afterFirstPass: [brows, brows, { approved: taken, now: taken }, again],
  fakedHeightMm: [82, 2],
  tiltBehind: [2, 82],
  compareHeights: [
    { taken, archMm: { right: 30, left: 31 } },
    { taken, archMm: { right: 30, left: 31 } },
    reading,
  ],

  outlineOf: [brow],
  edgeHeightMm: [outline.upper, 30],
  edgeShares: [outline.upper, 30],
  outlineCurves: [outline],
  outlinePolygon: [outline, 8],
  outlineAreaMm2: [outline],
  outlinePerimeterMm: [outline],
  thicknessAt: [{ upper: outline.upper, lower: outline.lower }, 30],
  falseDifferences: [{ turnDeg: 4, nodDeg: 2, tiltDeg: 1, cameraMm: 500 }],
  mayRead: [
    'length',
    { atRest: true, levelKnown: true, nodChecked: true, mirrorKnown: true, cameraCm: 200, hasRuler: true },
  ],
  turnSign: [{ frontMm: 2, tailMm: -2, leastMm: 1 }],
  turnFakesMm: [12, 4],
  turnLikeNoseOff: [1],
  mmPerUnit: [180, scale],
  scaleDoubtMm: [50, scale, 2],
  placingMarksOf: [markSet, frame],
  anchorDistances: [{ right: anchors, left: anchors }, 0.6],
  sharedTailLine: [{ right: tailMarks, left: tailMarks }],
  tailAgainstLine: [library.sharedTailLine(onFace), brow.tail],
  placeFrontAndTail: [{ right: placed, left: placed }, placing],
  tradeChecks: [onFace, { ...placing, stations: [0.3, 0.6] }],
  tradeCheckCount: [3],
  placeArch: [archInputs],
  archSpread: [must(library.placeArch(archInputs)).places, ['pupil', 'two-thirds']],
  ownShareOf: [archInputs.brow, 47],
  underOutline: [
    {
      bone: { archMm: 30, lengthMm: 50, atArchMm: 1, atTailMm: -1 },
      hair: { fromMm: 3, toMm: 40 },
      thinFromMm: 30,
    },
  ],

  readOldShape: [old.corners],
  spreadShape: [outline, 0.3],
  outsideOf: [old, outline],
  growthSince: [old, outline],
  growthFromMarginMm: [1.645, 0.3],
  planCorrections: [task, 'quiet', each(0.4)],
  practiceFace: [
    3,
    4,
    { kind: 'turned', pose: { turnDeg: 4, nodDeg: 0, tiltDeg: 0, cameraMm: 1500 }, mayJudgeWidths: false },
  ],
  readAgain: [markSet, 3, 0.3],

  ciede2000: [lab, { l: 50, a: 9, b: 12 }],
  spectrumToXyz: [bands, 'A'],
  spectrumToLab: [bands, 'D50'],
  labToXyz: [lab, { x: 95, y: 100, z: 108 }],
  xyzToLab: [
    { x: 30, y: 30, z: 20 },
    { x: 95, y: 100, z: 108 },
  ],
  labToLch: [lab],
  lchToLab: [{ l: 61, c: 20, hDeg: 60 }],
  labToSrgb: [lab],
  srgbToHex: [{ r: 0.5, g: 0.4, b: 0.3, isClipped: false }],
  srgbToLab: [{ r: 0.5, g: 0.4, b: 0.3 }],
  ita: [{ l: 61, b: 18 }],
  readSkin: [[lab, lab], 'touched'],
  patchOf: [dots],
  photoReading: [{ ...patch, mean: { r: 0.45, g: 0.4, b: 0.35 } }, grey, 0.18],
  photoSkin: [{ ...patch, mean: { r: 0.45, g: 0.4, b: 0.35 } }, grey, 0.18],
  tintOf: [patch],
  lightSlope: [dots, 2],
  lightnessTooHigh: [60, tautTo, { across: 300, down: -20 }],
  skinPlausibility: [lab],
  absorptionRatio: [0.4],
  thickReflectance: [2],
  layerOver: [layer, 0.5],
  layerTransmittance: [layer],
  underLayer: [{ k: 0.1, s: 0.1 }, 0.5],
  seenThroughSurface: [0.4, surface, 'included'],
  withinSurface: [0.4, surface, 'excluded'],
  smoothSpectrum: [lab],

  skinSpectrum: [lab],
  skinOptics: [lab],
  overOldPigment: [lab, { l: 45, a: 2, b: 3 }],
  partedAt: [skin, 0.1, 0.35],
  bottleOf: ['mine', { '77492': 3, '77499': 1 }],
  mixLayer: [shares, 0.3, left],
  masstone: [shares, 'D65'],
  healedColour: [skin, library.mixLayer(shares, 0.3), setting, 'A'],
  leftOf: [library.startAgeing, 2],
  plainPrediction: [skin, plan, 1, 'A'],
  simulatedHealings: [skin, plan, [0, 1], 3, 1, 'A'],
  outcomesAround: [[lab, lab], lab, 3],
  mixOutlook: [skin, plan, [0, 1], 4, 1, 'A'],
  asPutIn: [skin, shares, 0.3, setting, 'A'],
  drift: [skin, plan, [0, 1], 4, 1, 'A'],
  whatMatters: [skin, { shares, dose: 0.3, setting, left }, 'A'],
  underLamps: [skin, plan, [0, 1], 'A'],
  bottleMoves: [skin, lab, library.bottles.slice(0, 2), 0.1, setting, left],
  readyBottle: [{ slot: 'own1', content: { from: 'shares', parts: { '77492': 3 } } }],
  calibrateSwatches: [twoSwatches],
  calibrateSpectra: [
    bands.map(() => 0.1),
    bands.map(() => 0.5),
    bands.map(() => ({ k: 0.02, s: 1.2 })),
    1,
    10,
  ],
  swatchTrust: [lab],
  shareApart: [strokes],
  shareAtRandom: [strokes],
  shareOfDots: [dotWork],
  strokesForShare: [0.3, { lengthMm: 8, widthMm: 0.3, areaMm2: 280 }],
  strokesWithin: [strokes, { count: 4, lengthMm: 1, widthMm: 0.1, areaMm2: 20 }, library.shareApart],
  dotsWithin: [dotWork, { perMm2: 0.2, diameterMm: 0.05 }],
  widened: [0.3, 0.2, 0.35, true],
  dosesBetween: [0.1, 0.6],
  fittingSet: [cells],
  labelFaultsOf: [{ saysUse: true, hasLot: true, listsIngredients: true, last: month }, month],
  healingMap: [
    {
      skin,
      shares,
      setting: { coverage: 0.6, veilShare: 0.35 },
      ageing: library.startAgeing,
      readings: [{ years: 0, seen: { l: 45, a: 9, b: 12 } }],
      error: 2,
    },
    { depthsMm: [0.1], doses: [0.2], losses: [1] },
  ],

  findRecipe: [search, () => undefined, { near: 0.5, farEnough: 1, mostCounted: 100 }],
  isOutOfReach: [search, 3],
  sharesOf: [[1, 2], library.bottles.slice(0, 2)],
};

/** Where a number may lie below 0: coordinates, differences, angles and the two colour axes. Everything else is a size, a count, a share or a time. */
const signed = new Set([
  'xMm',
  'yMm',
  'uMm',
  'vMm',
  'x',
  'y',
  'offsetMm',
  'pupilLevelMm',
  'value',
  'lo',
  'hi',
  'firstMm',
  'secondMm',
  'frontMm',
  'tailMm',
  'innerCornerMm',
  'pupilMm',
  'outerCornerMm',
  'archMm',
  'atArchMm',
  'atTailMm',
  'fromMm',
  'toMm',
  'thinFromMm',
  'turnDeg',
  'nodDeg',
  'tiltDeg',
  'hDeg',
  'a',
  'b',
  'across',
  'down',
  'growthMostShare',
]);
/** Bare arguments, elements and records that may. */
const signedAt: readonly RegExp[] = [
  /^intervalAround\[0\]$/,
  /^seedFrom/,
  /^meanOfReadings/,
  /^shareAtLeast\[0\]$/,
  /^fakedHeightMm\[1\]$/,
  /^tiltBehind\[0\]$/,
  /^compareHeights.*archMm/,
  /^edge(?:HeightMm|Shares)\[1\]$/,
  /^thicknessAt\[1\]$/,
  /^turnFakesMm/,
  /^turnLikeNoseOff/,
  /^scaleDoubtMm\[0\]$/,
  /^archSpread\[0\]/,
  /^ownShareOf\[1\]$/,
];
const axes = /^(?:labToXyz\[1\]|xyzToLab|srgbTo|photo|tintOf)/;
/** Where 60 stands for a share of 0.6. */
const shareLeaf =
  /(?:coverage|veilShare|nostrilShare|ownShare|clippedShare|mostWhiteShare|keptAtSixWeeks|lostPerYear|veilLo|veilHi|shares\.\d+|reflectance\[\d+\]|stations\[\d+\]|\.mean\.\w)$/;

type Leaf = Readonly<{ at: string; value: unknown; set: (value: unknown) => readonly unknown[] }>;

/** Every number, word and object in an argument, with the arguments in which it is replaced. Of long lists the first and the last. */
function leavesOf(args: readonly unknown[], at: string): readonly Leaf[] {
  const inside = (
    value: unknown,
    where: string,
    put: (value: unknown) => readonly unknown[],
  ): readonly Leaf[] => {
    if (typeof value === 'number' || typeof value === 'string') return [{ at: where, value, set: put }];
    if (typeof value !== 'object' || value === null) return [];
    if (Array.isArray(value)) {
      const looked = value.length > 3 ? [0, value.length - 1] : [...value.keys()];
      return looked.flatMap((i) =>
        inside(value[i], `${where}[${i}]`, (next) =>
          put(value.map((one: unknown, k) => (k === i ? next : one))),
        ),
      );
    }
    return [
      { at: where, value, set: put },
      ...Object.entries(value).flatMap(([key, part]) =>
        inside(part, `${where}.${key}`, (next) => put({ ...value, [key]: next })),
      ),
    ];
  };
  return args.flatMap((arg, i) =>
    inside(arg, `${at}[${i}]`, (next) => args.map((one, k) => (k === i ? next : one))),
  );
}

function holdsNaN(value: unknown): boolean {
  if (typeof value === 'number') return Number.isNaN(value);
  return typeof value === 'object' && value !== null && Object.values(value).some(holdsNaN);
}

const isRefusable = (result: unknown): boolean =>
  typeof result === 'object' && result !== null && 'ok' in result;

/** Undefined where the call was refused as the entry says; else what it did. */
function notRefused(name: string, args: readonly unknown[], hasReason: boolean): string | undefined {
  const inside = functions.get(name);
  let result: unknown;
  try {
    result = inside?.(...args);
  } catch (error) {
    if (hasReason) return `threw ${String(error)}`;
    return error instanceof RangeError &&
      error.message.startsWith(`${name}: `) &&
      error.message.includes(' must ')
      ? undefined
      : `threw ${String(error)}`;
  }
  if (
    hasReason &&
    isRefusable(result) &&
    Reflect.get(Object(result), 'ok') === false &&
    Reflect.get(Object(result), 'reason') === 'argument-not-accepted'
  )
    return undefined;
  return `answered ${JSON.stringify(result)?.slice(0, 80)}`;
}

test('[hand] every exported function has a call here, and every call its function', () => {
  expect(Object.keys(calls).sort()).toEqual([...functions.keys()].sort());
});

test('[hand] a good call of every function is accepted and answers no NaN', () => {
  const wrong = Object.entries(calls).flatMap(([name, args]) => {
    const result = functions.get(name)?.(...args);
    if (isRefusable(result) && Reflect.get(Object(result), 'ok') !== true)
      return [`${name}: ${JSON.stringify(result)}`];
    return holdsNaN(result) ? [`${name}: NaN`] : [];
  });
  expect(wrong).toEqual([]);
});

test('[property] no function takes a number that is none, too large, negative where that means nothing, or a share given in hundredths', () => {
  const wrong: string[] = [];
  for (const [name, args] of Object.entries(calls)) {
    const hasReason = isRefusable(functions.get(name)?.(...args));
    for (const { at, value, set } of leavesOf(args, name)) {
      if (typeof value !== 'number') continue;
      const key = /\.(\w+)$/.exec(at)?.[1] ?? '';
      const maySink = (signed.has(key) && !axes.test(at)) || signedAt.some((place) => place.test(at));
      const bad = [
        NaN,
        Infinity,
        -Infinity,
        1e300,
        -1e300,
        ...(maySink ? [] : [-1]),
        ...(shareLeaf.test(at) ? [60] : []),
      ];
      for (const one of bad) {
        const found = notRefused(name, set(one), hasReason);
        if (found !== undefined) wrong.push(`${at} = ${one}: ${found}`);
      }
    }
  }
  expect(wrong).toEqual([]);
});

test('[property] no function takes a word that is not in its list, or an object without its parts', () => {
  const wrong: string[] = [];
  for (const [name, args] of Object.entries(calls)) {
    const hasReason = isRefusable(functions.get(name)?.(...args));
    for (const { at, value, set } of leavesOf(args, name)) {
      if (
        typeof value === 'number' ||
        /\.id$|^seedFrom|^bottleOf\[0\]|mixLayer\[2\]|\.old$|findRecipe\[2\]$/.test(at)
      )
        continue;
      const found = notRefused(name, set(typeof value === 'string' ? 'no-such-word' : {}), hasReason);
      if (found !== undefined) wrong.push(`${at}: ${found}`);
    }
  }
  expect(wrong).toEqual([]);
});

test('[hand] what would be silently wrong is refused: too many doses, no bottle, no time, no drop, far too large a search, too many marks', () => {
  const refused = (changed: object) =>
    expect(library.findRecipe({ ...search, ...changed })).toMatchObject({
      ok: false,
      reason: 'argument-not-accepted',
    });
  refused({ doses: Array.from({ length: 257 }, (_, i) => (i + 1) / 300) });
  refused({ mostBottles: 0 });
  refused({ times: [] });
  refused({ doses: [] });
  refused({ bottles: [] });
  refused({ mostDrops: 2.5 });
  refused({ bottles: library.bottles, mostBottles: 12, mostDrops: 30 });
  expect(library.findRecipe({ ...search, doses: [-1] })).toEqual({
    ok: false,
    reason: 'argument-not-accepted',
    at: 'task.doses[0]',
    must: 'be a number above 0, up to 10',
  });
  const many = (count: number) =>
    Array.from({ length: count }, (_, i) => ({
      right: { xMm: -10 - i, yMm: 3 * i },
      left: { xMm: 10 + i, yMm: 3 * i },
    }));
  expect(library.fitRobustMidline(many(9)).ok).toBe(true);
  expect(library.fitRobustMidline(many(17))).toMatchObject({ ok: false, at: 'marks' });
  expect(() => library.mixLayer({ ...shares, '77491': 0.9 }, 0.3)).toThrow(
    'mixLayer: shares must be shares that add to 1 (bottleOf makes them from parts).',
  );
  expect(() => library.toFace(point, 'right', { ...frame, level: { x: 1, y: 1 } })).toThrow(
    'toFace: frame.level must be a direction of length 1.',
  );
});

test('[property] 256 doses find what each of them finds alone', () => {
  const doses = Array.from({ length: 256 }, (_, i) => (i + 1) / 300);
  const small = { ...search, bottles: library.bottles.slice(4, 6), mostDrops: 2, times: [0] };
  const all = must(library.findRecipe({ ...small, doses }));
  const scores = doses.map((dose) => must(library.findRecipe({ ...small, doses: [dose] })).best.score);
  const lowest = Math.min(...scores);
  expect(all.best.score).toBeCloseTo(lowest, 9);
  expect(all.best.dose).toBe(doses[scores.findIndex((score) => score === lowest)]);
});

/** The names of types that a node is written with, here or in what they stand for, each with the way to it. */
function namesIn(checker: ts.TypeChecker, node: ts.Node, way: string, found: Map<ts.Symbol, string>): void {
  const symbolOf = (name: ts.Node) => {
    const symbol = checker.getSymbolAtLocation(name);
    return symbol && symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
  };
  const visit = (part: ts.Node): void => {
    if (ts.isBlock(part) || ts.isTypeParameterDeclaration(part)) return;
    const symbol = ts.isTypeReferenceNode(part)
      ? symbolOf(part.typeName)
      : ts.isTypeQueryNode(part)
        ? symbolOf(part.exprName)
        : undefined;
    for (const declaration of symbol?.declarations ?? []) {
      if (
        !declaration.getSourceFile().fileName.includes('/src/lib/') ||
        ts.isTypeParameterDeclaration(declaration)
      )
        continue;
      const step = `${way} ${symbol?.name}`;
      if (ts.isFunctionDeclaration(declaration)) namesIn(checker, declaration, step, found);
      else if (ts.isTypeAliasDeclaration(declaration) && symbol && !found.has(symbol)) {
        found.set(symbol, way);
        namesIn(checker, declaration, step, found);
      }
    }
    ts.forEachChild(part, visit);
  };
  ts.forEachChild(node, visit);
}

test('[library] every named type that an exported function takes, answers or holds is exported, by the compiler’s reading', () => {
  const entry = fileURLToPath(new URL('../../src/lib/index.ts', import.meta.url));
  const program = ts.createProgram([entry], {
    strict: true,
    noLib: true,
    target: ts.ScriptTarget.ESNext,
    module: ts.ModuleKind.NodeNext,
    allowImportingTsExtensions: true,
    noEmit: true,
    types: [],
  });
  const checker = program.getTypeChecker();
  const source = program.getSourceFile(entry);
  const module = source && checker.getSymbolAtLocation(source);
  if (!module) throw new Error('the entry is a module');
  const exported = checker
    .getExportsOfModule(module)
    .map((symbol) => (symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol));
  const found = new Map<ts.Symbol, string>();
  for (const symbol of exported)
    for (const declaration of symbol.declarations ?? []) namesIn(checker, declaration, symbol.name, found);
  expect(found.size).toBeGreaterThan(100);
  expect(
    [...found]
      .filter(([symbol]) => !exported.includes(symbol))
      .map(([symbol, way]) => `${symbol.name}, by way of ${way}`),
  ).toEqual([]);
});
