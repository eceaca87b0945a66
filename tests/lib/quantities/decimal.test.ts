import { expect, test } from 'vitest';
import { readDecimal } from '#lib/quantities/decimal.ts';
import { drawFrom, drawOne, drawWhole } from '#lib/quantities/seed.ts';

test.each([
  ['31.5', 31.5],
  ['31,5', 31.5],
  [' 31,5 ', 31.5],
  ['-2', -2],
  ['−2,25', -2.25],
  ['– 2', -2],
  ['+4', 4],
  ['.5', 0.5],
  [',5', 0.5],
  ['31.', 31],
  ['0,234', 0.234],
  ['1.234', 1.234],
  ['1234,5', 1234.5],
  ['12 345', 12345],
  ['12 345,5', 12345.5],
  ['1234,567', 1234.567],
  ['1,2345', 1.2345],
  ['1234567890,12', 1234567890.12],
  [`${' '.repeat(38)}31,5`, 31.5],
  [`${' '.repeat(60)}31,5`, 31.5],
  [`31,5${'\u00A0'.repeat(38)}`, 31.5],
  ['-0', 0],
  ['٣١٫٥', 31.5],
  ['۳۱', 31],
])('[hand] "%s" is read as %d', (text, value) => {
  expect(readDecimal(text)).toEqual({ ok: true, value });
});

test.each([
  ['', 'empty'],
  ['  ', 'empty'],
  ['1,234', 'ambiguous'],
  ['12,345', 'ambiguous'],
  ['1.234,5', 'ambiguous'],
  ['1,234.5', 'ambiguous'],
  ['1.234.567', 'ambiguous'],
  ['.', 'not-a-number'],
  ['abc', 'not-a-number'],
  ['1e3', 'not-a-number'],
  ['0x10', 'not-a-number'],
  ['Infinity', 'not-a-number'],
  ['--3', 'not-a-number'],
  ['3 1', 'not-a-number'],
  ['31.5mm and more', 'not-a-number'],
  ['3 cm', 'other-unit'],
  ['3 xmm', 'not-a-number'],
  ['3+1', 'not-a-number'],
  ['1234 567', 'not-a-number'],
  ['12 3456', 'not-a-number'],
  ['1234567890123', 'too-long'],
  ['12345678901,23', 'too-long'],
  ['a'.repeat(40), 'not-a-number'],
  ['a'.repeat(41), 'too-long'],
  [' '.repeat(41), 'empty'],
  ['9'.repeat(60), 'too-long'],
])('[hand] "%s" is refused: %s', (text, reason) => {
  expect(readDecimal(text, 'mm')).toEqual({ ok: false, reason });
});

test('[hand] the unit of the field may follow the number', () => {
  expect(readDecimal('31,5 mm', 'mm')).toEqual({ ok: true, value: 31.5 });
  expect(readDecimal('31,5mm', 'mm')).toEqual({ ok: true, value: 31.5 });
  expect(readDecimal('31.5 mm')).toEqual({ ok: false, reason: 'other-unit' });
});

test('[property] 120,000 hostile texts: no throw, no NaN, nothing infinite', () => {
  const draw = drawFrom(20);
  const bits = [
    '0',
    '1',
    '9',
    '12',
    '.',
    ',',
    ' ',
    '-',
    '−',
    '+',
    'e',
    'E',
    'x',
    'mm',
    'NaN',
    'Infinity',
    '\u0000',
    '\u202e',
    '<b>',
    '%',
    '٣',
    '\ud800',
    '\n',
    '\u00a0',
    '1_0',
    "'",
  ] as const;
  let accepted = 0;
  for (let i = 0; i < 120_000; i++) {
    let text = '';
    for (let n = drawWhole(draw, 0, 8); n > 0; n--) {
      text += draw() < 0.8 ? drawOne(draw, bits) : String.fromCharCode(drawWhole(draw, 0, 0xffff));
    }
    const read = readDecimal(text, draw() < 0.5 ? 'mm' : undefined);
    if (!read.ok) continue;
    accepted++;
    if (!Number.isFinite(read.value)) throw new Error(`${JSON.stringify(text)} gave ${read.value}`);
  }
  expect(accepted).toBeGreaterThan(1000);
});

test('[property] every number of up to two decimals comes back, written either way', () => {
  for (let hundredths = -20_000; hundredths <= 20_000; hundredths += 7) {
    const written = (hundredths / 100).toFixed(2);
    const value = Number(written) === 0 ? 0 : Number(written);
    expect(readDecimal(written)).toEqual({ ok: true, value });
    expect(readDecimal(written.replace('.', ',').replace('-', '−'))).toEqual({ ok: true, value });
  }
});
