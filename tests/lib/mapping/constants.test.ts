import { expect, test } from 'vitest';
import { acceptedFalseAlarms } from '#lib/mapping/uncertainty/familyWise.ts';
import { tukeyConstant } from '#lib/mapping/midline/robustMidline.ts';
import { repeatabilityFactor } from '#lib/mapping/uncertainty/technicalError.ts';

// Facts read these constants, so comparing the two would say nothing: here is what the sources print.
test('[table] constants of the formulas are those that their sources print', () => {
  expect(tukeyConstant).toBe(4.685);
  expect(repeatabilityFactor).toBe(2.77);
  expect(repeatabilityFactor).toBeCloseTo(1.96 * Math.SQRT2, 2);
  expect(acceptedFalseAlarms).toBe(0.05);
});
