import { differenceCiede2000 } from 'culori';
import { expect, test } from 'vitest';
import { mixByDrops } from '#calculators/mixByDrops.ts';
import { mixFurther } from '#calculators/mixFurther.ts';
import { startState } from '#calculators/startState.ts';
import { workedExamples } from '#worked/index.ts';

test('[property] one brow, two lamps: the false step is the lamp’s step and the true one; all of it as the drop calculator says', () => {
  const { numbers } = workedExamples['same-brow-two-lamps'];
  expect(numbers.falseStep).toBeCloseTo(numbers.answer + numbers.trueStep, 12);
  expect(numbers.skinStep).toBeGreaterThan(numbers.answer);
  const looks = mixByDrops.solve(startState(mixByDrops));
  if (!looks.ok) throw new Error(looks.reason);
  expect(numbers.dayA).toBe(looks.looks.times[0]?.day.a);
  expect(numbers.lastLampA).toBe(looks.looks.times[2]?.seen.a);
});

test('[property] what matters most: the rows of the drop calculator', () => {
  const { numbers } = workedExamples['what-matters-most'];
  const [most] = mixFurther(startState(mixByDrops))?.matters ?? [];
  expect(most).toEqual({ cause: 'coverage', change: numbers.answer });
});

test('[hand] two measured skins: a* 9.652 and 10.209 by daylight, and further apart under tungsten', () => {
  const { numbers } = workedExamples['two-skins-under-lamps'];
  expect(numbers.firstA).toBeCloseTo(9.652, 2);
  expect(numbers.secondA).toBeCloseTo(10.209, 2);
  expect(numbers.answer).toBeGreaterThan(1.5 * numbers.day);
});

test('[hand] two measured people: arctan(12.82/10.91) and arctan(17.37/16.6); hues arctan(10.91/12.69) and arctan(16.6/8.71)', () => {
  const { numbers } = workedExamples['two-measured-people'];
  expect(numbers.firstIta).toBeCloseTo(49.6, 1);
  expect(numbers.secondIta).toBeCloseTo(46.3, 1);
  expect(numbers.firstHue).toBeCloseTo(40.7, 1);
  expect(numbers.secondHue).toBeCloseTo(62.3, 1);
  expect(numbers.answer).toBeCloseTo(21.6, 1);
});

test('[property] old pigment: orange goes back more nearly than yellow, pink gets less red by getting darker, yellow alone stays red', () => {
  for (const id of ['grey-blue-wants-orange', 'pink-gets-darker'] as const)
    expect(workedExamples[id].numbers.answer).toBeGreaterThan(0);
  const { orangeCos, yellowCos, wayA, wayB, orangeA, orangeB } =
    workedExamples['grey-blue-wants-orange'].numbers;
  expect(orangeCos).toBeGreaterThan(yellowCos);
  expect(orangeCos).toBeCloseTo(
    (orangeA * wayA + orangeB * wayB) / Math.hypot(orangeA, orangeB) / Math.hypot(wayA, wayB),
    9,
  );
  const { moveA, wayA: needed } = workedExamples['pink-gets-darker'].numbers;
  expect(moveA < 0 && needed < 0).toBe(true);
  const { aloneA, answer } = workedExamples['yellow-turns-green'].numbers;
  expect(aloneA).toBeGreaterThan(0);
  expect(answer).toBeGreaterThan(0.3);
});

test('[property] an ordinary brown is reached on four skins; on the deepest a smaller step is', () => {
  const { on72, on63, on54, on45, on36, answer, limit } = workedExamples['brown-on-five-skins'].numbers;
  for (const reached of [on72, on63, on54, on45, answer]) expect(reached).toBeLessThan(limit);
  expect(on36).toBeGreaterThan(limit);
});

test('[property] clients that a brown may correct: under 3 at both dates, darker than before, farther off today', () => {
  const { answer, now, price, newL, oldL, limit } = workedExamples['baker-orange'].numbers;
  expect(answer).toBeLessThan(limit);
  expect(now).toBeGreaterThan(2 * limit);
  expect(price).toBeGreaterThan(0);
  expect(newL).toBeCloseTo(oldL - price, 9);
  const violinist = workedExamples['violinist-salmon'].numbers;
  expect(violinist.inside).toBeLessThan(violinist.limit);
  expect(violinist.answer).toBeGreaterThan(1.5 * violinist.limit);
});

