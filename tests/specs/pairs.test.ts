import { expect, test } from 'vitest';
import { measuringError } from '#calculators/measuringError.ts';
import { repeatsOf } from '#calculators/pairsField.ts';
import { parsers } from '#calculators/parsers.ts';
import { startState } from '#calculators/startState.ts';
import { measuringErrorCaution, measuringErrorSays, neededSays } from '#words/measuringError.ts';
import { refusalSentence } from '#words/refusal.ts';

const { pairs } = measuringError.fields;
const read = (text: string) => pairs.read(text, parsers);
const kept = (text: string) => {
  const answer = read(text);
  return answer.ok ? answer.value : refusalSentence('Your readings', answer.refusal);
};

test.each([
  ['12.3 12.6', '12.3_12.6'],
  ['12,3 12,6', '12.3_12.6'],
  ['12,3; 12,6\r\n\r\n 9 mm 8.95 mm ', '12.3_12.6*9_8.95'],
  ['12.3, 12.6', '12.3_12.6'],
  ['12.3,12.6', '12.3_12.6'],
  ['12.3\t12.6\n41/40,9', '12.3_12.6*41_40.9'],
  ['−1.5 | 0', '-1.5_0'],
  ['12.3_12.6*41_40.9', '12.3_12.6*41_40.9'],
  ['1.23456 2', '1.235_2'],
])('[hand] %j is kept as %s', (text, form) => {
  expect(kept(text)).toBe(form);
  expect(kept(form)).toBe(form);
});

test('[hand] each line that cannot be read is named, with what is wrong', () => {
  expect(kept('12.3 12.6\n12.3\n1 2 3\n\n12.x 4\n1,234 1,250\n300 2')).toBe(
    'Your readings: line 2, two numbers are needed, such as 12.3 12.6; line 3, two numbers are needed, such as 12.3 12.6; line 5, this is not a number; line 6, is that a thousand or a decimal?; line 7, the numbers must be between -200 and 200 millimetres.'.replace(
      '-200',
      '−200',
    ),
  );
  expect(kept(Array.from({ length: 9 }, () => '1').join('\n')).match(/line/g)).toHaveLength(5);
  expect(kept('  \n ')).toMatch(/^Your readings: type a number/);
  const long = Array.from({ length: 61 }, () => '1 2').join('\n');
  expect(kept(long)).toBe('Your readings: at most 60 pairs.');
  expect(kept(long.slice(4)).split('*')).toHaveLength(60);
  expect(kept(`1 2${' '.repeat(6000)}`)).toBe('Your readings: at most 60 pairs.');
});

test('[hand] the kept form becomes readings', () =>
  expect(repeatsOf('12.3_12.6*-1_0')).toEqual([
    { firstMm: 12.3, secondMm: 12.6 },
    { firstMm: -1, secondMm: 0 },
  ]));

test('[hand] the example: Σd² = 4.39 over 24 pairs, 0.30 mm; real from 1.08 mm together, 0.75 alone; five readings for 1 mm', () => {
  const start = startState(measuringError);
  const result = measuringError.solve(start);
  expect(result.repeats).toHaveLength(24);
  expect(result.tem.value).toBeCloseTo(Math.sqrt(4.39 / 48), 10);
  expect(result.passes.ok && result.passes.isShifted).toBe(false);
  // u = √(2(0.0915/3 + 0.0425)) = 0.382; × 1.96 and × 2.80.
  expect(result.one.value).toBeCloseTo(0.749, 2);
  expect(result.all.value).toBeCloseTo(1.07, 2);
  expect(result.needed).toEqual({ ok: true, readings: 5 });
  const { answer, doubt } = measuringErrorSays(result, start);
  expect(answer).toBe(
    'Your technical error is 0.30 mm. With 3 readings a side, a difference is real from 1.07 mm (10 comparisons together).',
  );
  expect(doubt).toMatch(
    /^A single one is real from 0\.75 mm\. To show 1\.0 mm takes 5 readings a side\. 24 pairs put your error between 0\.2\d and 0\.4\d mm\.$/,
  );
  expect(measuringErrorCaution(result)).toBeUndefined();
});

test('[hand] a shift, few pairs, pairs that never differ and tools too coarse are each said', () => {
  const start = startState(measuringError);
  const say = (part: Partial<typeof start>) => {
    const state = { ...start, ...part };
    const result = measuringError.solve(state);
    return `${measuringErrorSays(result, state).answer} ${measuringErrorSays(result, state).doubt} ${measuringErrorCaution(result) ?? ''}`;
  };
  expect(say({ pairs: '10_10.9*20_21.1*30_31*40_41' })).toContain(
    'The second pass reads 1.00 mm higher than the first',
  );
  expect(say({ pairs: '10_9.1*20_18.9*30_29*40_39' })).toContain('1.00 mm lower than the first');
  expect(say({ pairs: '10_10.4' })).toMatch(/One pair puts your error between .*Fewer than 20 pairs/);
  expect(say({ pairs: Array.from({ length: 20 }, () => '5_5').join('*') })).toContain('No pair differs');
  expect(say({ wanted: 0.4 })).toContain('no number of readings is enough');
  expect(say({ comparisons: 1, readings: 1 })).toMatch(
    /With one reading a side, .*\(one comparison\)\. To show/,
  );
  expect(neededSays({ ok: true, readings: 21 }, 1)).toContain('use finer tools');
  expect(neededSays({ ok: true, readings: 20 }, 1)).toBe('To show 1.0 mm takes 20 readings a side.');
  expect(neededSays({ ok: true, readings: 1 }, 2)).toBe('To show 2.0 mm takes one reading a side.');
});
