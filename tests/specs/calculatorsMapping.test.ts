import { expect, test } from 'vitest';
import { fromAddress, toAddress } from '#calculators/address.ts';
import { namedMarks, pointOf } from '#calculators/marks.ts';
import { levelLine } from '#calculators/levelLine.ts';
import { frontAndTail } from '#calculators/frontAndTail.ts';
import { placingKeys, wideNoseMarks } from '#calculators/wideNoseMarks.ts';
import { coverTheOldShape } from '#calculators/coverTheOldShape.ts';
import { browsOnLevelFace } from '#calculators/browsOnLevelFace.ts';
import { outlineAndCover } from '#calculators/outlineAndCover.ts';
import { stationsOf } from '#calculators/outlineSums.ts';
import { pose } from '#calculators/pose.ts';
import { poseStart } from '#calculators/poseStart.ts';
import { startState } from '#calculators/startState.ts';
import { wideNoseFace } from '#lib/face/wideNoseFace.ts';
import { frontAndTailSays } from '#words/frontAndTail.ts';
import { outlineSays } from '#words/outlineAndCover.ts';
import { coverAreaWords, moveWords } from '#words/coverPlan.ts';
import { coverCaution, coverSays } from '#words/coverTheOldShape.ts';
import { levelLineSays } from '#words/levelLine.ts';
import { poseCaution, poseSays } from '#words/pose.ts';

test('[hand] the placing marks the phone starts with are those of the wide-nosed face', () => {
  for (const named of namedMarks) {
    const key = placingKeys.find((name) => name === named.key);
    if (key) expect(wideNoseMarks[key], key).toEqual(pointOf(wideNoseFace.markSet, named));
  }
  expect(placingKeys).toHaveLength(14);
});

test('[hand] the lesson on fronts stands answered: three anchors, one front, the right tail past its line, below its front and longer', () => {
  const start = startState(frontAndTail);
  const placing = frontAndTail.solve(start);
  if (!placing.ok) throw new Error(placing.reason);
  // Wings 18.6 and 21.8, corners 16 and 16. Line (20.2, −38) to (47, 1.6): 52.82 at 10.2 up; tail at 56.
  expect(placing.anchors['nose-wing'].bothMm).toBeCloseTo(20.2, 9);
  expect(placing.tails.right.insideLevelMm).toBeCloseTo(20.2 + (26.8 * 48.2) / 39.6 - 56, 9);
  expect(placing.lengthsApart.value).toBeCloseTo(-wideNoseFace.truth.longerMm, 9);
  const { answer, doubt } = frontAndTailSays(placing, start);
  expect(answer).toBe(
    'Nose wing 20.2 mm, inner corner 16.0, nostril 12.1. Start both fronts at 16.0 mm by the inner eye corner.',
  );
  expect(doubt).toContain('right 0.4 mm out, left 0.4 mm in');
  expect(doubt).toContain('The two wings are unequal by 3.2 mm');
  expect(doubt).toContain('Right tail: 3.2 mm past the line and 1.2 mm below the front’s lower edge.');
  expect(doubt).toContain('Left tail: keeps all three checks.');
  expect(doubt).toContain('the right is 3.4 mm longer');
});

test('[hand] the lesson on the outline stands answered: no thickness shown to differ, the left arch 1.4 mm higher', () => {
  const start = startState(outlineAndCover);
  expect(stationsOf(start)).toEqual([0.25, 0.5, 0.75, 0.9]);
  expect(stationsOf({ station: 50 })).toEqual([0.25, 0.5, 0.75]);
  expect(stationsOf({ station: 10 })).toEqual([0.1, 0.25, 0.5, 0.75]);
  const report = outlineAndCover.solve(start);
  if (!report.ok) throw new Error(report.reason);
  const { right } = browsOnLevelFace(start);
  expect(right).toMatchObject({ archTop: { uMm: 41.3, vMm: 19.8 }, outerCorner: { uMm: 47, vMm: 1.6 } });
  const arches = report.checks.find(({ id }) => id === 'level-archTop');
  expect(arches).toMatchObject({ verdict: 'differs', value: { value: expect.closeTo(1.4, 9) } });
  const { answer, doubt } = outlineSays(report, start);
  expect(answer).toBe('No difference in thickness is shown at 4 stations.');
  expect(doubt).toContain('arches (left 1.4 mm higher)');
  expect(doubt).toMatch(/^At 90 %, straight across: \d\.\d mm right, \d\.\d left; straight up would read/);
});

