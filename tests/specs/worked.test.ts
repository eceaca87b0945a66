import { differenceCiede2000 } from 'culori';
import { expect, test } from 'vitest';
import { mixByDrops } from '#calculators/mixByDrops.ts';
import { mixFurther } from '#calculators/mixFurther.ts';
import { startState } from '#calculators/startState.ts';
import { workedExamples } from '#worked/index.ts';
import { type WorkedId, workedWords } from '#words/worked/index.ts';

test('[hand] every worked example has words and every text an example', () => {
  expect(Object.keys(workedExamples).sort()).toEqual(Object.keys(workedWords).sort());
});

test('[hand] steps hold no gaps, and the answer line holds the answer', () => {
  for (const [id, { numbers }] of Object.entries(workedExamples)) {
    const name = Object.keys(workedWords).find((known): known is WorkedId => known === id);
    if (!name) throw new Error(`src/words/worked/ has no sentences for "${id}".`);
    const { title, steps, answer, after } = workedWords[name](numbers);
    for (const text of [title, ...steps, answer, after]) expect(text).not.toMatch(/NaN|undefined/);
    expect(answer).toContain(numbers.answer.toFixed(1));
  }
});

test('[hand] pair middles by hand: (41.4 + 73.6) / 2, (26.3 + 88.9) / 2, (12.1 + 102.9) / 2, mean of the three', () => {
  const { numbers } = workedExamples['midline-by-pair-middles'];
  expect(numbers.innerMiddle).toBeCloseTo(57.5, 10);
  expect(numbers.pupilMiddle).toBeCloseTo(57.6, 10);
  expect(numbers.outerMiddle).toBeCloseTo(57.5, 10);
  expect(numbers.answer).toBeCloseTo((57.5 + 57.6 + 57.5) / 3, 10);
  expect(numbers.noseOff).toBeCloseTo((43.6 + 81) / 2 - (57.5 + 57.6 + 57.5) / 3, 10);
});

test('[hand] the leaning head: 82 × 0.0349 = 2.86, and 3.1 − 2.86 = 0.24 is under 0.75', () => {
  const { numbers } = workedExamples['leaning-head'];
  expect(numbers.sine).toBeCloseTo(0.0349, 4);
  expect(numbers.answer).toBeCloseTo(2.862, 3);
  expect(numbers.left).toBeCloseTo(0.238, 3);
  expect(numbers.real).toBeCloseTo(1.96 * Math.sqrt(2 * (0.09 / 3 + 0.206 ** 2)), 2);
});

test('[hand] the bell-ringer: 0.3/√3 = 0.173; √(0.173² + 0.206²) = 0.269; × √2 = 0.381; × 2.80 = 1.07', () => {
  const { numbers } = workedExamples['bell-ringer'];
  expect(numbers.mean).toBeCloseTo(0.1732, 4);
  expect(numbers.side).toBeCloseTo(0.2692, 3);
  expect(numbers.both).toBeCloseTo(0.3807, 3);
  expect(numbers.answer).toBeCloseTo(1.066, 2);
  expect(numbers.sidesMm).toBeLessThan(numbers.answer);
});

test('[table] one arch for both: front 14 and tail 57.25 give 40.73 from the front and 30.52 from the tail', () => {
  const { numbers } = workedExamples['one-arch-for-both'];
  expect([numbers.front, numbers.tail, numbers.length]).toEqual([14, 57.25, 43.25]);
  expect(numbers.answer).toBeCloseTo(40.73, 2);
  expect(numbers.fromTail).toBeCloseTo(30.52, 2);
  // 14.2 + 0.618034 × 43.3 and 13.8 + 0.618034 × 43.2
  expect(numbers.rightAlone).toBeCloseTo(40.961, 3);
  expect(numbers.leftAlone).toBeCloseTo(40.499, 3);
});

test('[hand] the baker: 21.2 − 19.6 = 1.6 is more than 2.2365 × 0.381 = 0.85, 18.6 − 18.2 = 0.4 is less', () => {
  const { numbers } = workedExamples['baker-talking'];
  expect(numbers.talking).toBeCloseTo(1.6, 10);
  expect(numbers.answer).toBeCloseTo(0.4, 10);
  expect(numbers.tools).toBeCloseTo(0.206, 3);
  expect(numbers.real).toBeCloseTo(2.2365 * Math.sqrt(2 * (0.03 + 0.2062 ** 2)), 3);
});

