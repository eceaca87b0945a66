import { describe, expect, it } from 'vitest';
import { sourceIds } from '#checks/uses.ts';
import { factIds } from '#lib/catalogue.ts';
import { backingText, chip, citation, factNames, factText, rangeText, shortName } from '#words/evidence.ts';
import { factOf } from '#lib/catalogue.ts';
import { unaskedText } from '#words/rules/outcomes.ts';
import { decimalsOf, withUnit } from '#words/units.ts';

describe('units', () => {
  it('[hand] stand after the number as usage has it', () => {
    expect(withUnit(1.8, 'mm')).toBe('1.8\u00a0mm');
    expect(withUnit(23, '%')).toBe('23\u00a0%');
    expect(withUnit(5, '°')).toBe('5°');
    expect(withUnit(-0.428, '1')).toBe('−0.428');
    expect(withUnit(22638, 'people')).toBe('22\u202f638\u00a0people');
    expect(withUnit(0.00256, '1')).toBe('0.00256');
    expect(withUnit(1234.5678, 'mm')).toBe('1\u202f234.5678\u00a0mm');
    expect(decimalsOf(1e-7)).toBe(5);
  });
});

describe('evidence', () => {
  it('[hand] makes chips: stroke, word, name', () => {
    expect(chip('seen-at-1-mm')).toEqual({ stroke: 'study', word: 'Study', name: 'Hohman 2014' });
    expect(chip('factor-95')).toEqual({ stroke: 'standard', word: 'Standard', name: 'NIST TN 1297' });
    expect(chip('tilt-1-deg-fakes-mm')).toEqual({ stroke: 'calc', word: 'Computed', name: '' });
    expect(chip('taut-thread-levels')).toEqual({ stroke: 'habit', word: 'Common practice', name: '' });
    expect(chip('arches-apart-mm')).toEqual({ stroke: 'memory', word: 'Assumed', name: '' });
  });
  it('[hand] prints values, ranges, quotes and citations', () => {
    expect(factText('front-shift-men-mm')).toBe('1.8\u00a0mm');
    expect(factText('one-side-lower')).toContain('One side commonly stands lower');
    expect(rangeText('unequal-at-front-mm')).toBe('1.14 to 1.54\u00a0mm');
    expect(rangeText('seen-at-1-mm')).toBe('');
    expect(backingText(factOf('right-lower'))).toContain('Perumal 2018, abstract: “');
    expect(citation('perumal-2018')).toBe(
      'Perumal B, Meyer DR (2018). Facial asymmetry: brow and ear position. Facial Plastic Surgery 34:230–234.',
    );
    expect(unaskedText(1)).toMatch(/^One question/);
  });
  it('[property] names every fact once and every source shortly', () => {
    expect(new Set(Object.values(factNames)).size).toBe(factIds.length);
    for (const id of sourceIds) {
      expect(shortName(id).length, shortName(id)).toBeLessThanOrEqual(32);
      expect(shortName(id).length).toBeGreaterThan(3);
    }
  });
});
