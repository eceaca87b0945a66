import { mat4, vec3 } from 'gl-matrix';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { noddedSolid, rolledSolid, solidPoint, turnedSolid, type SolidPoint } from '#lib/geometry/solid.ts';
import { browLengths } from '#lib/mapping/pose/browLength.ts';
import { fakedHeightMm } from '#lib/mapping/level/fakedHeight.ts';
import { falseDifferences, type FalseDifferences } from '#lib/mapping/pose/falseDifferences.ts';
import { posedSolid, straightPose, type HeadPose } from '#lib/mapping/pose/headPose.ts';
import { betweenPupils, depthMm, pairOnHead, singleOnHead } from '#lib/mapping/pose/modelHead.ts';
import { pictureOf } from '#lib/mapping/pose/pinhole.ts';
import { posedMarks } from '#lib/mapping/pose/posedMarks.ts';
import { canonicalFace } from '#lib/tables/canonicalFace.ts';
import { real } from '#tests/tools/real.ts';

function read(pose: Partial<HeadPose>): FalseDifferences {
  const found = falseDifferences({ ...straightPose, ...pose });
  if (!found.ok) throw new Error(found.reason);
  return found;
}
const near = (value: number, printed: number, within: number) =>
  expect(Math.abs(value - printed), `${value} against ${printed}`).toBeLessThanOrEqual(within);
const radians = (deg: number) => (deg * Math.PI) / 180;

/** Worked out beforehand on the same head, by another program. */
describe('the pose table', () => {
  test.each([
    ['far' as const, { front: 0.79, arch: -0.1, tail: -1.83 }, { front: -0.03, arch: -0.07, tail: -0.1 }],
    [300, { front: 1.08, arch: -0.5, tail: -2.93 }, { front: -0.18, arch: -0.52, tail: -0.52 }],
  ])('[table] a turn of 3° before a camera at %s', (cameraMm, outward, up) => {
    const { outwardMm, upMm } = read({ turnDeg: 3, cameraMm });
    for (const at of ['front', 'arch', 'tail'] as const) {
      near(outwardMm[at], outward[at], 0.0055);
      near(upMm[at], up[at], 0.0055);
    }
  });

  test.each([
    [10, -5.6],
    [0, -2.6],
    [-10, 0.5],
  ])('[table] chin up by %d°: tail against front, lower marks, %d mm', (nodDeg, printed) => {
    near(read({ nodDeg }).tailOverFrontMm, printed, 0.051);
  });

  test.each([
    ['far' as const, 43.25, 0.599],
    [500, 41.7, 0.623],
    [300, 40.7, 0.64],
  ])('[table] camera at %s: length %d mm, arch share %d', (cameraMm, lengthMm, share) => {
    const seen = read({ cameraMm });
    for (const side of ['right', 'left'] as const) {
      near(seen.lengthMm[side], lengthMm, 0.051);
      near(seen.archShare[side], share, 0.00051);
    }
  });

  test('[table] three lengths of one brow: 43.3 straight, 50.5 chord, 53.1 along the skin', () => {
    const { straightMm, chordMm, alongSkinMm } = browLengths();
    near(straightMm, 43.3, 0.05);
    near(chordMm, 50.5, 0.05);
    near(alongSkinMm, 53.1, 0.05);
  });
});

describe('the model head', () => {
  test('[hand] marks lie where the table has them; depth counts from the pupils', () => {
    expect(pairOnHead('tail', 'left')).toEqual({ xMm: 57.21, yMm: 42.546, zMm: 28.309 });
    expect(pairOnHead('archTop', 'right')).toEqual({ xMm: -39.866, yMm: 51.095, zMm: 44.663 });
    expect(pairOnHead('archLower', 'left')).toEqual({ xMm: 37.35, yMm: 45.082, zMm: 45.505 });
    expect(pairOnHead('frontLower', 'right')).toEqual({ xMm: -12.209, yMm: 41.422, zMm: 51.06 });
    expect(singleOnHead('chin')).toEqual({ xMm: 0, yMm: -94.034, zMm: 42.645 });
    expect(betweenPupils).toEqual({ xMm: 0, yMm: 26.358, zMm: 38.263 });
    near(depthMm('subnasale'), 60.583 - 38.263, 1e-12);
    near(depthMm('tail'), 28.309 - 38.263, 1e-12);
    near(depthMm('pupil'), 0, 1e-12);
  });
  test('[property] mirrors to the last digit: a straight picture shows no difference at all, from near or far', () => {
    for (const cameraMm of ['far', 1000, 500, 300, 200] as const) {
      const { outwardMm, upMm, upInPictureMm } = read({ cameraMm });
      for (const value of [outwardMm, upMm, upInPictureMm].flatMap(({ front, arch, tail }) => [
        front,
        arch,
        tail,
      ]))
        near(value, 0, 1e-12);
    }
  });
});

