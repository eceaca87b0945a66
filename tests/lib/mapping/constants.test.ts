import { expect, test } from 'vitest';
import { mappingFacts } from '#lib/mapping/facts.ts';
import { acceptedFalseAlarms } from '#lib/mapping/uncertainty/familyWise.ts';
import { tukeyConstant } from '#lib/mapping/midline/robustMidline.ts';
import { repeatabilityFactor } from '#lib/mapping/uncertainty/technicalError.ts';

test('[hand] constants of the formulas are those of the facts that stand behind them', () => {
  expect(tukeyConstant).toBe(mappingFacts['biweight-constant'].value);
  expect(repeatabilityFactor).toBe(mappingFacts['repeat-factor'].value);
  expect(acceptedFalseAlarms).toBe(mappingFacts['family-false-alarm'].value / 100);
});
