import { expect, test } from 'vitest';
import { fitRobustMidline } from '#lib/mapping/midline/robustMidline.ts';
import { whichMarkNotToTrust } from '#skills/mapping/whichMarkNotToTrust.ts';
import { listedMarks, whichMarkWords } from '#words/skills/whichMarkNotToTrust.ts';
import { checkSeed } from './skillCheck.ts';

const seeds = Array.from({ length: 1000 }, (_, seed) => seed);

test('[property] every seed 0 to 999 has one right answer and names every wrong one', () => {
  for (const seed of seeds) checkSeed(whichMarkNotToTrust, whichMarkWords, seed);
});

test('[property] no seed is a close call: what is out is plainly out, what is in is plainly in', () => {
  for (const seed of seeds) {
    const { placesMm, limitMm } = whichMarkNotToTrust.given(seed);
    const places = Object.values(placesMm);
    const middle = [...places].sort((a, b) => a - b)[3] ?? 0;
    for (const place of places)
      expect(Math.abs(Math.abs(place - middle) - limitMm), `seed ${seed}`).toBeGreaterThan(0.39);
  }
});

test('[property] "none" and the nose come often, and every mark comes', () => {
  const counts = new Map<string, number>();
  for (const seed of seeds) {
    const answer = whichMarkNotToTrust.answer(whichMarkNotToTrust.given(seed));
    if (answer.kind === 'choice') counts.set(answer.correct, (counts.get(answer.correct) ?? 0) + 1);
  }
  expect(counts.get('none')).toBeGreaterThan(150);
  expect(counts.get('nose')).toBeGreaterThan(200);
  expect(counts.size).toBe(7);
});

test('[property] the robust midline of the library distrusts the same marks', () => {
  const heightMm = {
    'inner-corner': 0,
    pupil: 1,
    'outer-corner': 2,
    nasion: 5,
    'nose-wing': -38,
    'nose-base': -42,
    chin: -95,
  } as const;
  const halfMm = {
    'inner-corner': 16.5,
    pupil: 31.5,
    'outer-corner': 44,
    nasion: 0,
    'nose-wing': 18,
    'nose-base': 0,
    chin: 0,
  } as const;
  let agree = 0;
  for (const seed of seeds) {
    const given = whichMarkNotToTrust.given(seed);
    const fit = fitRobustMidline(
      listedMarks.map((name) => ({
        right: { xMm: given.placesMm[name] - halfMm[name], yMm: heightMm[name] },
        left: { xMm: given.placesMm[name] + halfMm[name], yMm: heightMm[name] },
      })),
      0.6,
    );
    const answer = whichMarkNotToTrust.answer(given);
    if (!fit.ok || answer.kind !== 'choice') continue;
    const least = listedMarks.filter((_, i) => (fit.weights[i] ?? 1) < 0.5);
    const named =
      least.length === 0 ? 'none' : least.every((name) => name.startsWith('nose-')) ? 'nose' : least.join();
    if (named === answer.correct) agree++;
  }
  // The library may also turn the line towards the chin, so a few faces come out differently.
  expect(agree / seeds.length).toBeGreaterThan(0.85);
});