describe('the projection', () => {
  const angle = real(-25, 25);
  const cameras = fc.oneof(fc.constant('far' as const), real(200, 2000));
  const tops = [
    ...canonicalFace.left.browTop,
    ...canonicalFace.left.browBase,
    canonicalFace.middle.noseTip,
    canonicalFace.middle.chin,
  ].map(solidPoint);

  /** gl-matrix: rotate about y, then x, then z; camera on the line through the straight head's pupils. */
  function byMatrix(
    { xMm, yMm, zMm }: SolidPoint,
    { turnDeg, nodDeg, tiltDeg, cameraMm }: HeadPose,
  ): readonly [number, number] {
    const m = mat4.create();
    mat4.rotateZ(m, m, radians(tiltDeg));
    mat4.rotateX(m, m, radians(-nodDeg));
    mat4.rotateY(m, m, radians(turnDeg));
    const [x = 0, y = 0, z = 0] = vec3.transformMat4(vec3.create(), [xMm, yMm, zMm], m);
    if (cameraMm === 'far') return [x, y - 26.358];
    const eye = vec3.fromValues(0, 26.358, 38.263 + cameraMm);
    const view = mat4.lookAt(mat4.create(), eye, [0, 26.358, 0], [0, 1, 0]);
    const lens = mat4.perspectiveNO(mat4.create(), Math.PI / 2, 1, 1, 10_000);
    const [px = 0, py = 0] = vec3.transformMat4(
      vec3.create(),
      vec3.transformMat4(vec3.create(), [x, y, z], view),
      lens,
    );
    // A right angle of view: at the pupils half the picture is as wide as the camera is far.
    return [px * cameraMm, py * cameraMm];
  }

  test('[library] turn, nod, tilt and camera agree with gl-matrix', () => {
    fc.assert(
      fc.property(
        angle,
        angle,
        angle,
        cameras,
        fc.constantFrom(...tops),
        (turnDeg, nodDeg, tiltDeg, cameraMm, point) => {
          const pose = { turnDeg, nodDeg, tiltDeg, cameraMm };
          const [x, y] = byMatrix(point, pose);
          const ours = pictureOf(posedSolid(point, pose), betweenPupils, cameraMm);
          // gl-matrix computes in single precision.
          near(ours.xMm, x, 2e-3);
          near(ours.yMm, y, 2e-3);
        },
      ),
    );
  });

  test('[hand] quarter turns: the nose to the left, up; the left ear up', () => {
    const at = (xMm: number, yMm: number, zMm: number) => ({ xMm, yMm, zMm });
    const close = (a: SolidPoint, b: SolidPoint) => [
      near(a.xMm, b.xMm, 1e-12),
      near(a.yMm, b.yMm, 1e-12),
      near(a.zMm, b.zMm, 1e-12),
    ];
    close(turnedSolid(at(1, 2, 3), 90), at(3, 2, -1));
    close(noddedSolid(at(1, 2, 3), 90), at(1, 3, -2));
    close(rolledSolid(at(1, 2, 3), 90), at(-2, 1, 3));
  });

  test('[hand] similar triangles: 10 mm nearer than the pupils at 200 mm is drawn 200/190 as large', () => {
    const point = { xMm: 19, yMm: 26.358 + 38, zMm: 38.263 + 10 };
    const seen = pictureOf(point, betweenPupils, 200);
    near(seen.xMm, 20, 1e-12);
    near(seen.yMm, 40, 1e-12);
    expect(pictureOf(point, betweenPupils, 'far').xMm).toBe(19);
  });

  test('[property] a far enough camera is the far camera', () => {
    for (const turnDeg of [-8, 3, 12]) {
      const [far, distant] = [read({ turnDeg, nodDeg: 4 }), read({ turnDeg, nodDeg: 4, cameraMm: 1e8 })];
      near(far.outwardMm.tail, distant.outwardMm.tail, 1e-4);
      near(far.tailOverFrontMm, distant.tailOverFrontMm, 1e-4);
    }
  });

  test('[property] the straight pupils lie at height 0 and keep their distance, however near the camera', () => {
    for (const cameraMm of ['far', 250] as const) {
      const { pupil } = posedMarks({ ...straightPose, cameraMm }).pairs;
      expect(pupil).toEqual({ right: { xMm: -31.818, yMm: 0 }, left: { xMm: 31.818, yMm: 0 } });
    }
  });
});

