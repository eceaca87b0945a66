import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { hairAndBone } from '#calculators/hairAndBone.ts';
import { archPlacement } from '#calculators/archPlacement.ts';
import { fromLink } from '#components/calculator/frame/RefusedParts.tsx';
import { fromAddress } from '#calculators/address.ts';
import { calculators } from '#calculators/index.ts';
import { leaningNoseMarks } from '#calculators/leaningNoseMarks.ts';
import { levelFaceMarks } from '#calculators/levelFaceMarks.ts';
import { namedMarks, pointOf } from '#calculators/marks.ts';
import { levelLine } from '#calculators/levelLine.ts';
import { frontAndTail } from '#calculators/frontAndTail.ts';
import { coverTheOldShape } from '#calculators/coverTheOldShape.ts';
import { afterTheFirstPass } from '#calculators/afterTheFirstPass.ts';
import { measuringError } from '#calculators/measuringError.ts';
import { midlineAndSides } from '#calculators/midlineAndSides.ts';
import { whichHue } from '#calculators/whichHue.ts';
import { whichHueSays } from '#words/whichHue.ts';
import { findRecipe } from '#calculators/findRecipe.ts';
import { whyItHealed } from '#calculators/whyItHealed.ts';
import { mixByDrops } from '#calculators/mixByDrops.ts';
import { outlineAndCover } from '#calculators/outlineAndCover.ts';
import { pose } from '#calculators/pose.ts';
import { restsOn } from '#calculators/restsOn.ts';
import { skinReading } from '#calculators/skinReading.ts';
import { strokesAndDots } from '#calculators/strokesAndDots.ts';
import { twoReadings } from '#calculators/twoReadings.ts';
import { usualDifference } from '#calculators/usualDifference.ts';
import { factIds } from '#lib/catalogue.ts';
import { leaningNoseFace } from '#lib/face/demonstration.ts';
import { frontAndTailSays } from '#words/frontAndTail.ts';
import { levelFace } from '#lib/face/levelFace.ts';
import { hairAndBoneSays } from '#words/hairAndBone.ts';
import { archSays } from '#words/archPlacement.ts';
import { checkName, outlineSays } from '#words/outlineAndCover.ts';
import { heldByWords, moveWords } from '#words/coverPlan.ts';
import { coverCaution, coverSays } from '#words/coverTheOldShape.ts';
import { levelLineSays } from '#words/levelLine.ts';
import { afterTheFirstPassSays, skinCaution, stepWords } from '#words/afterTheFirstPass.ts';
import { measuringErrorCaution, measuringErrorRows, measuringErrorSays } from '#words/measuringError.ts';
import { midlineSays } from '#words/midline.ts';
import { recipeCaution, recipeSays } from '#words/findRecipe.ts';
import { mixCaution, mixSays } from '#words/mixByDrops.ts';
import { poseCaution, poseRows, poseSays } from '#words/pose.ts';
import { skinReadingCaution, skinReadingRows, skinReadingSays } from '#words/skinReading.ts';
import { strokesAlt, strokesCaution, strokesSays } from '#words/strokesAndDots.ts';
import { latelyCaution, twoReadingsSays } from '#words/twoReadings.ts';
import { mapLabel, whyCaution, whySays } from '#words/whyItHealed.ts';
import { usualSays } from '#words/usualDifference.ts';
import { described, describeOne } from './describeOne.ts';

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

test('[hand] a key given twice counts once, and its other value is named, once; an unknown key is named', () => {
  const { state, refused } = fromAddress(
    usualDifference,
    'difference=3&difference=4&difference=5&colour=red&place=arch&place=arch',
  );
  expect(state.difference).toBe(3);
  expect(refused.filter(({ key }) => key !== 'place')).toEqual([
    { key: 'difference', text: '4', refusal: { code: 'given-twice' } },
    { key: 'colour', text: 'red', refusal: { code: 'unknown-field' } },
  ]);
  expect(refused.filter(({ refusal }) => refusal.code === 'given-twice')).toHaveLength(1);
});

test('[hand] a key that every object inherits is named as it was typed, not as what it would find', () => {
  const labels: Record<string, string> = { difference: 'Difference' };
  const { sentences } = fromLink(
    usualDifference,
    'constructor=2&__proto__=1&difference=x',
    (name) => labels[name] ?? name,
  );
  expect(sentences.join(' ')).toContain('“constructor”');
  expect(sentences.join(' ')).toContain('“__proto__”');
  expect(sentences.join(' ')).toContain('Difference: this is not a number');
  expect(sentences.join(' ')).not.toMatch(/native code|object Object/);
});