test('[hand] an outline that is none says why, and which side', () => {
  const start = startState(outlineAndCover);
  const state = { ...start, archTopR: { xMm: -41.3, yMm: 13 } };
  const { answer } = outlineSays(outlineAndCover.solve(state), state);
  expect(answer).toBe('The right marks make no outline. The upper edge passes under the lower edge.');
});

test('[hand] a thicker arch is told with its station and side', () => {
  const start = startState(outlineAndCover);
  const state = { ...start, archTopL: { xMm: 41.3, yMm: 24 } };
  const { answer } = outlineSays(outlineAndCover.solve(state), state);
  expect(answer).toMatch(/; thickness at half \(left \d\.\d mm thicker\)/);
});

test('[hand] a level line: 1° over 82 mm makes 1.4 mm, half a degree is level enough, 2 mm could be a tilt of 1.4°', () => {
  const start = startState(levelLine);
  const { answer, doubt } = levelLineSays(levelLine.solve(start), start);
  expect(answer).toBe('A line 1.0° off level makes 1.4 mm over 82 mm.');
  expect(doubt).toContain('0.75 mm, so this tilt alone would pass for a real difference.');
  // 0.7464 / 82 is the sine of 0.52°; 0.7464 × 150 / 82 = 1.37.
  expect(doubt).toContain('Hold the line within 0.5°: one end of a 150 mm thread at most 1.4 mm too high.');
  expect(doubt).toContain('The 2.0 mm you read could be a tilt of 1.4° and nothing else.');
  const little = { ...start, tilt: 0.5, seen: 0 };
  expect(levelLineSays(levelLine.solve(little), little).doubt).toMatch(
    /so this tilt hides inside your reading error\. Hold .* too high\.$/,
  );
  const much = { ...start, span: 20, seen: 20 };
  expect(levelLineSays(levelLine.solve(much), much).doubt).toContain('a tilt of 90.0°');
});

test('[hand] pose starts from plain numbers that are the sum’s own: the left tail seems 1.8 mm nearer, the front 0.8 further out', () => {
  const seen = pose.solve(startState(pose));
  if (!seen.ok || !poseStart.ok) throw new Error('the start is a picture that can be read');
  const numbers = (value: unknown): readonly number[] =>
    typeof value === 'number' ? [value] : Object.values(value ?? {}).flatMap(numbers);
  expect(Object.keys(poseStart).sort()).toEqual(Object.keys(seen).sort());
  const [start, sum] = [numbers(poseStart), numbers(seen)];
  for (const [i, value] of sum.entries())
    expect(Math.abs(value - (start[i] ?? Number.NaN)), String(i)).toBeLessThan(6e-5);
  const { answer, doubt } = poseSays(seen, startState(pose));
  expect(answer).toBe(
    'This face is exactly symmetric. In this picture the left tail seems 1.8 mm nearer the midline and the left front 0.8 mm further out: do not judge widths.',
  );
  expect(doubt).toBe('Heights, read along the face, differ by 0.1 mm at most.');
});

test('[hand] each pose is told in words: tilt, nod, nearness, a mirrored picture', () => {
  const start = { ...startState(pose), turn: 0 };
  const says = (part: Partial<typeof start>) => {
    const state = { ...start, ...part };
    return `${Object.values(poseSays(pose.solve(state), state)).join(' ')} ${poseCaution(state) ?? ''}`;
  };
  expect(says({})).toContain('the two sides seem equally wide');
  expect(says({ tilt: 2 })).toContain(
    'Along the picture’s edge the left tail seems 4.0 mm higher: that is the tilt.',
  );
  expect(says({ nod: 10 })).toContain(
    'The tail stands 5.6 mm below the front; straight, it stands 2.6 mm below.',
  );
  expect(says({ nod: -10 })).toContain('The tail stands 0.5 mm above the front');
  expect(says({ distance: 30 })).toContain('From 30 cm the brow looks 40.7 mm long, not 43.3.');
  expect(says({ turn: 6, distance: 30 })).toContain('mm at most: too much to use.');
  expect(says({ flip: 'mirrored' })).toContain('names the wrong side');
  expect(says({ turn: -3 })).toContain(
    'the left tail seems 1.8 mm further out and the left front 0.8 mm nearer the midline',
  );
});

