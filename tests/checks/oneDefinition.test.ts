import { describe, expect, it } from 'vitest';
import { practiceNorms } from '#lib/face/practiceNorms.ts';
import { mappingFacts } from '#lib/mapping/facts.ts';
import { familyCoverageFactor, falseAlarmRate } from '#lib/mapping/uncertainty/familyWise.ts';

// What pages print and what is computed must not part, where one is not read from the other.
describe('constants and facts', () => {
  it('[hand] say the same number', () => {
    expect(mappingFacts['factor-95'].value).toBeCloseTo(familyCoverageFactor(1), 3);
    expect(mappingFacts['factor-of-ten'].value).toBeCloseTo(
      familyCoverageFactor(mappingFacts['ten-comparisons'].value),
      2,
    );
    expect(mappingFacts['false-alarm-of-ten'].value).toBeCloseTo(
      100 * falseAlarmRate(mappingFacts['ten-comparisons'].value),
      1,
    );
  });
  it('[hand] hold for practice faces too', () => {
    expect(mappingFacts['pupils-apart-mm'].value).toBe(practiceNorms.pupilDistanceMm.mean);
    expect(mappingFacts['front-gap-mm'].value).toBe(practiceNorms.frontGapMm.mean);
    expect(mappingFacts['front-gap-spread-mm'].value).toBe(practiceNorms.frontGapMm.sd);
    expect(mappingFacts['height-difference-spread-mm'].value).toBe(practiceNorms.heightDifferenceMm.sd);
    expect(mappingFacts['roll-spread-deg'].value).toBe(practiceNorms.rollDeg.sd);
    expect(mappingFacts['nose-lean-spread-mm'].value).toBe(practiceNorms.noseLeanMm.sd);
  });
});
