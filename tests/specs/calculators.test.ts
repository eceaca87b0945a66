import { existsSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hairAndBone } from '#calculators/hairAndBone.ts';
import { archPlacement } from '#calculators/archPlacement.ts';
import { fromAddress, toAddress } from '#calculators/address.ts';
import { parsers } from '#calculators/parsers.ts';
import { calculators } from '#calculators/index.ts';
import { leaningNoseMarks } from '#calculators/leaningNoseMarks.ts';
import { levelFaceMarks } from '#calculators/levelFaceMarks.ts';
import { readMarkFile, writeMarkFile } from '#calculators/markFile.ts';
import { mostBytes } from '#calculators/openOurs.ts';
import { namedMarks, pointOf } from '#calculators/marks.ts';
import { changeSince } from '#calculators/changeSince.ts';
import { levelLine } from '#calculators/levelLine.ts';
import { frontAndTail } from '#calculators/frontAndTail.ts';
import { placingKeys, wideNoseMarks } from '#calculators/wideNoseMarks.ts';
import { coverTheOldShape } from '#calculators/coverTheOldShape.ts';
import { afterTheFirstPass } from '#calculators/afterTheFirstPass.ts';
import { measuringError } from '#calculators/measuringError.ts';
import { midlineAndSides } from '#calculators/midlineAndSides.ts';
import { whichHue } from '#calculators/whichHue.ts';
import { whichHueSays } from '#words/whichHue.ts';
import { findRecipe } from '#calculators/findRecipe.ts';
import { whyItHealed } from '#calculators/whyItHealed.ts';
import { mixByDrops } from '#calculators/mixByDrops.ts';
import { browsOnLevelFace } from '#calculators/browsOnLevelFace.ts';
import { outlineAndCover } from '#calculators/outlineAndCover.ts';
import { stationsOf } from '#calculators/outlineSums.ts';
import { pose } from '#calculators/pose.ts';
import { poseStart } from '#calculators/poseStart.ts';
import type { Calculator, State } from '#calculators/spec.ts';
import { libraryVersion } from '#lib/version.ts';
import { restsOn } from '#calculators/restsOn.ts';
import { startState } from '#calculators/startState.ts';
import { skinReading } from '#calculators/skinReading.ts';
import { mixAddress } from '#calculators/mixLink.ts';
import { strokesFor } from '#calculators/strokesLink.ts';
import { strokesAndDots } from '#calculators/strokesAndDots.ts';
import { twoReadings } from '#calculators/twoReadings.ts';
import { usualDifference } from '#calculators/usualDifference.ts';
import { strokesForShare } from '#lib/colour/coverage/coverage.ts';
import { strokeValues } from '#lib/colour/numbers/strokes.ts';
import { factIds } from '#lib/catalogue.ts';
import { skinPlausibility } from '#lib/colour/reading/skinPlausibility.ts';
import { leaningNoseFace } from '#lib/face/demonstration.ts';
import { wideNoseFace } from '#lib/face/wideNoseFace.ts';
import { frontAndTailSays } from '#words/frontAndTail.ts';
import { levelFace } from '#lib/face/levelFace.ts';
import { hairAndBoneSays } from '#words/hairAndBone.ts';
import { archSays } from '#words/archPlacement.ts';
import { checkName, outlineSays } from '#words/outlineAndCover.ts';
import { heldByWords, moveWords } from '#words/coverPlan.ts';
import { coverCaution, coverSays } from '#words/coverTheOldShape.ts';
import { keptSays } from '#words/keptReading.ts';
import { levelLineSays } from '#words/levelLine.ts';
import { afterTheFirstPassSays, skinCaution, stepWords } from '#words/afterTheFirstPass.ts';
import { measuringErrorCaution, measuringErrorRows, measuringErrorSays } from '#words/measuringError.ts';
import { midlineSays } from '#words/midline.ts';
import { recipeCaution, recipeSays } from '#words/findRecipe.ts';
import { mixCaution, mixSays } from '#words/mixByDrops.ts';
import { poseCaution, poseRows, poseSays } from '#words/pose.ts';
import { refusalSentence } from '#words/refusal.ts';
import { skinReadingCaution, skinReadingRows, skinReadingSays } from '#words/skinReading.ts';
import { percent, strokesAlt, strokesCaution, strokesSays } from '#words/strokesAndDots.ts';
import { latelyCaution, twoReadingsSays } from '#words/twoReadings.ts';
import { mapLabel, whyCaution, whySays } from '#words/whyItHealed.ts';
import { usualSays } from '#words/usualDifference.ts';