describe('what a pose fakes', () => {
  test('[property] turning the other way exchanges the sides', () => {
    fc.assert(
      fc.property(
        real(0.5, 20),
        fc.oneof(fc.constant('far' as const), real(200, 900)),
        (turnDeg, cameraMm) => {
          const [one, other] = [read({ turnDeg, cameraMm }), read({ turnDeg: -turnDeg, cameraMm })];
          for (const at of ['front', 'arch', 'tail'] as const) {
            near(one.outwardMm[at], -other.outwardMm[at], 1e-9);
            near(one.upMm[at], -other.upMm[at], 1e-9);
          }
          near(one.lengthMm.left, other.lengthMm.right, 1e-9);
          near(one.archShare.right, other.archShare.left, 1e-9);
          near(one.tailOverFrontMm, other.tailOverFrontMm, 1e-9);
        },
      ),
    );
  });

  test('[property] a nod alone, or nearness alone, fakes no difference between the sides', () => {
    for (const pose of [{ nodDeg: 12 }, { nodDeg: -7, cameraMm: 250 }, { cameraMm: 220 }]) {
      const { outwardMm, upMm } = read(pose);
      for (const value of [...Object.values(outwardMm), ...Object.values(upMm)]) near(value, 0, 1e-12);
    }
  });

  test('[hand] a tilt alone fakes heights against the edge only: apart × sin, none along the face, far camera', () => {
    const { outwardMm, upMm, upInPictureMm } = read({ tiltDeg: 2 });
    near(upInPictureMm.arch, 2 * 39.866 * Math.sin(radians(2)), 1e-9);
    near(upInPictureMm.tail, 2 * 57.21 * Math.sin(radians(2)), 1e-9);
    near(upInPictureMm.front, fakedHeightMm(2 * 13.956, 2), 1e-9);
    for (const value of [...Object.values(outwardMm), ...Object.values(upMm)]) near(value, 0, 1e-9);
  });

  test('[hand] refused: a camera under 200 mm, angles over 30°, what is not a number', () => {
    expect(falseDifferences({ ...straightPose, cameraMm: 199.9 })).toEqual({
      ok: false,
      reason: 'camera-too-near',
    });
    expect(falseDifferences({ ...straightPose, cameraMm: 200 }).ok).toBe(true);
    expect(falseDifferences({ ...straightPose, cameraMm: Number.NaN })).toEqual({
      ok: false,
      reason: 'camera-too-near',
    });
    for (const angles of [
      { turnDeg: 30.1 },
      { turnDeg: -30.1 },
      { nodDeg: 30.1 },
      { nodDeg: -30.1 },
      { tiltDeg: 30.1 },
      { tiltDeg: -30.1 },
      { turnDeg: Number.NaN },
    ]) {
      expect(falseDifferences({ ...straightPose, ...angles })).toEqual({
        ok: false,
        reason: 'turned-too-far',
      });
    }
    expect(falseDifferences({ turnDeg: 30, nodDeg: -30, tiltDeg: 30, cameraMm: 'far' }).ok).toBe(true);
  });
});
