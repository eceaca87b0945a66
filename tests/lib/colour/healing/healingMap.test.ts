import { describe, expect, test } from 'vitest';
import { bottles } from '#lib/colour/pigment/bottles.ts';
import { ciede2000 } from '#lib/colour/spaces/ciede2000.ts';
import { healedColour } from '#lib/colour/healing/healedColour.ts';
import { mixLayer, pigmentIds, type PigmentId, type Shares } from '#lib/colour/pigment/pigments.ts';
import { sharesOf } from '#lib/colour/recipe/recipeTask.ts';
import { startAgeing } from '#lib/colour/numbers/ageing.ts';
import { leftOf } from '#lib/colour/healing/uncertainHealing.ts';
import {
  depthsLookedAt,
  dosesBetween,
  dosesLookedAt,
  lossesLookedAt,
} from '#lib/colour/healing/healingAxes.ts';
import { healingMap, type HealedWork } from '#lib/colour/healing/healingMap.ts';
import { leftWithLoss } from '#lib/colour/healing/leftWithLoss.ts';
import { skins } from './healingSkins.ts';

const [, middle] = skins;
if (!middle) throw new Error('There is no skin.');

const veilShare = 0.35;

const only = (id: PigmentId): Shares => ({
  '77891': 0,
  '77492': 0,
  '77491': 0,
  '77499': 0,
  '77266': 0,
  [id]: 1,
});

const brown = sharesOf([0, 0, 1, 0, 0, 3], bottles);

describe('what is looked through', () => {
  test('[hand] 25 depths by hundredths, 15 doses by equal shares, five losses around the assumed one', () => {
    expect(depthsLookedAt).toHaveLength(25);
    expect([depthsLookedAt[0], depthsLookedAt[4], depthsLookedAt[24]]).toEqual([0.06, 0.1, 0.3]);
    expect(lossesLookedAt).toEqual([0.5, 0.75, 1, 1.5, 2]);
    const doses = dosesBetween(0.1, 0.8);
    expect(doses).toHaveLength(dosesLookedAt);
    expect(doses[0]).toBe(0.1);
    expect(doses[14]).toBeCloseTo(0.8, 12);
    // The middle of 0.1 and 0.8 by shares is √0.08.
    expect(doses[7]).toBeCloseTo(Math.sqrt(0.08), 12);
  });

  test('[hand] what is left with a loss: 0.7 × 0.88² as assumed, its root with half of it, its square with twice; all with none', () => {
    expect(leftWithLoss(startAgeing, 2, 1)).toEqual(leftOf(startAgeing, 2));
    const asAssumed = 0.7 * 0.88 ** 2;
    expect(leftWithLoss(startAgeing, 2, 0.5)['77491']).toBeCloseTo(Math.sqrt(asAssumed), 12);
    expect(leftWithLoss(startAgeing, 2, 2)['77491']).toBeCloseTo(asAssumed ** 2, 12);
    for (const id of pigmentIds) expect(leftWithLoss(startAgeing, 2, 0)[id]).toBe(1);
  });
});