/** Text that a hostile or broken link might hold. */
const hostile = fc.oneof(
  fc.string({ maxLength: 40 }),
  fc.string({ unit: 'binary', maxLength: 20 }),
  fc.constantFrom(
    'NaN',
    'Infinity',
    '-Infinity',
    '1e309',
    '__proto__',
    'constructor',
    '<script>',
    '%00',
    '١٢٫٥',
    '1,234.5',
    '--5',
    '0x10',
    '1_2_3',
    '_',
    '5_',
    '_5',
    'null',
    '',
  ),
  fc.double().map(String),
  fc.tuple(fc.double(), fc.double()).map(([x, y]) => `${x}_${y}`),
  fc
    .array(fc.tuple(fc.integer({ min: -3000, max: 3000 }), fc.constantFrom('_', ' ', ',', ';', '\n', '*')), {
      maxLength: 30,
    })
    .map((parts) => parts.map(([number, mark]) => `${number / 10}${mark}`).join('')),
);

const described = new Set<string>();

/**
 * Different states whose sums are worked out for each calculator: heavy sums are bounded, addresses are not.
 */
const mostSolvedOf = (calculator: Readonly<{ id: string }>) =>
  ({ 'mix-by-drops': 150, 'find-a-recipe': 12, 'why-it-healed-this-way': 60, 'cover-the-old-shape': 300 })[
    calculator.id
  ] ?? 20_000;

