import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromAddress, toAddress } from '#calculators/address.ts';
import { parsers } from '#calculators/parsers.ts';
import { readMarkFile, writeMarkFile } from '#calculators/markFile.ts';
import { mostBytes } from '#calculators/openOurs.ts';
import type { Calculator, State } from '#calculators/spec.ts';
import { libraryVersion } from '#lib/version.ts';
import { startState } from '#calculators/startState.ts';
import { refusalSentence } from '#words/refusal.ts';

/** Text that a hostile or broken link might hold. */
const hostile = fc.oneof(
  fc.string({ maxLength: 40 }),
  fc.string({ unit: 'binary', maxLength: 20 }),
  fc.constantFrom(
    'NaN',
    'Infinity',
    '-Infinity',
    '1e309',
    '__proto__',
    'constructor',
    '<script>',
    '%00',
    '١٢٫٥',
    '1,234.5',
    '--5',
    '0x10',
    '1_2_3',
    '_',
    '5_',
    '_5',
    'null',
    '',
  ),
  fc.double().map(String),
  fc.tuple(fc.double(), fc.double()).map(([x, y]) => `${x}_${y}`),
  fc
    .array(fc.tuple(fc.integer({ min: -3000, max: 3000 }), fc.constantFrom('_', ' ', ',', ';', '\n', '*')), {
      maxLength: 30,
    })
    .map((parts) => parts.map(([number, mark]) => `${number / 10}${mark}`).join('')),
);

export const described = new Set<string>();

/**
 * Different states whose sums are worked out for each calculator: heavy sums are bounded, addresses are not.
 */
const mostSolvedOf = (calculator: Readonly<{ id: string }>) =>
  ({ 'mix-by-drops': 150, 'find-a-recipe': 12, 'why-it-healed-this-way': 60, 'cover-the-old-shape': 300 })[
    calculator.id
  ] ?? 20_000;

export function describeOne<S extends State, R>(
  calculator: Calculator<S, R>,
  says: (result: R, state: S) => string,
) {
  described.add(calculator.id);
  const keys = Object.keys(calculator.fields);
  const isWritten = (name: string) => calculator.fields[name]?.kept === 'address';
  const mostSolved = mostSolvedOf(calculator);
  const pairs = fc.array(fc.tuple(fc.oneof(fc.constantFrom(...keys), hostile), hostile), { maxLength: 6 });

  describe(calculator.id, () => {
    test('[property] 100,000 hostile addresses: a whole state, no throw, no NaN in the sentence', () => {
      // Most hostile addresses leave the start as it is: a state whose sentence was read is not read again.
      const read = new Set<string>();
      fc.assert(
        fc.property(
          fc.oneof(
            pairs.map((list) => new URLSearchParams(list).toString()),
            fc.string({ maxLength: 60 }),
          ),
          (query) => {
            const { state, refused } = fromAddress(calculator, query);
            if (Object.keys(state).length !== keys.length) return false;
            const address = toAddress(calculator, state);
            const isNew = !read.has(address) && read.size < mostSolved;
            read.add(address);
            const sentence =
              (isNew ? says(calculator.solve(state), state) : '') +
              refused.map(({ key, refusal }) => refusalSentence(key, refusal)).join(' ');
            return (
              !/NaN|undefined|Infinity(?! )|\[object/.test(sentence.replaceAll(query, '')) ||
              refused.some(({ key }) => /NaN|undefined|Infinity/.test(key))
            );
          },
        ),
        { numRuns: 100_000 },
      );
    }, 240_000);

    test('[property] an address brings back the same state', () => {
      const start = startState(calculator);
      expect(toAddress(calculator, start)).toBe('');
      for (const name in calculator.fields) {
        const { control, kept } = calculator.fields[name];
        if (kept === 'memory') continue;
        const others: readonly (string | number | { xMm: number; yMm: number })[] =
          control.kind === 'choice'
            ? control.options
            : control.kind === 'number'
              ? [control.lo, control.hi]
              : control.kind === 'pairs'
                ? [
                    '0_0',
                    `${control.lo}_${control.hi}*1.25_-0.5`,
                    Array.from({ length: control.most }, (_, i) => `${i}_${i + 0.5}`).join('*'),
                  ]
                : [
                    { xMm: control.x[0], yMm: control.y[1] },
                    { xMm: control.x[1], yMm: control.y[0] },
                    { xMm: 1.2, yMm: -3.4 },
                  ];
        for (const value of others) {
          const state = { ...start, [name]: value };
          expect(fromAddress(calculator, toAddress(calculator, state))).toEqual({ state, refused: [] });
        }
      }
    });

    test('[property] a saved file holds every field, starts too, and brings back the same state', () => {
      const start = startState(calculator);
      const content = writeMarkFile(calculator, start);
      const read = readMarkFile(content, [calculator.id]);
      if (!read.ok) throw new Error(read.reason);
      expect(Object.keys(read.file.fields).sort()).toEqual(keys.filter(isWritten).sort());
      expect(read.file).toMatchObject({ schema: 1, calculator: calculator.id, library: libraryVersion });
      expect(fromAddress(calculator, read.query)).toEqual({ state: start, refused: [] });
      expect(content.length).toBeLessThan(mostBytes / 10);
    });

    test('[property] an answer about health never reaches an address or a file; an old link that holds one opens with the rest and says so', () => {
      for (const name of keys.filter((key) => !isWritten(key))) {
        const field = calculator.fields[name];
        if (!field || field.control.kind !== 'choice') throw new Error(name);
        for (const text of field.control.options) {
          const state = { ...startState(calculator), [name]: text };
          expect(toAddress(calculator, state)).toBe('');
          expect(writeMarkFile(calculator, state)).not.toContain(`"${field.key}"`);
          const { state: opened, refused } = fromAddress(calculator, `${field.key}=${text}`);
          expect(opened).toEqual(startState(calculator));
          expect(refused).toEqual([{ key: field.key, text, refusal: { code: 'never-kept' } }]);
          expect(refused.map(({ refusal }) => refusalSentence('Skin', refusal))).toEqual([
            'Skin: this is asked anew each time. It is never kept in a link or a file, so answer it here.',
          ]);
        }
      }
    });

    test('[hand] limits refuse just outside and accept the ends, in words that say what is accepted', () => {
      for (const name in calculator.fields) {
        const { control, read } = calculator.fields[name];
        if (control.kind !== 'number') continue;
        expect(read(String(control.lo), parsers).ok && read(String(control.hi), parsers).ok).toBe(true);
        for (const text of [String(control.lo - 0.001), String(control.hi + 0.001)]) {
          const outside = read(text, parsers);
          expect(outside.ok).toBe(false);
          if (!outside.ok)
            expect(refusalSentence('Field', outside.refusal)).toContain(
              `must be between ${control.lo} and ${control.hi}`.replaceAll('-', '−'),
            );
        }
      }
    });
  });
}
