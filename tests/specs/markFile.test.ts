import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromAddress } from '#calculators/address.ts';
import { choiceField, numberField } from '#calculators/fields.ts';
import { readMarkFile, writeMarkFile } from '#calculators/markFile.ts';
import { mostBytes } from '#calculators/openOurs.ts';
import type { Calculator } from '#calculators/spec.ts';
import { usualDifference } from '#calculators/usualDifference.ts';
import { calculatorWords } from '#words/calculators.ts';
import { markFileRefusal } from '#words/markFile.ts';

const known = Object.keys(calculatorWords);
const fixture = readFileSync('tests/fixtures/marks-schema-1.json', 'utf8');
const changed = (part: Readonly<Record<string, unknown>>) =>
  JSON.stringify({ ...JSON.parse(fixture), ...part });
const reasonOf = (content: string) => {
  const read = readMarkFile(content, known);
  return read.ok ? 'read' : read.reason;
};

describe('[hand] files of schema 1', () => {
  test('[hand] a kept file of schema 1 still opens: difference 2.5 mm at the tail', () => {
    const read = readMarkFile(fixture, known);
    if (!read.ok) throw new Error(read.reason);
    expect(read.file.calculator).toBe('usual-difference');
    expect(fromAddress(usualDifference, read.query)).toEqual({
      state: { difference: 2.5, place: 'tail' },
      refused: [],
    });
  });
  test('[hand] a field that is kept in memory never reaches a file', () => {
    const secret: Calculator<Readonly<{ open: number; pregnant: string }>, null> = {
      id: 'usual-difference',
      fields: {
        open: numberField('open', 1, { unit: 'mm', lo: 0, hi: 9, step: 1, decimals: 0 }),
        pregnant: { ...choiceField('pregnant', 'no', ['no', 'yes']), kept: 'memory' },
      },
      solve: () => null,
    };
    const content = writeMarkFile(secret, { open: 2, pregnant: 'yes' });
    expect(content).toContain('open');
    expect(content).not.toMatch(/pregnant|yes/);
  });
  test('[hand] a field that the page does not know is named by the page', () => {
    const read = readMarkFile(changed({ fields: { difference: '1', colour: 'red' } }), known);
    if (!read.ok) throw new Error(read.reason);
    expect(fromAddress(usualDifference, read.query).refused).toEqual([
      { key: 'colour', text: 'red', refusal: { code: 'unknown-field' } },
    ]);
  });
});

describe('[hand] files that are refused', () => {
  test.each([
    ['nothing', '', 'not-a-file-of-ours'],
    ['no object', '[1]', 'not-a-file-of-ours'],
    ['null', 'null', 'not-a-file-of-ours'],
    ['progress of the practice', '{"schema":1,"answers":[]}', 'not-a-file-of-ours'],
    ['a newer form, whatever else it holds', '{"schema":2,"holds":"calculator"}', 'newer-schema'],
    ['a form that is no number', changed({ schema: '1' }), 'damaged'],
    ['half a form', changed({ schema: 1.5 }), 'damaged'],
    ['an older form that never was', changed({ schema: 0 }), 'damaged'],
    ['a part too many', changed({ html: '<b>' }), 'damaged'],
    ['no fields', changed({ fields: undefined }), 'damaged'],
    ['a number where a text stands', changed({ fields: { difference: 2.5 } }), 'damaged'],
    ['a calculator that is not here', changed({ calculator: 'tea-leaves' }), 'unknown-calculator'],
    ['a path for a calculator', changed({ calculator: '../rules' }), 'damaged'],
    ['a text too long', changed({ fields: { difference: '1'.repeat(4001) } }), 'damaged'],
    [
      '301 fields',
      changed({ fields: Object.fromEntries(Array.from({ length: 301 }, (_, i) => [`f${i}`, '1'])) }),
      'damaged',
    ],
    [
      'more than an address can hold',
      changed({
        fields: Object.fromEntries(Array.from({ length: 60 }, (_, i) => [`f${i}`, '1'.repeat(200)])),
      }),
      'too-long',
    ],
    ['brackets too deep to read', '['.repeat(mostBytes), 'not-a-file-of-ours'],
    ['one letter too large', `${fixture}${' '.repeat(mostBytes + 1 - fixture.length)}`, 'too-large'],
  ])('[hand] %s', (_, content, reason) => expect(reasonOf(content)).toBe(reason));
  test('[hand] a file just small enough is read; 300 fields are not too many', () => {
    expect(reasonOf(`${fixture}${' '.repeat(mostBytes - fixture.length)}`)).toBe('read');
    expect(
      reasonOf(
        changed({ fields: Object.fromEntries(Array.from({ length: 300 }, (_, i) => [`f${i}`, '1'])) }),
      ),
    ).toBe('read');
  });
  test('[hand] every refusal says that nothing was changed, and a newer form names itself', () => {
    for (const reason of [
      'too-large',
      'not-a-file-of-ours',
      'damaged',
      'too-long',
      'newer-schema',
      'unknown-calculator',
    ] as const)
      expect(markFileRefusal({ reason, schema: 7, calculator: 'tea-leaves' })).toContain(
        'Nothing on this page was changed.',
      );
    expect(markFileRefusal({ reason: 'newer-schema', schema: 7 })).toContain('form 7');
  });
});

test('[property] 100,000 hostile files never throw, and what is read is an address of a known calculator', () => {
  const part = fc.constantFrom(
    'schema',
    'holds',
    'library',
    'calculator',
    'fields',
    '__proto__',
    'constructor',
    'toString',
  );
  const value = fc.oneof(
    fc.jsonValue({ maxDepth: 2 }),
    fc.constantFrom(1, 2, 'calculator', 'usual-difference', '0.1.0'),
    fc.dictionary(fc.string(), fc.string()),
  );
  const nearly = fc
    .array(fc.tuple(part, value), { maxLength: 6 })
    .map(
      (parts) =>
        `{${[['schema', 1], ['holds', 'calculator'], ['library', '1'], ['calculator', 'usual-difference'], ['fields', {}], ...parts].map(([key, each]) => `${JSON.stringify(key)}:${JSON.stringify(each)}`).join(',')}}`,
    );
  const cut = fc
    .tuple(fc.nat(fixture.length), fc.nat(fixture.length), fc.string({ maxLength: 8 }))
    .map(([from, to, noise]) => fixture.slice(0, from) + noise + fixture.slice(to));
  let read = 0;
  fc.assert(
    fc.property(fc.oneof(nearly, cut, fc.string(), fc.json({ maxDepth: 3 })), (content) => {
      const result = readMarkFile(content, known);
      if (!result.ok) return;
      read++;
      expect(known).toContain(result.file.calculator);
      const { state } = fromAddress(usualDifference, result.query);
      expect(Number.isFinite(state.difference)).toBe(true);
    }),
    { numRuns: 100_000 },
  );
  expect(read).toBeGreaterThan(1000);
});