describe('the map', () => {
  const work: HealedWork = {
    skin: middle,
    shares: brown,
    setting: { coverage: 0.6, veilShare },
    ageing: startAgeing,
    readings: [{ years: 1, seen: { l: 53.5, a: 10.5, b: 14.5 } }],
    error: 2,
  };
  const axes = { depthsMm: depthsLookedAt, doses: dosesBetween(0.1, 0.8), losses: lossesLookedAt };

  test('[property] every cell is the colour of the one model, at the loss that comes nearest', () => {
    const cells = healingMap(work, {
      depthsMm: [0.06, 0.13, 0.3],
      doses: [0.1, 0.3, 0.8],
      losses: lossesLookedAt,
    });
    expect(cells.map(({ depthMm, dose }) => [depthMm, dose])).toEqual(
      [0.06, 0.13, 0.3].flatMap((depthMm) => [0.1, 0.3, 0.8].map((dose) => [depthMm, dose])),
    );
    for (const { depthMm, dose, loss, difference, fits } of cells) {
      const away = lossesLookedAt.map((each) =>
        ciede2000(
          healedColour(middle, mixLayer(brown, dose, leftWithLoss(startAgeing, 1, each)), {
            depthMm,
            coverage: 0.6,
            veilShare,
          }),
          { l: 53.5, a: 10.5, b: 14.5 },
        ),
      );
      expect(difference).toBeCloseTo(Math.min(...away), 10);
      expect(away[lossesLookedAt.findIndex((each) => each === loss)]).toBeCloseTo(difference, 10);
      expect(fits).toEqual(lossesLookedAt.filter((_, i) => (away[i] ?? NaN) <= 2));
    }
  });

  test('[hand] one pigment: a loss twice over with a dose 4/3 as large heals exactly alike, and no other pair of the row does', () => {
    // Carbon keeps 3/4 at six weeks. Twice the loss keeps 9/16: the dose must be 4/3 of the other to leave
    // the same.
    const doses = dosesBetween(0.05, 0.05 * (4 / 3) ** 14);
    const seen = healedColour(middle, mixLayer(only('77266'), (doses[5] ?? NaN) * 0.75), {
      depthMm: 0.1,
      coverage: 1,
      veilShare,
    });
    const cells = healingMap(
      {
        ...work,
        shares: only('77266'),
        setting: { coverage: 1, veilShare },
        readings: [{ years: 0, seen }],
        error: 1e-6,
      },
      { depthsMm: [0.1], doses, losses: [1, 2] },
    );
    expect(cells.flatMap(({ fits }, i) => (fits.length > 0 ? [[i, ...fits]] : []))).toEqual([
      [5, 1],
      [6, 2],
    ]);
    expect(cells[5]).toMatchObject({ loss: 1, dose: doses[5] });
    expect(cells[6]).toMatchObject({ loss: 2 });
  });

  test('[hand] a difference that equals the error fits; where nothing is left of the work, every depth and dose is the bare skin', () => {
    const [cell] = healingMap(work, { depthsMm: [0.1], doses: [0.3], losses: [1] });
    const away = cell?.difference ?? NaN;
    expect(
      healingMap({ ...work, error: away }, { depthsMm: [0.1], doses: [0.3], losses: [1] })[0]?.fits,
    ).toEqual([1]);
    expect(
      healingMap({ ...work, error: away - 1e-9 }, { depthsMm: [0.1], doses: [0.3], losses: [1] })[0]?.fits,
    ).toEqual([]);
    const gone = { ...startAgeing, '77492': { keptAtSixWeeks: 0, lostPerYear: 0 } };
    const bare = healingMap(
      {
        ...work,
        shares: only('77492'),
        ageing: gone,
        readings: [{ years: 0, seen: { l: 63, a: 10, b: 19 } }],
        error: 1e-6,
      },
      { depthsMm: [0.06, 0.3], doses: [0.1, 0.8], losses: [1] },
    );
    expect(bare.every(({ fits }) => fits.length === 1)).toBe(true);
  });

  test('[property] a smaller error never enlarges the set', () => {
    let before = Infinity;
    for (const error of [4, 3, 2, 1.5, 1, 0.5, 0.1]) {
      const cells = healingMap({ ...work, error }, axes);
      const fitting = cells.reduce((sum, { fits }) => sum + fits.length, 0);
      expect(fitting).toBeLessThanOrEqual(before);
      for (const { difference, fits } of cells) expect(fits.length > 0).toBe(difference <= error);
      before = fitting;
    }
    expect(before).toBeLessThan(20);
  });

  test('[property] a second date only takes cells away, and the true one stays', () => {
    const at = (years: number) =>
      healedColour(middle, mixLayer(brown, axes.doses[7] ?? NaN, leftWithLoss(startAgeing, years, 1.5)), {
        depthMm: 0.16,
        coverage: 0.6,
        veilShare,
      });
    const first = healingMap({ ...work, readings: [{ years: 0, seen: at(0) }] }, axes);
    const both = healingMap(
      {
        ...work,
        readings: [
          { years: 0, seen: at(0) },
          { years: 3, seen: at(3) },
        ],
      },
      axes,
    );
    both.forEach(({ fits, difference }, i) => {
      expect(first[i]?.fits).toEqual(expect.arrayContaining([...fits]));
      expect(difference).toBeGreaterThanOrEqual((first[i]?.difference ?? NaN) - 1e-12);
    });
    const counts = [first, both].map((cells) => cells.reduce((sum, { fits }) => sum + fits.length, 0));
    expect(counts[1]).toBeLessThan(0.7 * (counts[0] ?? NaN));
    expect(both.find(({ depthMm, dose }) => depthMm === 0.16 && dose === axes.doses[7])).toMatchObject({
      loss: 1.5,
      fits: expect.arrayContaining([1.5]),
    });
  });

  test('[property] a colour no brown in this skin has is not explained: nothing fits, and all stay far', () => {
    for (const seen of [
      { l: 53, a: -6, b: 10 },
      { l: 75, a: 10, b: 19 },
      { l: 45, a: 30, b: 5 },
    ]) {
      const cells = healingMap({ ...work, readings: [{ years: 1, seen }] }, axes);
      expect(cells.every(({ fits, difference }) => fits.length === 0 && difference > 4)).toBe(true);
    }
  });
});