function describeOne<S extends State, R>(
  calculator: Calculator<S, R>,
  says: (result: R, state: S) => string,
) {
  described.add(calculator.id);
  const keys = Object.keys(calculator.fields);
  const mostSolved = mostSolvedOf(calculator);
  const pairs = fc.array(fc.tuple(fc.oneof(fc.constantFrom(...keys), hostile), hostile), { maxLength: 6 });

  describe(calculator.id, () => {
    test('[property] 100,000 hostile addresses: a whole state, no throw, no NaN in the sentence', () => {
      // Most hostile addresses leave the start as it is: a state whose sentence was read is not read again.
      const read = new Set<string>();
      fc.assert(
        fc.property(
          fc.oneof(
            pairs.map((list) => new URLSearchParams(list).toString()),
            fc.string({ maxLength: 60 }),
          ),
          (query) => {
            const { state, refused } = fromAddress(calculator, query);
            if (Object.keys(state).length !== keys.length) return false;
            const address = toAddress(calculator, state);
            const isNew = !read.has(address) && read.size < mostSolved;
            read.add(address);
            const sentence =
              (isNew ? says(calculator.solve(state), state) : '') +
              refused.map(({ key, refusal }) => refusalSentence(key, refusal)).join(' ');
            return (
              !/NaN|undefined|Infinity(?! )|\[object/.test(sentence.replaceAll(query, '')) ||
              refused.some(({ key }) => /NaN|undefined|Infinity/.test(key))
            );
          },
        ),
        { numRuns: 100_000 },
      );
    }, 240_000);

    test('[property] an address brings back the same state', () => {
      const start = startState(calculator);
      expect(toAddress(calculator, start)).toBe('');
      for (const name in calculator.fields) {
        const { control } = calculator.fields[name];
        const others: readonly (string | number | { xMm: number; yMm: number })[] =
          control.kind === 'choice'
            ? control.options
            : control.kind === 'number'
              ? [control.lo, control.hi]
              : control.kind === 'pairs'
                ? [
                    '0_0',
                    `${control.lo}_${control.hi}*1.25_-0.5`,
                    Array.from({ length: control.most }, (_, i) => `${i}_${i + 0.5}`).join('*'),
                  ]
                : [
                    { xMm: control.x[0], yMm: control.y[1] },
                    { xMm: control.x[1], yMm: control.y[0] },
                    { xMm: 1.2, yMm: -3.4 },
                  ];
        for (const value of others) {
          const state = { ...start, [name]: value };
          expect(fromAddress(calculator, toAddress(calculator, state))).toEqual({ state, refused: [] });
        }
      }
    });

    test('[property] a saved file holds every field, starts too, and brings back the same state', () => {
      const start = startState(calculator);
      const content = writeMarkFile(calculator, start);
      const read = readMarkFile(content, [calculator.id]);
      if (!read.ok) throw new Error(read.reason);
      expect(Object.keys(read.file.fields)).toHaveLength(keys.length);
      expect(read.file).toMatchObject({ schema: 1, calculator: calculator.id, library: libraryVersion });
      expect(fromAddress(calculator, read.query)).toEqual({ state: start, refused: [] });
      expect(content.length).toBeLessThan(mostBytes / 10);
    });

    test('[hand] limits refuse just outside and accept the ends, in words that say what is accepted', () => {
      for (const name in calculator.fields) {
        const { control, read } = calculator.fields[name];
        if (control.kind !== 'number') continue;
        expect(read(String(control.lo), parsers).ok && read(String(control.hi), parsers).ok).toBe(true);
        for (const text of [String(control.lo - 0.001), String(control.hi + 0.001)]) {
          const outside = read(text, parsers);
          expect(outside.ok).toBe(false);
          if (!outside.ok)
            expect(refusalSentence('Field', outside.refusal)).toContain(
              `must be between ${control.lo} and ${control.hi}`.replaceAll('-', '−'),
            );
        }
      }
    });
  });
}

describeOne(midlineAndSides, (result) => Object.values(midlineSays(result)).join(' '));
describeOne(levelLine, (result, state) => Object.values(levelLineSays(result, state)).join(' '));
describeOne(frontAndTail, (result, state) => Object.values(frontAndTailSays(result, state)).join(' '));
describeOne(pose, (seen, state) =>
  [
    ...Object.values(poseSays(seen, state)),
    poseCaution(state) ?? '',
    ...(seen.ok ? poseRows(seen).map(({ fakes }) => fakes) : []),
  ].join(' '),
);
describeOne(afterTheFirstPass, ({ again }, { skin }) =>
  [
    ...Object.values(afterTheFirstPassSays(again)),
    skinCaution(skin),
    ...(again.ok ? Object.values(again.marks).map(stepWords) : []),
  ].join(' '),
);
describeOne(measuringError, (result, state) =>
  [
    ...Object.values(measuringErrorSays(result, state)),
    measuringErrorCaution(result),
    ...measuringErrorRows(result).map(({ value }) => value),
  ].join(' '),
);
describeOne(hairAndBone, (result, state) => Object.values(hairAndBoneSays(result, state)).join(' '));
describeOne(archPlacement, (result, state) => Object.values(archSays(result, state)).join(' '));
describeOne(twoReadings, (result, { lately }) =>
  [...Object.values(twoReadingsSays(result)), latelyCaution(lately) ?? ''].join(' '),
);
describeOne(whichHue, (result) => Object.values(whichHueSays(result)).join(' '));
describeOne(
  findRecipe,
  (result, state) =>
    `${Object.values(recipeSays(result, state.oldWork !== 'none')).join(' ')} ${recipeCaution(result) ?? ''}`,
);
describeOne(coverTheOldShape, (cover) =>
  [
    ...Object.values(coverSays(cover)),
    coverCaution(cover) ?? '',
    ...(cover.ok
      ? [...heldByWords(cover.plan.heldBy), ...Object.values(cover.plan.moves.right).map(moveWords)]
      : []),
  ].join(' '),
);
describeOne(
  mixByDrops,
  (result) => `${mixSays(result).answer} ${mixSays(result).doubt} ${mixCaution(result) ?? ''}`,
);
describeOne(whyItHealed, (result, state) =>
  [
    ...Object.values(whySays(result, state.error)),
    whyCaution(result),
    result.ok ? mapLabel(result) : '',
  ].join(' '),
);
describeOne(outlineAndCover, (report, state) =>
  [...Object.values(outlineSays(report, state)), ...(report.ok ? report.checks.map(checkName) : [])].join(
    ' ',
  ),
);
describeOne(skinReading, (result, { touch }) =>
  [
    ...Object.values(skinReadingSays(result)),
    skinReadingCaution(result, touch, 'like-the-measured'),
    ...skinReadingRows(result.reading).map(({ between }) => between),
  ].join(' '),
);
describeOne(usualDifference, (result, state) => Object.values(usualSays(result, state)).join(' '));
describeOne(
  strokesAndDots,
  (result, state) =>
    `${Object.values(strokesSays(result, state)).join(' ')} ${strokesCaution(result) ?? ''} ${strokesAlt(result)}`,
);

test('[hand] every calculator names the facts it rests on, and they exist', () => {
  expect(Object.keys(restsOn).sort()).toEqual(Object.keys(calculators).sort());
  for (const ids of Object.values(restsOn)) {
    expect(ids.length).toBeGreaterThan(0);
    for (const id of ids) expect(factIds).toContain(id);
  }
});

test('[hand] every calculator has a figure, a page, and its hostile addresses here', () => {
  const root = new URL('../../', import.meta.url);
  const figures = readFileSync(new URL('components/lesson/Calculator.astro', root), 'utf8');
  const missing = Object.keys(calculators).flatMap((id) => [
    ...(figures.includes(`id === '${id}'`)
      ? []
      : [`components/lesson/Calculator.astro does not show "${id}"`]),
    ...(existsSync(new URL(`content/calculators/${id}.mdx`, root))
      ? []
      : [`content/calculators/${id}.mdx is missing`]),
    ...(described.has(id) ? [] : [`tests/specs/calculators.test.ts has no describeOne for "${id}"`]),
  ]);
  expect(missing).toEqual([]);
});

test('[hand] ids are the keys they stand under', () => {
  for (const [id, calculator] of Object.entries(calculators)) expect(calculator.id).toBe(id);
});

test.each([
  { marks: leaningNoseMarks, markSet: leaningNoseFace.markSet },
  { marks: levelFaceMarks, markSet: levelFace.markSet },
])('[hand] the marks the phone starts with are those of the drawn face', ({ marks, markSet }) => {
  for (const named of namedMarks) expect(marks[named.key], named.key).toEqual(pointOf(markSet, named));
});

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

test('[hand] a key given twice counts once; an unknown key is named', () => {
  const { state, refused } = fromAddress(usualDifference, 'difference=3&difference=4&colour=red');
  expect(state.difference).toBe(3);
  expect(refused).toEqual([{ key: 'colour', text: 'red', refusal: { code: 'unknown-field' } }]);
});

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

test('[hand] skin reading starts on the violinist: 59.5° and 35.2°, three classes possible; touched skin widens; three readings narrow', () => {
  const start = startState(skinReading);
  const says = (part: Partial<typeof start>) =>
    Object.values(skinReadingSays(skinReading.solve({ ...start, ...part }))).join(' ');
  expect(says({})).toBe(
    'Hue angle 59.5°, typology angle 35.2°: “intermediate” in the scheme of Chardon and Del Bino. Hue lies between 51.3 and 67.2°. Which way it leans is not shown. The typology angle lies between 27.8 and 43.0°. With the doubt it may be “light”, “intermediate” or “tan”.',
  );
  // Lightness 60.9 to 63, yellow 16.3 to 17.9: arctan(10.9/17.9) and arctan(13/16.3).
  expect(says({ count: '3' })).toContain(
    'The typology angle lies between 31.3 and 38.6°. The class is sure.',
  );
  expect(says({ touch: 'touched' })).toContain('Hue lies between 41.2 and 78.7°.');
  expect(says({ touch: 'not-known' })).toBe(says({ touch: 'touched' }));
  expect(says({ b1: 2 })).toContain('outside the scale');
  expect(skinReadingCaution(skinReading.solve(start), 'untouched', 'like-the-measured')).toBeUndefined();
  expect(skinReadingCaution(skinReading.solve(start), 'touched', 'outside-the-measured')).toContain(
    'Wait until it looks',
  );
  expect(skinReadingCaution(skinReading.solve(start), 'untouched', 'outside-the-measured')).toContain(
    'gap in the measuring',
  );
  expect(
    skinPlausibility({ l: start.l1, a: start.a1, b: start.b1 }),
    'what the island shows before it has asked',
  ).toBe('like-the-measured');
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
    'Stop: the skin over the old work is itchy. A physician looks first.',
  );
  expect(coverSays(coverTheOldShape.solve({ ...start, thickness: 2 })).answer).toBe(
    'The limits contradict each other: no outline keeps them all.',
  );
  expect(moveWords({ byMm: 1.04, halfMm: 0.51, isLeft: false })).toBe('raise 1.0 mm (± 0.5)');
  expect(moveWords({ byMm: -0.6, halfMm: 0.5, isLeft: false })).toBe('lower 0.6 mm (± 0.5)');
  expect(moveWords({ byMm: 0.2, halfMm: 0.5, isLeft: true })).toBe('leave');
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

test('[hand] strokes and dots: the lesson stands answered, 30 and 58 %; crossing 26 and 44; dots 22 and 43; each with its words', () => {
  const start = startState(strokesAndDots);
  const says = (part: Partial<typeof start>) =>
    strokesSays(strokesAndDots.solve({ ...start, ...part }), { ...start, ...part });
  expect(says({}).answer).toBe('60 strokes cover 30\u00a0% of the brow fresh, and 58\u00a0% once spread.');
  // √(0.05² + 0.0625² + 0.1667² + 0.05215²) = 0.1930, e^ = 1.2129; with 0.2286 for the width 0.2485, e^ =
  // 1.2821.
  expect(says({}).doubt).toBe(
    '95 in 100: 25 to 36\u00a0% fresh, 46 to 75\u00a0% spread. 1.9 times as much skin is coloured, and nothing was added.',
  );
  expect(says({ made: 'crossing' }).answer).toBe(
    '60 strokes that cross cover 26\u00a0% of the brow fresh, and 44\u00a0% once spread.',
  );
  expect(says({ made: 'dots' }).answer).toBe(
    '8 dots in each square millimetre, 0.2 mm across, cover 22\u00a0% of the brow fresh, and 43\u00a0% once spread.',
  );
  expect(says({ count: 1 }).answer).toBe(
    'One stroke covers 0.5\u00a0% of the brow fresh, and 1.0\u00a0% once spread.',
  );
  expect(says({ spread: 0.18 }).doubt).not.toContain('times as much');
  expect(strokesCaution(strokesAndDots.solve(start))).toBeUndefined();
  expect(strokesCaution(strokesAndDots.solve({ ...start, count: 100 }))).toContain('hardly any bare skin');
  expect([percent(1), percent(0.999), percent(0.05)]).toEqual(['100\u00a0%', '99\u00a0%', '5.0\u00a0%']);
});

test('[property] coverage goes to the strokes and back by address: every whole per cent comes back at most one higher', () => {
  // 287.6 mm² × 0.6 ÷ (8 mm × 0.35 mm) = 61.6.
  expect(strokesFor(60).address).toBe('/calculators/strokes-and-dots/?count=62');
  const query = (address: string) => address.slice(address.indexOf('?'));
  for (let coverage = 5; coverage <= 100; coverage++) {
    const { exampleStrokeMm: lengthMm, exampleAreaMm2: areaMm2, strokeSpreadMm: widthMm } = strokeValues;
    expect(strokesFor(coverage).count).toBe(strokesForShare(coverage / 100, { lengthMm, widthMm, areaMm2 }));
    const there = fromAddress(strokesAndDots, query(strokesFor(coverage).address));
    expect(there.refused).toEqual([]);
    const back = fromAddress(mixByDrops, query(mixAddress(strokesAndDots.solve(there.state).spread.share)));
    expect(back.refused).toEqual([]);
    expect(back.state.coverage).toBeGreaterThanOrEqual(coverage);
    expect(back.state.coverage).toBeLessThanOrEqual(coverage + 1);
  }
  expect([mixAddress(0), mixAddress(2)]).toEqual([
    '/calculators/mix-by-drops/?coverage=5',
    '/calculators/mix-by-drops/?coverage=100',
  ]);
});
