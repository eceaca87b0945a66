import { outlineOf } from '#lib/mapping/outline/outline.ts';
import { thicknessAtStation } from '#lib/mapping/outline/station.ts';
import { worked } from '../worked.ts';

/** The ferry pilot's first sketch, invented: its right tail falls more steeply than its left one. */
const pilotThickness = worked({
  id: 'pilot-thickness',
  inputs: {
    frontOut: 16,
    frontUp: 11,
    topOut: 16.6,
    topUp: 17.6,
    archOut: 41,
    archLowerOut: 40.2,
    tailOut: 56,
    share: 0.75,
    archRight: 24.4,
    archLowerRight: 17.9,
    tailRight: 11,
    archLeft: 21.4,
    archLowerLeft: 15.4,
    tailLeft: 13.2,
  },
  run: (given) => {
    const tenth = (mm: number) => Math.round(mm * 10) / 10;
    const read = (archUp: number, archLowerUp: number, tailUp: number) => {
      const at = (uMm: number, vMm: number) => ({ uMm, vMm });
      const outline = outlineOf({
        frontLower: at(given.frontOut, given.frontUp),
        frontTop: at(given.topOut, given.topUp),
        archTop: at(given.archOut, archUp),
        archLower: at(given.archLowerOut, archLowerUp),
        tail: at(given.tailOut, tailUp),
      });
      const thickness = thicknessAtStation(outline, 'frontLower', given.share);
      if (!thickness.ok) throw new Error('The worked example has no thickness.');
      const { lower, upper } = thickness;
      const [lowerOut, lowerUp] = [tenth(lower.uMm), tenth(lower.vMm)];
      const [upperOut, upperUp] = [tenth(upper.uMm), tenth(upper.vMm)];
      return {
        lowerOut,
        lowerUp,
        upperOut,
        upperUp,
        straightUp: tenth(thickness.straightUpMm),
        out: upperOut - lowerOut,
        up: upperUp - lowerUp,
      };
    };
    const right = read(given.archRight, given.archLowerRight, given.tailRight);
    const left = read(given.archLeft, given.archLowerLeft, given.tailLeft);
    return {
      rightOut: right.out,
      rightUp: right.up,
      rightStraightUp: right.straightUp,
      rightLowerOut: right.lowerOut,
      rightLowerUp: right.lowerUp,
      rightUpperOut: right.upperOut,
      rightUpperUp: right.upperUp,
      leftOut: left.out,
      leftUp: left.up,
      leftStraightUp: left.straightUp,
      leftLowerOut: left.lowerOut,
      leftLowerUp: left.lowerUp,
      leftUpperOut: left.upperOut,
      leftUpperUp: left.upperUp,
      seeming: right.straightUp - left.straightUp,
      left: Math.hypot(left.out, left.up),
      answer: Math.hypot(right.out, right.up),
    };
  },
  shown: { digits: 1, unit: 'mm' },
  facts: ['thickness-equal'],
});

/** Worked examples about the outline. */
export const outlineWorked = {
  'pilot-thickness': pilotThickness,
} as const;
