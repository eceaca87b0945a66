import { expect, test } from 'vitest';
import { mappingFacts } from '#lib/mapping/facts.ts';
import { browLengths } from '#lib/mapping/pose/browLength.ts';
import { falseDifferences } from '#lib/mapping/pose/falseDifferences.ts';
import { type HeadPose, straightPose } from '#lib/mapping/pose/headPose.ts';
import { scaleDoubtMm } from '#lib/mapping/pose/irisScale.ts';
import { straightBrow } from '#lib/mapping/pose/modelHead.ts';
import { turnLikeNoseOff } from '#lib/mapping/pose/turnSign.ts';

const value = (id: keyof typeof mappingFacts) => Number(mappingFacts[id].value);
const read = (pose: Partial<HeadPose>) => {
  const found = falseDifferences({ ...straightPose, ...pose });
  if (!found.ok) throw new Error(found.reason);
  return found;
};

test('[hand] computed facts of pictures are what the model head shows', () => {
  const [far, near] = [read({ turnDeg: 3 }), read({ turnDeg: 3, cameraMm: 300 })];
  expect(-far.outwardMm.tail).toBeCloseTo(value('turn-3-deg-tail-mm'), 2);
  expect(far.outwardMm.front).toBeCloseTo(value('turn-3-deg-front-mm'), 2);
  expect(-near.outwardMm.tail).toBeCloseTo(value('turn-3-deg-near-tail-mm'), 2);
  expect(-near.upMm.tail).toBeCloseTo(value('turn-3-deg-near-height-mm'), 2);
  expect(-near.upMm.arch).toBeCloseTo(value('turn-3-deg-near-height-mm'), 2);
  const turn = turnLikeNoseOff(2);
  expect(turn.ok && turn.turnDeg).toBeCloseTo(value('nose-off-like-turn-deg'), 1);
  expect(-read({ nodDeg: 10 }).tailOverFrontMm).toBeCloseTo(value('nod-up-tail-mm'), 1);
  expect(-read({}).tailOverFrontMm).toBeCloseTo(value('nod-none-tail-mm'), 1);
  expect(read({ nodDeg: -10 }).tailOverFrontMm).toBeCloseTo(value('nod-down-tail-mm'), 1);
  expect(read({ cameraMm: 300 }).lengthMm.left).toBeCloseTo(value('brow-from-30-cm-mm'), 1);
  expect(browLengths().straightMm).toBeCloseTo(value('brow-straight-mm'), 1);
  expect(browLengths().chordMm).toBeCloseTo(value('brow-chord-mm'), 1);
  expect(browLengths().alongSkinMm).toBeCloseTo(value('brow-along-skin-mm'), 1);
  const scale = { irisMm: value('iris-width-mm'), spreadMm: value('iris-width-spread-mm') };
  expect(scaleDoubtMm(45, scale, 2)).toBeCloseTo(value('iris-scale-doubt-mm'), 1);
  expect(scaleDoubtMm(1.5, scale, 2)).toBeCloseTo(value('iris-scale-small-doubt-mm'), 1);
});

test('[hand] the straight brow is the straight picture', () => {
  const straight = read({});
  expect(straightBrow.lengthMm).toBeCloseTo(straight.lengthMm.right, 9);
  expect(straightBrow.archShare).toBeCloseTo(straight.archShare.left, 9);
  expect(straightBrow.tailOverFrontMm).toBeCloseTo(straight.tailOverFrontMm, 9);
  expect(straightBrow.archShare).toBeCloseTo((39.866 - 13.956) / (57.21 - 13.956), 12);
});
