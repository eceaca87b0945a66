import { expect, test } from 'vitest';
import { changeSince } from '#calculators/changeSince.ts';
import { midlineAndSides } from '#calculators/midlineAndSides.ts';
import { startState } from '#calculators/startState.ts';
import { twoReadings } from '#calculators/twoReadings.ts';
import { leaningNoseFace } from '#lib/face/demonstration.ts';
import { keptSays } from '#words/keptReading.ts';
import { midlineSays } from '#words/midline.ts';
import { latelyCaution, twoReadingsSays } from '#words/twoReadings.ts';

test('[hand] the answer of the lesson stands without touching anything: nose not trusted, left arch higher', () => {
  const reading = midlineAndSides.solve(startState(midlineAndSides));
  expect(reading.ok && reading.notTrusted).toEqual(['noseWing', 'subnasale']);
  if (!reading.ok) return;
  expect(
    Math.abs(reading.brows.archTop.up.value - leaningNoseFace.truth.archHeightDifferenceMm),
  ).toBeLessThan(0.3);
  expect(reading.brows.archTop.up.lo).toBeLessThan(leaningNoseFace.truth.archHeightDifferenceMm);
  expect(reading.brows.archTop.up.hi).toBeGreaterThan(leaningNoseFace.truth.archHeightDifferenceMm);
  const { answer, doubt } = midlineSays(reading);
  expect(answer).toContain('Not trusted: nose wings and nose base');
  expect(doubt).toMatch(/left arch stands 1\.\d mm higher/);
});

test('[hand] a second midline that fits about as well is said once, after what is trusted; the first face has none', () => {
  const reading = midlineAndSides.solve(startState(midlineAndSides));
  if (!reading.ok) throw new Error(reading.reason);
  expect(reading.hasRivalMidline).toBe(false);
  expect(midlineSays(reading).answer).not.toContain('Two midlines');
  expect(midlineSays({ ...reading, hasRivalMidline: true }).answer).toMatch(
    /Not trusted: .*\. Two midlines fit about equally well: read the marks of the face again before you trust one\.$/,
  );
});

test('[hand] readings that were not taken alike are refused, each with its own reason', () => {
  const start = startState(midlineAndSides);
  const changed = [{ pose: 'raised' }, { posture: 'lying' }, { skin: 'swollen' }] as const;
  const sentences = changed.map((part) => keptSays(changeSince(start, { ...start, ...part })));
  for (const sentence of sentences) expect(sentence).toMatch(/^Not compared: /);
  expect(new Set(sentences).size).toBe(3);
});

test('[hand] the same reading again has moved nowhere; an arch raised by 3 mm has, and only there', () => {
  const start = startState(midlineAndSides);
  const same = changeSince(start, start);
  expect(same.ok && same.changes.archTop.left.up.value).toBe(0);
  expect(keptSays(same)).toMatch(/^Nothing is shown to have moved/);
  const { xMm, yMm } = start.archTopL;
  const raised = changeSince(start, { ...start, archTopL: { xMm, yMm: yMm + 3 } });
  expect(raised.ok && raised.changes.archTop.left.up.value).toBeCloseTo(3, 2);
  expect(keptSays(raised)).toMatch(/^1 number has moved/);
});

test('[hand] two readings: the baker talking and at rest; alike, lying, after toxin', () => {
  const start = startState(twoReadings);
  const says = (part: Partial<typeof start>) => twoReadingsSays(twoReadings.solve({ ...start, ...part }));
  const baker = says({});
  expect(baker.answer).toBe('Map the second reading: at rest, upright, normal skin.');
  // ± 2.2365 × 0.3808 = 0.85
  expect(baker.doubt).toContain('First: the left arch stands 1.6 mm higher (0.7 to 2.5 mm).');
  expect(baker.doubt).toContain('Second: 0.4 mm apart, not shown to be real (up to 1.3 mm either way).');
  expect(baker.doubt).toMatch(/The two are not compared: the face was held differently\.$/);
  expect(says({ posture2: 'lying', skin2: 'numb' }).doubt).toMatch(
    /not compared: the face was held differently, one was taken lying down and the skin was not in the same state\.$/,
  );
  expect(says({ posture2: 'lying' }).answer).toMatch(/^Map neither\./);
  expect(says({ lately: 'toxin' }).answer).toMatch(/^Map nothing yet: wait/);
  expect(says({ lately: 'unexplained' }).answer).toMatch(/^Map nothing: a doctor first/);
  const alike = says({ pose1: 'rest' });
  expect(alike.answer).toMatch(/^Either reading/);
  expect(alike.doubt).toContain(
    'the right arch moved down 1.4 mm (0.5 to 2.3 mm), the left arch moved down 2.6 mm (1.7 to 3.5 mm).',
  );
  expect(says({ pose1: 'rest', right2: 19.9, left2: 22.4 }).doubt).toContain(
    'the right arch is not shown to have moved (up to 1.2 mm either way), the left arch moved up 1.2 mm (0.3 to 2.1 mm).',
  );
  expect(says({ right1: 21.2, left1: 19.6 }).doubt).toContain('First: the right arch stands 1.6 mm higher');
  expect(latelyCaution('nothing')).toBeUndefined();
});
