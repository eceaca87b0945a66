import { type OldWork, oldWorks } from '#lib/colour/old/oldWorks.ts';
import { choiceField, numberField } from './fields.ts';

/**
 * The skin beside the brow and what lies in the brow already: the same fields in every calculator of colour.
 */
export const skinFields = {
  skinL: numberField('skinL', 63, { unit: '1', lo: 25, hi: 80, step: 1, decimals: 1 }),
  skinA: numberField('skinA', 10, { unit: '1', lo: 2, hi: 20, step: 1, decimals: 1 }),
  skinB: numberField('skinB', 19, { unit: '1', lo: 5, hi: 30, step: 1, decimals: 1 }),
  oldWork: choiceField<OldWork>('oldWork', 'none', oldWorks),
  depth: numberField('depth', 0.1, { unit: 'mm', lo: 0.06, hi: 0.3, step: 0.01, decimals: 2 }),
  coverage: numberField('coverage', 60, { unit: '%', lo: 5, hi: 100, step: 5, decimals: 0 }),
};