test('[hand] cover of the old shape opens on the ferry pilot: 1.8 mm above the right upper edge stay outside, the limit holds, growth is said', () => {
  const start = startState(coverTheOldShape);
  const { answer, doubt } = coverSays(coverTheOldShape.solve(start));
  expect(answer).toContain(
    'Lighten first, or leave visible: old work stands 1.8 mm above the right upper edge',
  );
  expect(doubt).toContain('the limit on raising the right arch top');
  expect(doubt).toContain('Growth since the old work: right +');
  const wide = coverTheOldShape.solve({ ...start, raise: 6, thickness: 20, growth: 200 });
  expect(coverSays(wide).answer).toContain('The old shape fits');
  expect(coverCaution(wide)).toBeUndefined();
  expect(coverSays(coverTheOldShape.solve({ ...start, skin: 'itchy' })).answer).toBe(
    'Stop: the skin over the old work is itchy. A doctor looks first.',
  );
  expect(coverSays(coverTheOldShape.solve({ ...start, thickness: 2 })).answer).toBe(
    'The limits contradict each other: no outline keeps them all.',
  );
  expect(moveWords({ byMm: 1.04, halfMm: 0.51, isLeft: false })).toBe('raise 1.0 mm (± 0.5)');
  expect(moveWords({ byMm: -0.6, halfMm: 0.5, isLeft: false })).toBe('lower 0.6 mm (± 0.5)');
  expect(moveWords({ byMm: 0.2, halfMm: 0.5, isLeft: true })).toBe('leave');
});

test('[hand] an area that is not nothing is never printed as nothing', () => {
  expect([0, 0.01, 0.04, 0.05, 0.4, 9.94, 12.4].map((mm2) => coverAreaWords(mm2))).toEqual([
    '0.0',
    'less than 0.1',
    'less than 0.1',
    '0.1',
    '0.4',
    '9.9',
    '12',
  ]);
});

test('[hand] cover: the skin is asked anew, whatever an old link says, and the rest of that link is read', () => {
  const { state, refused } = fromAddress(coverTheOldShape, 'raise=2.5&skin=itchy&oldArchTopR=-41.3_22.3');
  expect([state.raise, state.skin, state.oldArchTopR]).toEqual([2.5, 'quiet', { xMm: -41.3, yMm: 22.3 }]);
  expect(refused.map(({ key }) => key)).toEqual(['skin']);
  const scaly: typeof state = { ...state, skin: 'scaly' };
  expect(toAddress(coverTheOldShape, scaly)).not.toMatch(/skin|scaly/);
});

test('[hand] cover below its own doubt is as good as covered, small areas are shown, and sides left uneven are said', () => {
  const { state, refused } = fromAddress(
    coverTheOldShape,
    'oldArchTopR=-41.3_22.3&oldArchTopL=41.3_23.7&spread=0&raise=3&margin=0&error=0.1',
  );
  expect(refused).toEqual([]);
  const cover = coverTheOldShape.solve(state);
  const { answer, doubt } = coverSays(cover);
  expect(answer).toBe(
    'As good as covered. Less stands outside than anyone can measure: 0.2 mm above the left upper edge, 0.4 mm² in all.',
  );
  expect(doubt).toContain('The two sides stay uneven: the left arch top stands 1.2 mm higher.');
  expect(doubt).toContain('Corrections: ');
  // With a larger reading error the same numbers say no more; what stands out past the doubt is still named.
  const start = startState(coverTheOldShape);
  expect(coverSays(coverTheOldShape.solve(start)).answer).toMatch(
    /^Lighten first, or leave visible: old work stands 1\.8 mm/,
  );
  for (const raise of [0, 0.5, 1, 1.5, 2, 2.5, 3]) {
    const one = coverTheOldShape.solve({ ...state, raise });
    if (!one.ok) continue;
    const most = Math.max(
      ...(['right', 'left'] as const).map(
        (side) =>
          Math.max(
            one.sides[side].outside.aboveMm,
            one.sides[side].outside.belowMm,
            one.sides[side].outside.beforeFrontMm,
            one.sides[side].outside.beyondTailMm,
          ) - one.plan.moves[side].archTop.halfMm,
      ),
    );
    expect(coverSays(one).answer.includes('Lighten first'), String(raise)).toBe(most >= 0);
  }
});