test('[property] clients that no recipe may cover: from 3 even with white, and pigment helps the potter less than none', () => {
  const pilot = workedExamples['pilot-grey-blue'].numbers;
  expect(Math.min(pilot.answer, pilot.white)).toBeGreaterThan(2 * pilot.limit);
  expect(pilot.oldL).toBeLessThan(pilot.wantL);
  const choir = workedExamples['choir-leader-ash-grey'].numbers;
  expect(choir.answer).toBeGreaterThan(2 * choir.limit);
  const potter = workedExamples['potter-darkened'].numbers;
  expect(potter.answer).toBeGreaterThan(potter.now);
});

test('[table] the bell-ringer is 2.1 from her wish, near enough, though a recipe could come nearer', () => {
  const { answer, could, limit } = workedExamples['bell-ringer-leave-it'].numbers;
  expect(answer).toBeCloseTo(2.1, 1);
  expect(answer).toBeLessThan(limit);
  expect(could).toBeLessThan(answer);
});

test('[property] the same mix is lighter and less red in skin than in the bottle, and deeper is lighter and less red still', () => {
  const { bottleL, bottleA, inLightL, inLightA, inDeepL, inDeepA, deeperL, deeperA, deepL, lightL, answer } =
    workedExamples['bottle-and-skin'].numbers;
  for (const [l, a] of [
    [inLightL, inLightA],
    [inDeepL, inDeepA],
  ] as const) {
    expect(l).toBeGreaterThan(bottleL);
    expect(a).toBeLessThan(bottleA);
  }
  expect(deeperL).toBeGreaterThan(inLightL);
  expect(deeperA).toBeLessThan(inLightA);
  expect(inLightL).toBeLessThan(lightL);
  expect(inDeepL).toBeLessThan(deepL);
  expect(answer).toBeCloseTo(inLightL - bottleL, 9);
});

test('[hand] strokes for healed: 86.4 and 168 mm² of 287.6 are 30.04 and 58.41 %; 129.42 ÷ 2.8 = 46.22; 46 strokes cover 23.03 % fresh', () => {
  const { numbers } = workedExamples['strokes-for-healed'];
  expect(numbers.inked).toBeCloseTo(86.4, 9);
  expect(numbers.fresh).toBeCloseTo(30.042, 3);
  expect(numbers.inkedWide).toBeCloseTo(168, 9);
  expect(numbers.spread).toBeCloseTo(58.414, 3);
  expect(numbers.wanting).toBeCloseTo(129.42, 9);
  expect(numbers.answer).toBeCloseTo(46.221, 3);
  expect(numbers.freshThen).toBeCloseTo(23.032, 3);
});

test('[property] two works that heal alike: nearer than one reading is sure of at one year, farther apart later', () => {
  const { answer, allowed, laterApart, firstL, secondL, secondDose, firstDose, secondMm, firstMm } =
    workedExamples['heals-alike'].numbers;
  expect(answer).toBeLessThan(allowed / 2);
  expect(laterApart).toBeGreaterThan(2 * answer);
  expect(Math.abs(firstL - secondL)).toBeLessThan(answer + 0.1);
  expect(secondDose / firstDose).toBeCloseTo(2, 12);
  expect(secondMm).toBeGreaterThan(firstMm);
});

test('[library] one list, two bottles: culori finds the same difference between the two colours; the second is lighter and yellower', () => {
  const { oneL, oneA, oneB, otherL, otherA, otherB, answer, inSkinApart } =
    workedExamples['one-label-two-bottles'].numbers;
  expect(answer).toBeCloseTo(
    differenceCiede2000()(
      { mode: 'lab65', l: oneL, a: oneA, b: oneB },
      { mode: 'lab65', l: otherL, a: otherA, b: otherB },
    ),
    9,
  );
  expect(otherL).toBeGreaterThan(oneL);
  expect(otherB).toBeGreaterThan(oneB);
  expect(inSkinApart).toBeLessThan(answer);
  expect(inSkinApart).toBeGreaterThan(1);
});
