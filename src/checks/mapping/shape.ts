import { angleDeg } from '#lib/geometry/direction.ts';
import { eigen2 } from '#lib/geometry/eigen2.ts';
import type { PointMm } from '#lib/geometry/point.ts';
import { fitSimilarity } from '#lib/geometry/similarity.ts';
import { rolledPoint } from '#lib/face/roll.ts';
import { mappingFacts } from '#lib/mapping/facts.ts';
import { fitMidline } from '#lib/mapping/midline/midline.ts';
import { tukeyConstant } from '#lib/mapping/midline/robustMidline.ts';
import type { Check } from '../check.ts';
import { biweightLocation } from './biweightLocation.ts';
import { setosaLengths, setosaWidths } from './iris.ts';

const at = (xMm: number, yMm: number): PointMm => ({ xMm, yMm });

/** Pearson's ten points: single marks only, so the midline is his line of closest fit. */
const pearson = [
  at(0, 5.9),
  at(0.9, 5.4),
  at(1.8, 4.4),
  at(2.6, 4.6),
  at(3.3, 3.5),
  at(4.4, 3.7),
  at(5.2, 2.8),
  at(6.1, 2.8),
  at(6.5, 2.4),
  at(7.4, 1.5),
] as const;

function pearsonLine(): Readonly<{ slope: number; intercept: number }> {
  const fit = fitMidline(pearson.map((point) => ({ right: point, left: point })));
  if (!fit.ok) return { slope: 0, intercept: 0 };
  const { normal, offsetMm } = fit.line;
  return { slope: -normal.x / normal.y, intercept: offsetMm / normal.y };
}

/** The L of the printed example, and the larger, shifted, mirrored one, mirrored back as a right side is. */
const plainL = [at(1, 3), at(1, 2), at(1, 1), at(2, 1)] as const;
const largerL = [at(-4, -2), at(-4, -4), at(-4, -6), at(-2, -6)] as const;

function sizeOfL(): number {
  const fit = fitSimilarity(plainL, largerL);
  return fit.ok && fit.residualMm < 1e-12 ? fit.scale : 0;
}

/** Two threes written by hand, ten points each: how much the second must shrink to lie on the first. */
const firstThree = [
  at(11, 39),
  at(17, 42),
  at(25, 42),
  at(25, 40),
  at(23, 36),
  at(19, 35),
  at(30, 34),
  at(35, 29),
  at(30, 20),
  at(18, 19),
] as const;
const secondThree = [
  at(15, 31),
  at(20, 37),
  at(30, 40),
  at(29, 35),
  at(25, 29),
  at(29, 31),
  at(31, 31),
  at(35, 20),
  at(29, 10),
  at(25, 18),
] as const;

function sizeOfThrees(): number {
  const fit = fitSimilarity(secondThree, firstThree);
  return fit.ok ? fit.scale : 0;
}

/**
 * A face that leans by nothing and stands 1 to the client's left of the origin: reflect, relabel, average by
 * hand.
 */
function midlineOfHandFace(): number {
  const fit = fitMidline([
    { right: at(-2, 0), left: at(4, 0) },
    { right: at(-5, 3), left: at(7, 3) },
    { right: at(1, -9), left: at(1, -9) },
  ]);
  return fit.ok ? fit.line.offsetMm : 0;
}

const tenDecimals = 'ten printed decimals: half a unit of the last';