test('[hand] the baker: 33 − 31.5 = 1.5; √(2(0.09/5 + 0.0425)) = 0.348; × 2.57 = 0.89', () => {
  const { numbers } = workedExamples['baker-first-pass'];
  expect(numbers.answer).toBeCloseTo(1.5, 12);
  // The lower edge is on its line: filled, the arch is 33 − 27 = 6 mm, as approved.
  expect(numbers.lowerMm).toBe(numbers.lowerApprovedMm);
  expect(numbers.thick).toBeCloseTo(6, 12);
  expect(numbers.both).toBeCloseTo(0.348, 3);
  expect(numbers.factor).toBeCloseTo(2.569, 3);
  expect(numbers.real).toBeCloseTo(0.894, 2);
});

test('[hand] the potter: 27 + 15 × 1 ÷ 3 = 32 mm; 42 − 32 = 10 mm', () => {
  const { numbers } = workedExamples['nothing-under-the-tail'];
  expect(numbers.leaves).toBeCloseTo(32, 12);
  expect(numbers.from).toBeCloseTo(32, 12);
  expect(numbers.answer).toBeCloseTo(10, 12);
});

test('[hand] the ferry pilot: 20.5 + 1 = 21.5; 23.3 − 21.5 = 1.8; 2 × 1.645 × 0.3 = 0.987, 15.2 % of 6.5', () => {
  const { numbers } = workedExamples['ferry-pilot-old-shape'];
  expect(numbers.allowed).toBeCloseTo(21.5, 12);
  expect(numbers.answer).toBeCloseTo(1.8, 12);
  expect(numbers.grows).toBeCloseTo(0.987, 12);
  expect(numbers.share).toBeCloseTo(15.18, 2);
  expect(numbers.chased).toBeCloseTo(2.8 + 0.4935, 12);
});

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

test('[table] the smallest real difference for TEM 0.3, one reading, ten comparisons is 1.44 mm (k 2.80 × 0.51)', () => {
  expect(workedExamples['smallest-real-difference'].numbers.answer).toBeCloseTo(1.44, 2);
});

test('[hand] the violinist’s tail: 40.4 − 37.0; 11.4 − 10.2; line 47 + 8.6 × 26.8 / 39.6', () => {
  const { numbers } = workedExamples['violinist-tail'];
  expect(numbers.answer).toBeCloseTo(3.4, 9);
  expect(numbers.below).toBeCloseTo(1.2, 9);
  expect(numbers.slope).toBeCloseTo(26.8 / 39.6, 9);
  expect(numbers.limit).toBeCloseTo(47 + (8.6 * 26.8) / 39.6, 9);
  expect(numbers.past).toBeCloseTo(56 - 47 - (8.6 * 26.8) / 39.6, 9);
});

test('[hand] the ferry pilot: 2.5 sideways and 4.3 up, 1.4 and 4.8; straight up 5.7 against 5.2', () => {
  const { numbers } = workedExamples['pilot-thickness'];
  expect(numbers.answer).toBeCloseTo(Math.sqrt(2.5 ** 2 + 4.3 ** 2), 9);
  expect(numbers.left).toBeCloseTo(Math.sqrt(1.4 ** 2 + 4.8 ** 2), 9);
  expect(numbers.seeming).toBeCloseTo(0.5, 9);
});

test('[hand] a scale from the iris: 11.71 / 195 a dot, 25 dots and 750 dots, each uncertain by 2 × 0.42 / 11.71', () => {
  const { numbers } = workedExamples['scale-by-iris'];
  expect(numbers.answer).toBeCloseTo((25 * 11.71) / 195, 10);
  expect(numbers.lengthMm).toBeCloseTo((750 * 11.71) / 195, 10);
  expect(numbers.differenceDoubt).toBeCloseTo((25 * 0.84) / 195, 10);
  expect(numbers.lengthDoubt).toBeCloseTo((750 * 0.84) / 195, 10);
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
