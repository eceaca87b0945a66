import { describe, expect, it } from 'vitest';
import { defaultFace } from '#lib/face/face.ts';
import { landmarksOf } from '#lib/face/faceMarks.ts';
import { middleInPicture, pictureForm, pictureLandmarks } from '#lib/face/pictureLandmarks.ts';
import { practiceFace } from '#lib/face/practiceFace.ts';
import { nearPicture, practicePicture, straightPicture } from '#lib/face/practicePicture.ts';
import { browMarks, facePairs, faceSingles } from '#lib/mapping/marks/markSet.ts';
import { straightPose } from '#lib/mapping/pose/headPose.ts';
import { turnSign } from '#lib/mapping/pose/turnSign.ts';
import { drawFrom, seedFrom } from '#lib/quantities/seed.ts';
import { readFace } from '#lib/mapping/compare/readFace.ts';
import { faceMarks } from '#lib/face/faceMarks.ts';
import { choices } from '../mapping/faces.ts';

const seeds = Array.from({ length: 300 }, (_, i) => i + 1);
const close = (a: readonly [number, number], b: readonly [number, number], within = 1e-9) => {
  expect(Math.abs(a[0] - b[0])).toBeLessThan(within);
  expect(Math.abs(a[1] - b[1])).toBeLessThan(within);
};

describe('the picture of a practice face', () => {
  it('[property] straight and from far, every landmark stays where it is', () => {
    for (const seed of seeds.slice(0, 20)) {
      const { landmarks } = practiceFace(seed, 3).face;
      const seen = pictureLandmarks(landmarks, straightPose);
      for (const side of ['right', 'left'] as const)
        for (const mark of [...facePairs, ...browMarks]) close(seen[side][mark], landmarks[side][mark]);
      for (const mark of faceSingles) close(seen.middle[mark], landmarks.middle[mark]);
    }
  });

  it('[property] a near picture is straight, from 240 to 400 mm, spread over that range, the same for a seed; widths may not be judged in it', () => {
    const far = seeds
      .map((seed) => nearPicture(seed))
      .map(({ kind, pose, mayJudgeWidths }) => {
        const { cameraMm, ...turned } = pose;
        const { cameraMm: _, ...straight } = straightPose;
        expect({ kind, mayJudgeWidths, turned }).toEqual({
          kind: 'near',
          mayJudgeWidths: false,
          turned: straight,
        });
        return Number(cameraMm);
      });
    expect(nearPicture(7)).toEqual(nearPicture(7));
    expect(Math.min(...far)).toBeGreaterThanOrEqual(240);
    expect(Math.min(...far)).toBeLessThan(245);
    expect(Math.max(...far)).toBeLessThanOrEqual(400);
    expect(Math.max(...far)).toBeGreaterThan(395);
    expect(far.reduce((sum, mm) => sum + mm, 0) / far.length).toBeGreaterThan(310);
    expect(far.reduce((sum, mm) => sum + mm, 0) / far.length).toBeLessThan(330);
  });

  it('[property] a picture that is handed in is the one taken, and counts at level 4 alone', () => {
    for (const seed of seeds.slice(0, 20)) {
      expect(practiceFace(seed, 4, nearPicture(seed)).picture).toEqual(nearPicture(seed));
      expect(practiceFace(seed, 4)).toEqual(practiceFace(seed, 4, practicePicture(seed)));
      expect(practiceFace(seed, 3, nearPicture(seed))).toEqual(practiceFace(seed, 3));
    }
  });

  it('[hand] a turn of 30° moves a mark by half its distance before the axis: the glabella lies 53.853 mm before it', () => {
    const seen = pictureLandmarks(defaultFace.landmarks, { ...straightPose, turnDeg: 30 });
    const { middle, left, right } = defaultFace.landmarks;
    close(seen.middle.glabella, [53.853 / 2, middle.glabella[1]]);
    close(seen.middle.subnasale, [60.583 / 2, middle.subnasale[1]]);
    const cos = Math.cos(Math.PI / 6);
    close(seen.left.tail, [left.tail[0] * cos + 28.309 / 2, left.tail[1]]);
    close(seen.right.tail, [right.tail[0] * cos - 28.309 / 2, right.tail[1]]);
    close(middleInPicture(9, { ...straightPose, turnDeg: 30 }), [53.853 / 2, 9]);
  });

  it('[hand] a camera at 300 mm draws the tail, 9.954 mm behind the pupils, 300/309.954 as large, the pupils true', () => {
    const seen = pictureLandmarks(defaultFace.landmarks, { ...straightPose, cameraMm: 300 });
    const { left, right } = defaultFace.landmarks;
    close(seen.left.tail, [(left.tail[0] * 300) / 309.954, (left.tail[1] * 300) / 309.954]);
    close(seen.right.frontTop, [(right.frontTop[0] * 300) / 285.103, (right.frontTop[1] * 300) / 285.103]);
    close(seen.right.pupil, right.pupil);
    const { skullMm, cheekMm, jawMm } = pictureForm(defaultFace.form, 300);
    expect(cheekMm).toBeCloseTo((67 * 300) / 345, 9);
    expect(jawMm).toBeCloseTo((54 * 300) / 345, 9);
    expect(skullMm).toBeCloseTo((73 + (73 * 300) / 345) / 2, 9);
    expect(pictureForm(defaultFace.form, 'far')).toEqual(defaultFace.form);
  });

  it('[library] the midline calculator, reading a symmetric face turned like this, finds front and tail differing with opposite signs', () => {
    let turned = 0;
    for (const seed of seeds) {
      const { kind, pose } = practicePicture(seed);
      if (kind !== 'turned') continue;
      turned++;
      const { landmarks } = practiceFace(seed, 0).face;
      const reading = readFace(faceMarks(pictureLandmarks(landmarks, pose), 0), choices);
      if (!reading.ok) throw new Error(reading.reason);
      const { frontTop, tail } = reading.brows;
      expect(
        turnSign({ frontMm: frontTop.outward.value, tailMm: tail.outward.value, leastMm: 0.3 }),
        `seed ${seed}`,
      ).toBe(pose.turnDeg > 0 ? 'left' : 'right');
    }
    expect(turned).toBeGreaterThan(110);
    expect(turned).toBeLessThan(190);
  });
});

