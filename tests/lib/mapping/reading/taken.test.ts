import { expect, test } from 'vitest';
import type { Taken } from '#lib/mapping/marks/markSet.ts';
import { unfitToMap } from '#lib/mapping/compare/unfitToMap.ts';
import { unlikeParts } from '#lib/mapping/compare/unlikeParts.ts';
import { whichToMap } from '#lib/mapping/compare/whichToMap.ts';

const rest: Taken = { pose: 'rest', posture: 'sitting', skin: 'normal' };
const poses = ['rest', 'eyes-closed', 'raised', 'frown'] as const;
const postures = ['sitting', 'lying'] as const;
const skins = ['normal', 'numb', 'swollen'] as const;
const all: readonly Taken[] = poses.flatMap((pose) =>
  postures.flatMap((posture) => skins.map((skin) => ({ pose, posture, skin }))),
);

test('[hand] unlike parts are named in the order pose, posture, skin', () => {
  expect(unlikeParts(rest, rest)).toEqual([]);
  expect(unlikeParts(rest, { ...rest, pose: 'eyes-closed' })).toEqual(['pose-differs']);
  expect(unlikeParts({ ...rest, posture: 'lying' }, rest)).toEqual(['posture-differs']);
  expect(unlikeParts(rest, { ...rest, skin: 'numb' })).toEqual(['skin-differs']);
  expect(unlikeParts({ ...rest, skin: 'numb' }, { ...rest, skin: 'swollen' })).toEqual(['skin-differs']);
  expect(unlikeParts(rest, { pose: 'frown', posture: 'lying', skin: 'swollen' })).toEqual([
    'pose-differs',
    'posture-differs',
    'skin-differs',
  ]);
});

test('[property] unlike is the same both ways round, and nothing is unlike itself', () => {
  for (const a of all) {
    expect(unlikeParts(a, { ...a })).toEqual([]);
    for (const b of all) expect(unlikeParts(a, b)).toEqual(unlikeParts(b, a));
  }
});

test('[hand] a reading is fit to map at rest, eyes open or closed, upright, on normal skin, and only then', () => {
  expect(all.filter((taken) => unfitToMap(taken).length === 0)).toEqual([
    rest,
    { ...rest, pose: 'eyes-closed' },
  ]);
  expect(unfitToMap({ ...rest, pose: 'raised' })).toEqual(['not-at-rest']);
  expect(unfitToMap({ ...rest, pose: 'frown' })).toEqual(['not-at-rest']);
  expect(unfitToMap({ ...rest, posture: 'lying' })).toEqual(['not-upright']);
  expect(unfitToMap({ ...rest, skin: 'numb' })).toEqual(['skin-not-normal']);
  expect(unfitToMap({ pose: 'frown', posture: 'lying', skin: 'swollen' })).toEqual([
    'not-at-rest',
    'not-upright',
    'skin-not-normal',
  ]);
});

test('[hand] which of two readings is mapped', () => {
  const raised: Taken = { ...rest, pose: 'raised' };
  const lying: Taken = { ...rest, posture: 'lying' };
  expect(whichToMap(rest, raised, 'nothing')).toEqual({ map: 'first' });
  expect(whichToMap(raised, rest, 'nothing')).toEqual({ map: 'second' });
  expect(whichToMap(rest, { ...rest, pose: 'eyes-closed' }, 'nothing')).toEqual({ map: 'either' });
  expect(whichToMap(raised, lying, 'nothing')).toEqual({ map: 'neither' });
});

test('[property] brows that are still changing are never mapped, however good the readings', () => {
  for (const a of all) {
    for (const because of ['toxin', 'unexplained'] as const)
      expect(whichToMap(a, rest, because)).toEqual({ map: 'not-yet', because });
  }
});