/** Lines, turns, sizes and weights. */
export const shapeChecks = [
  {
    id: 'pearson-slope',
    kind: 'table',
    source: 'pearson-1901',
    where: 'table of page 571, line of closest fit',
    what: 'slope of the line closest to ten points',
    printed: -0.5455611975,
    unit: '1',
    tolerance: 5e-11,
    because: tenDecimals,
    ours: (factor = 1) => factor * pearsonLine().slope,
  },
  {
    id: 'pearson-intercept',
    kind: 'table',
    source: 'pearson-1901',
    where: 'table of page 571, line of closest fit',
    what: 'where that line crosses zero',
    printed: 5.7840437745,
    unit: '1',
    tolerance: 5e-11,
    because: tenDecimals,
    ours: (factor = 1) => factor * pearsonLine().intercept,
  },
  {
    id: 'eigen-least',
    kind: 'table',
    source: 'numpy-eigvalsh',
    where: 'example',
    what: 'smaller eigenvalue of 1, 2; 2, 5 (the printed complex matrix has the same)',
    printed: 0.17157288,
    unit: '1',
    tolerance: 5e-9,
    because: 'eight printed decimals: half a unit of the last',
    ours: (factor = 1) => factor * eigen2({ xx: 1, xy: 2, yy: 5 }).least,
  },
  {
    id: 'eigen-most',
    kind: 'table',
    source: 'numpy-eigvalsh',
    where: 'example',
    what: 'larger eigenvalue of the same',
    printed: 5.82842712,
    unit: '1',
    tolerance: 5e-9,
    because: 'eight printed decimals: half a unit of the last',
    ours: (factor = 1) => factor * eigen2({ xx: 1, xy: 2, yy: 5 }).most,
  },
  {
    id: 'eigen-worked-most',
    kind: 'table',
    source: 'eigen-worked',
    where: 'steps 1 to 7',
    what: 'larger eigenvalue of 2, 1; 1, 2',
    printed: 3,
    unit: '1',
    tolerance: 1e-12,
    because: 'exact',
    ours: (factor = 1) => factor * eigen2({ xx: 2, xy: 1, yy: 2 }).most,
  },
  {
    id: 'size-of-l',
    kind: 'hand',
    source: 'scipy-procrustes',
    where: 'example: a larger, shifted, mirrored L',
    what: 'how many times larger (sides of 2 and of 4 units); zero if any shape were left over',
    printed: 2,
    unit: '1',
    tolerance: 1e-12,
    because: 'exact',
    ours: (factor = 1) => factor * sizeOfL(),
  },
  {
    id: 'size-of-threes',
    kind: 'table',
    source: 'matlab-procrustes',
    where: 'value of the scaling factor b',
    what: 'size of one handwritten three against another',
    printed: 0.93,
    unit: '1',
    tolerance: 0.005,
    because: 'printed to two decimals: half a unit of the last',
    ours: (factor = 1) => factor * sizeOfThrees(),
  },
  {
    id: 'midline-by-hand',
    kind: 'hand',
    source: 'mardia-2000',
    where: 'reflect, relabel, average',
    what: 'place of the midline of a face drawn about 1',
    printed: 1,
    unit: 'mm',
    tolerance: 1e-12,
    because: 'exact',
    ours: (factor = 1) => factor * midlineOfHandFace(),
  },
  {
    id: 'biweight-constant',
    kind: 'table',
    source: 'statsmodels-biweight',
    where: 'parameters',
    what: 'constant of the biweight',
    printed: 4.685,
    unit: '1',
    tolerance: 0.0005,
    because: 'printed to three decimals: half a unit of the last',
    ours: (factor = 1) => factor * tukeyConstant,
  },
  {
    id: 'biweight-iris',
    kind: 'table',
    source: 'dataplot-biweight',
    where: 'tabulated by group, group 1',
    what: 'difference of two biweight locations, Iris setosa, by our weight',
    printed: 1.57608,
    unit: '1',
    tolerance: 5e-6,
    because: 'five printed decimals: half a unit of the last',
    ours: (factor = 1) => factor * (biweightLocation(setosaLengths) - biweightLocation(setosaWidths)),
  },
  {
    id: 'tangent-1-degree',
    kind: 'table',
    source: 'trig-table',
    where: 'tangent of 1 degree',
    what: 'rise over run of a face turned by 1 degree',
    printed: 0.017455,
    unit: '1',
    tolerance: 5e-7,
    because: 'six printed decimals: half a unit of the last',
    ours: (factor = 1) => {
      const turned = rolledPoint([1, 0], factor);
      return turned.yMm / turned.xMm;
    },
  },
  {
    id: 'degree-of-tangent',
    kind: 'table',
    source: 'trig-table',
    where: 'tangent of 1 degree',
    what: 'angle of a line that rises 0.017455 in 1',
    printed: 1,
    unit: '°',
    tolerance: 0.0001,
    because: 'the tangent has six decimals',
    ours: (factor = 1) => angleDeg({ x: 1, y: factor * 0.017455 }),
  },
  {
    id: 'tilt-fakes',
    kind: 'hand',
    source: 'trig-table',
    where: 'tangent of 1 degree: times 82 mm',
    what: 'height faked by 1 degree over 82 mm: 82 × 0.017455',
    printed: 1.43131,
    unit: 'mm',
    tolerance: 0.005,
    because: 'the site prints two decimals',
    ours: (factor = 1) => factor * mappingFacts['tilt-1-deg-fakes-mm'].value,
  },
] as const satisfies readonly Check[];