describe('level 4', () => {
  it('[property] the same person as at level 3, photographed; lower levels are drawn straight and may be judged', () => {
    for (const seed of seeds) {
      const [three, four] = [practiceFace(seed, 3), practiceFace(seed, 4)];
      expect(three.picture).toBe(straightPicture);
      expect(three.picture.mayJudgeWidths).toBe(true);
      expect(four.picture).toEqual(practicePicture(seed));
      expect(four.picture.mayJudgeWidths).toBe(false);
      expect(four.face.landmarks).toEqual(pictureLandmarks(three.face.landmarks, four.picture.pose));
      expect({ ...four.truth, midlineXAtBrowMm: 0, browHeightMm: 0 }).toEqual({
        ...three.truth,
        midlineXAtBrowMm: 0,
        browHeightMm: 0,
      });
      expect(four).toEqual(practiceFace(seed, 4));
    }
  });

  it('[property] turned by 4 to 9 degrees either way from 1.5 m, or straight from 24 to 40 cm', () => {
    const kinds = new Set<string>();
    for (const seed of seeds) {
      const { kind, pose } = practicePicture(seed);
      expect(pose.nodDeg).toBe(0);
      expect(pose.tiltDeg).toBe(0);
      kinds.add(`${kind} ${Math.sign(pose.turnDeg)}`);
      if (kind === 'turned') {
        expect(Math.abs(pose.turnDeg)).toBeGreaterThanOrEqual(4);
        expect(Math.abs(pose.turnDeg)).toBeLessThanOrEqual(9);
        expect(pose.cameraMm).toBe(1500);
      } else {
        expect(pose.turnDeg).toBe(0);
        expect(pose.cameraMm).toBeGreaterThanOrEqual(240);
        expect(pose.cameraMm).toBeLessThanOrEqual(400);
      }
    }
    expect([...kinds].sort()).toEqual(['near 0', 'turned -1', 'turned 1']);
    const near = seeds.map((seed) => practicePicture(seed).pose.cameraMm).filter((mm) => mm !== 1500);
    expect(Math.min(...near.map(Number))).toBeLessThan(260);
    expect(Math.max(...near.map(Number))).toBeGreaterThan(380);
  });

  it('[property] the drawing stands on the marks: landmarks come back from the marks in the picture', () => {
    for (const seed of seeds.slice(0, 60)) {
      const { face, markSet } = practiceFace(seed, 4);
      const back = landmarksOf(markSet, face.rollDeg);
      for (const side of ['right', 'left'] as const)
        for (const mark of [...facePairs, ...browMarks]) close(back[side][mark], face.landmarks[side][mark]);
      for (const mark of faceSingles) close(back.middle[mark], face.landmarks.middle[mark]);
    }
  });

  it('[hand] the midline of the key is where the glabella’s plane shows it, at the mean height of the brow marks, rolled with the head', () => {
    for (const seed of seeds.slice(0, 60)) {
      const { truth, picture, face } = practiceFace(seed, 4);
      const upright = practiceFace(seed, 3).face.landmarks;
      const heights = browMarks.flatMap((mark) => [upright.right[mark][1], upright.left[mark][1]]);
      const v = heights.reduce((sum, height) => sum + height, 0) / heights.length;
      const turn = (picture.pose.turnDeg * Math.PI) / 180;
      const camera = Number(picture.pose.cameraMm);
      const size = camera / (camera - (53.853 * Math.cos(turn) - 38.263));
      const [x, y] = [53.853 * Math.sin(turn) * size, v * size];
      const roll = (face.rollDeg * Math.PI) / 180;
      expect(truth.midlineXAtBrowMm).toBeCloseTo(x * Math.cos(roll) - y * Math.sin(roll), 9);
      expect(truth.browHeightMm).toBeCloseTo(y * Math.cos(roll) + x * Math.sin(roll), 9);
    }
  });

  it('[hand] solvable where true and seen heights both lie outside 0.96 to 2.96 of one uncertainty, and on the same side of 1.96', () => {
    // One reading to 0.3 mm; pencil 0.25, caliper 0.05, thread 0.25 mm each way; left minus right.
    const u = Math.SQRT2 * Math.hypot(0.3, Math.hypot(0.25, 0.05, 0.25) / Math.sqrt(3));
    const isSettled = (mm: number) => Math.abs(mm) < 0.96 * u || Math.abs(mm) > 2.96 * u;
    const isReal = (mm: number) => Math.abs(mm) > 1.96 * u;
    const cases = new Set<string>();
    for (const seed of seeds) {
      const {
        truth,
        face: {
          landmarks: { left, right },
        },
        solvable,
      } = practiceFace(seed, 4);
      const seenMm = browMarks.reduce((sum, mark) => sum + left[mark][1] - right[mark][1], 0) / 5;
      const [isTrue, isSeen] = [truth.browHeightDifferenceMm, seenMm].map(isSettled);
      const isSame = isReal(truth.browHeightDifferenceMm) === isReal(seenMm);
      cases.add(`${isTrue} ${isSeen} ${isSame}`);
      expect(solvable, `seed ${seed}`).toBe(isTrue && isSeen && isSame);
    }
    expect(cases.size).toBeGreaterThan(3);
  });

  it('[hand] a seed’s picture stays its picture: kind, side and share are drawn in this order by a word of its own', () => {
    for (const seed of seeds.slice(0, 40)) {
      const draw = drawFrom(seedFrom('picture', seed));
      const [kind, side, share] = [draw() < 0.5 ? 'turned' : 'near', draw() < 0.5 ? -1 : 1, draw()];
      const found = practicePicture(seed);
      expect(found.kind).toBe(kind);
      if (kind === 'turned') expect(found.pose.turnDeg).toBeCloseTo(side * (4 + 5 * share), 9);
      else expect(found.pose.cameraMm).toBeCloseTo(240 + 160 * share, 9);
    }
  });

  it('[property] solvable only where the picture leaves the verdict on the height as it is', () => {
    let lost = 0;
    for (const seed of seeds) {
      const [three, four] = [practiceFace(seed, 3), practiceFace(seed, 4)];
      if (four.solvable) expect(three.solvable).toBe(true);
      if (three.solvable && !four.solvable) lost++;
    }
    expect(lost).toBeGreaterThan(0);
    expect(lost).toBeLessThan(60);
  });

  it('[property] stays in sane ranges and in order', () => {
    for (const seed of seeds) {
      const { landmarks, form } = practiceFace(seed, 4).face;
      for (const side of ['right', 'left'] as const) {
        const m = landmarks[side];
        expect(m.frontLower[0]).toBeLessThan(m.archTop[0]);
        expect(m.archTop[0]).toBeLessThan(m.tail[0]);
        expect(m.innerCorner[0]).toBeLessThan(m.pupil[0]);
        expect(m.pupil[0]).toBeLessThan(m.outerCorner[0]);
        expect(m.tail[0]).toBeLessThan(form.skullMm + 14);
      }
    }
  });
});
