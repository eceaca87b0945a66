import { meanOfReadings } from '#lib/mapping/uncertainty/meanOfReadings.ts';
import { spreadInterval } from '#lib/mapping/uncertainty/spreadInterval.ts';
import { studentFactor } from '#lib/mapping/uncertainty/studentFactor.ts';
import { repeatabilityMm, technicalError } from '#lib/mapping/uncertainty/technicalError.ts';
import { chiSquarePoint } from '#lib/quantities/chiSquare.ts';
import type { Check } from '../check.ts';

type Pair = readonly [first: number, second: number];
const errorOf = (pairs: readonly Pair[]) => {
  const fit = technicalError(pairs.map(([firstMm, secondMm]) => ({ firstMm, secondMm })));
  return fit.ok ? fit.temMm : 0;
};
/** Every pair of several readings of one thing: their technical error is the readings' standard deviation. */
const everyPair = (readings: readonly number[]) =>
  readings.flatMap((first, i) => readings.slice(i + 1).map((second): Pair => [first, second]));

/** Seventeen people blew twice into the small meter, l/min (Bland & Altman 1986). */
const smallMeter: readonly Pair[] = [
  [512, 525],
  [430, 415],
  [520, 508],
  [428, 444],
  [500, 500],
  [600, 625],
  [364, 460],
  [380, 390],
  [658, 642],
  [445, 432],
  [432, 420],
  [626, 605],
  [260, 227],
  [477, 467],
  [259, 268],
  [350, 370],
  [451, 443],
];
const threeMercury = [37.8 - 0.964365, 37.8, 37.8 + 0.964365];
const mercuryHalfWidth = () => {
  const fit = meanOfReadings(threeMercury);
  return fit.ok ? fit.mean.hi - fit.mean.value : 0;
};
const thirdDecimal = 'printed to three decimals: half a unit of the last';
const table7b = {
  kind: 'table',
  source: 'nist-chi-square-table',
  where: 'Table 7b, column 0.975',
  unit: '1',
  tolerance: 0.0005,
  because: thirdDecimal,
} as const;
const gear = {
  kind: 'table',
  source: 'boost-chi-square',
  where: 'gear data, 95 % limits',
  unit: 'mm',
  tolerance: 5e-6,
  because: 'printed to five decimals: half a unit of the last',
} as const;
const child = {
  kind: 'table',
  source: 'bland-altman-1996',
  where: 'Table 1, standard deviation of a child',
  unit: 'l/min',
  tolerance: 0.005,
  because: 'printed to two decimals: half a unit of the last',
} as const;

/** Own error, how well it is known, and few readings. */
export const ownErrorChecks = [
  {
    id: 'chi-square-of-10',
    ...table7b,
    what: 'value that 2.5 % lie below, 10 degrees of freedom',
    printed: 3.247,
    ours: (factor = 1) => factor * chiSquarePoint(0.025, 10),
  },
  {
    id: 'chi-square-of-20',
    ...table7b,
    what: 'value that 2.5 % lie below, 20 degrees of freedom',
    printed: 9.591,
    ours: (factor = 1) => factor * chiSquarePoint(0.025, 20),
  },
  {
    id: 'chi-square-of-30',
    ...table7b,
    what: 'value that 2.5 % lie below, 30 degrees of freedom',
    printed: 16.791,
    ours: (factor = 1) => factor * chiSquarePoint(0.025, 30),
  },
  {
    id: 'chi-square-of-45',
    kind: 'table',
    source: 'nag-chi-square',
    where: 'g01tcc, example results, third row',
    what: 'value that 86.9 % lie below, 45 degrees of freedom',
    printed: 55.7381,
    unit: '1',
    tolerance: 0.00005,
    because: 'printed to four decimals: half a unit of the last',
    ours: (factor = 1) => factor * chiSquarePoint(0.869, 45),
  },
  {
    id: 'gear-spread-low',
    ...gear,
    what: 'lower limit of a spread of 0.006278908 from 100 gears',
    printed: 0.00551,
    ours: (factor = 1) => factor * spreadInterval(0.006278908, 99).lo,
  },
  {
    id: 'gear-spread-high',
    ...gear,
    what: 'upper limit of the same',
    printed: 0.00729,
    ours: (factor = 1) => factor * spreadInterval(0.006278908, 99).hi,
  },
  {
    id: 'spread-of-fifty-low',
    kind: 'table',
    source: 'statpsych-sd',
    where: 'example: LL',
    what: 'lower limit of a spread of 4.65 from 50 people',
    printed: 3.884303,
    unit: '1',
    tolerance: 5e-7,
    because: 'printed to six decimals: half a unit of the last',
    ours: (factor = 1) => factor * spreadInterval(4.65, 49).lo,
  },
  {
    id: 'spread-of-fifty-high',
    kind: 'table',
    source: 'statpsych-sd',
    where: 'example: UL',
    what: 'upper limit of the same',
    printed: 5.79452,
    unit: '1',
    tolerance: 5e-6,
    because: 'printed to five decimals: half a unit of the last',
    ours: (factor = 1) => factor * spreadInterval(4.65, 49).hi,
  },
  {
    id: 'three-readings',
    kind: 'table',
    source: 'boost-student-t',
    where: 'mercury, interval width at 95 %',
    what: 'half-width of the mean of three readings',
    printed: 2.396,
    unit: '1',
    tolerance: 0.0006,
    because: 'printed to three decimals; the t of the table as well',
    ours: (factor = 1) => factor * mercuryHalfWidth(),
  },
  {
    id: 'ten-readings',
    kind: 'table',
    source: 'statpsych-mean',
    where: 'example, UL minus estimate',
    what: 'half-width of the mean of ten readings of spread 8.14',
    printed: 5.82301,
    unit: '1',
    tolerance: 0.0015,
    because: 't is taken from a table of three decimals: 0.0005 × 2.574',
    ours: (factor = 1) => (factor * studentFactor(9) * 8.14) / Math.sqrt(10),
  },
  {
    id: 'flow-twice-spread',
    kind: 'table',
    source: 'nicholls-repeatability',
    where: 'small meter: with 2 standard deviations',
    what: '2 root 2 times our technical error of 17 pairs of blows',
    printed: 56.3163,
    unit: 'l/min',
    tolerance: 5e-5,
    because: 'printed to four decimals: half a unit of the last',
    ours: (factor = 1) => factor * 2 * Math.SQRT2 * errorOf(smallMeter),
  },
  {
    id: 'flow-repeatability',
    kind: 'table',
    source: 'nicholls-repeatability',
    where: 'small meter: with 1.96',
    what: 'repeatability of 17 pairs of blows',
    printed: 55.19,
    unit: 'l/min',
    tolerance: 0.05,
    because: 'our factor is 2.77, theirs 1.96 root 2 = 2.7719',
    ours: (factor = 1) => factor * repeatabilityMm(errorOf(smallMeter)),
  },
  {
    id: 'child-4',
    ...child,
    what: 'spread of four blows of child 4, from every pair',
    printed: 38.6,
    ours: (factor = 1) => factor * errorOf(everyPair([210, 300, 280, 265])),
  },
  {
    id: 'child-12',
    ...child,
    what: 'spread of four blows of child 12, from every pair',
    printed: 55.08,
    ours: (factor = 1) => factor * errorOf(everyPair([270, 250, 330, 370])),
  },
] as const satisfies readonly Check[];
