import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readBottleFile, writeBottleFile } from '#calculators/bottleFile.ts';
import { bottleName, longestBottleName } from '#calculators/bottleName.ts';
import { joinBottles } from '#calculators/joinBottles.ts';
import { mostBytes } from '#calculators/openOurs.ts';
import { readyBottle, type OwnBottle } from '#lib/colour/own/ownBottle.ts';
import { ownSlots } from '#lib/colour/own/ownSlots.ts';
import { bottleFileRefusal } from '#words/ownBottles.ts';

const fixture = readFileSync('tests/fixtures/bottles-schema-1.json', 'utf8');
const whole = (): Readonly<Record<string, unknown>> => JSON.parse(fixture);
const changed = (part: Readonly<Record<string, unknown>>) => JSON.stringify({ ...whole(), ...part });
const brown: OwnBottle = {
  slot: 'own1',
  name: 'Harbour brown',
  content: { from: 'shares', parts: { '77492': 5, '77491': 2, '77499': 3, '77891': 0, '77266': 0 } },
};
const withBottle = (part: Readonly<Record<string, unknown>>) =>
  changed({ bottles: [brown, { ...brown, slot: 'own2', ...part }] });
const outcome = (content: string) => {
  const read = readBottleFile(content);
  return read.ok ? 'read' : read.reason === 'bottle' ? `${read.place}: ${read.part}` : read.reason;
};

describe('files of schema 1', () => {
  test('[hand] a kept file of schema 1 still opens: three bottles, one of each kind', () => {
    const read = readBottleFile(fixture);
    if (!read.ok) throw new Error(JSON.stringify(read));
    expect(read.bottles.map(({ slot, name, content }) => [slot, name, content.from])).toEqual([
      ['own1', 'Harbour brown', 'shares'],
      ['own2', 'Quay ochre', 'swatch'],
      ['own5', 'School brown', 'two-swatches'],
    ]);
    expect(readBottleFile(writeBottleFile(read.bottles))).toEqual(read);
  });
  test.each([
    ['nothing', '', 'not-a-file-of-ours'],
    ['a file of marks', '{"schema":1,"holds":"calculator"}', 'not-a-file-of-ours'],
    ['a newer form, whatever else it holds', '{"schema":2,"holds":"bottles"}', 'newer-schema'],
    ['a form that is no number', changed({ schema: '1' }), 'damaged'],
    ['a part too many', changed({ html: '<b>' }), 'damaged'],
    ['no list', changed({ bottles: {} }), 'damaged'],
    ['thirteen bottles', changed({ bottles: Array(13).fill(brown) }), 'damaged'],
    ['brackets too deep to read', '['.repeat(mostBytes), 'not-a-file-of-ours'],
    ['one letter too large', fixture.padEnd(mostBytes + 1), 'too-large'],
    ['the largest', fixture.padEnd(mostBytes), 'read'],
    ['no bottle at all', changed({ bottles: [] }), 'read'],
    ['a bottle that is a text', changed({ bottles: ['brown'] }), '1: bottle'],
    ['a place that is not there', withBottle({ slot: 'own13' }), '2: slot'],
    ['a place taken twice', withBottle({ slot: 'own1' }), '2: slot'],
    ['no name', withBottle({ name: '' }), '2: name'],
    ['a name of spaces', withBottle({ name: '  ' }), '2: name'],
    ['a name with a line break', withBottle({ name: 'a\nb' }), '2: name'],
    ['a name that turns the reading direction', withBottle({ name: 'a\u202eb' }), '2: name'],
    ['a name too long', withBottle({ name: 'x'.repeat(longestBottleName + 1) }), '2: name'],
    [
      'a share below zero',
      withBottle({ content: { from: 'shares', parts: { '77492': -1 } } }),
      '2: content.parts.77492',
    ],
    [
      'a pigment that is not there',
      withBottle({ content: { from: 'shares', parts: { '77007': 1 } } }),
      '2: content.parts.77007',
    ],
    ['shares of nothing', withBottle({ content: { from: 'shares', parts: {} } }), '2: shares'],
    [
      'a swatch lighter than white',
      withBottle({ content: { from: 'swatch', lab: { l: 101, a: 0, b: 0 }, finish: 'matt' } }),
      '2: content.lab.l',
    ],
    [
      'a violet swatch',
      withBottle({ content: { from: 'swatch', lab: { l: 25, a: 20, b: -40 }, finish: 'matt' } }),
      '2: swatch',
    ],
    [
      'a finish that is not there',
      withBottle({ content: { from: 'swatch', lab: { l: 30, a: 8, b: 20 }, finish: 'wet' } }),
      '2: content.finish',
    ],
    [
      'a tint darker than its masstone',
      withBottle({
        content: {
          from: 'two-swatches',
          masstone: { l: 50, a: 8, b: 20 },
          tint: { l: 40, a: 8, b: 18 },
          drops: 1,
          whiteDrops: 4,
          finish: 'matt',
        },
      }),
      '2: tint',
    ],
    [
      'a tint without white',
      withBottle({
        content: {
          from: 'two-swatches',
          masstone: { l: 30, a: 8, b: 20 },
          tint: { l: 60, a: 5, b: 18 },
          drops: 1,
          whiteDrops: 0,
          finish: 'matt',
        },
      }),
      '2: content.whiteDrops',
    ],
  ])('[hand] %s', (_, content, expected) => {
    expect(outcome(content)).toBe(expected);
    const read = readBottleFile(content);
    if (!read.ok) expect(bottleFileRefusal(read)).toMatch(/^[A-Z“].*Your bottles are as they were\.$/);
  });
});

test('[property] 100,000 hostile files never throw; what is read can be mixed and comes back from its own file', () => {
  const number = fc.oneof(
    { weight: 9, arbitrary: fc.integer({ min: 1, max: 60 }) },
    { weight: 1, arbitrary: fc.constantFrom(null, '5', [], {}, 1e308, -1, 1.5) },
  );
  const labs = fc.record({ l: number, a: number, b: number }, { requiredKeys: ['l', 'a', 'b'] });
  const content = fc.oneof(
    {
      weight: 4,
      arbitrary: fc.record({
        from: fc.constant('shares'),
        parts: fc.dictionary(
          fc.constantFrom('77891', '77492', '77491', '77499', '77266', '__proto__', 'x'),
          number,
          { maxKeys: 4 },
        ),
      }),
    },
    fc.record({
      from: fc.constant('swatch'),
      lab: labs,
      finish: fc.constantFrom('matt', 'shine-in', 'shine-out', 'x'),
    }),
    fc.record({
      from: fc.constant('two-swatches'),
      masstone: labs,
      tint: labs,
      drops: number,
      whiteDrops: number,
      finish: fc.constantFrom('matt', 'shine-in'),
    }),
    fc.jsonValue({ maxDepth: 1 }),
  );
  const one = fc.record(
    {
      slot: fc.constantFrom(...ownSlots, 'own0', '__proto__'),
      name: fc.oneof(
        fc.string({ maxLength: 12 }),
        fc.string({ unit: 'binary', maxLength: 4 }),
        fc.constantFrom('<img src=x onerror=alert(1)>', 'brown'),
      ),
      content,
    },
    { requiredKeys: ['slot', 'name'] },
  );
  const nearly = fc.array(one, { maxLength: 3 }).map((bottles) => changed({ bottles }));
  // Swatches are heavy sums: those that are cut hold shares, and so are read in microseconds.
  const light = withBottle({});
  const cut = fc
    .tuple(fc.nat(light.length), fc.nat(12), fc.string({ maxLength: 4 }))
    .map(([from, gone, noise]) => light.slice(0, from) + noise + light.slice(from + gone));
  let read = 0;
  fc.assert(
    fc.property(
      fc.oneof(
        { weight: 1, arbitrary: nearly },
        { weight: 12, arbitrary: cut },
        { weight: 1, arbitrary: fc.string() },
        { weight: 1, arbitrary: fc.json({ maxDepth: 1 }) },
      ),
      (text) => {
        const result = readBottleFile(text);
        if (!result.ok) return typeof bottleFileRefusal(result) === 'string';
        read += result.bottles.length > 0 ? 1 : 0;
        return (
          result.bottles.every((bottle) => readyBottle(bottle).ok && bottle.name.length > 0) &&
          readBottleFile(writeBottleFile(result.bottles)).ok
        );
      },
    ),
    { numRuns: 100_000 },
  );
  expect(read).toBeGreaterThan(500);
}, 120_000);

describe('names', () => {
  test.each([
    ['  brown   no. two ', 'brown no. two'],
    ['a\u0000b\tc', 'a b c'],
    ['\u200b\u202e', undefined],
    ['', undefined],
    ['<b>', '<b>'],
    ['😀'.repeat(50), '😀'.repeat(longestBottleName)],
    [`${'x'.repeat(39)} y`, 'x'.repeat(39)],
  ])('[hand] %j is kept as %j', (typed, kept) => {
    expect(bottleName(typed)).toBe(kept);
  });
  test('[property] a kept name is kept as it is', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 80 }), (text) => {
        const name = bottleName(text);
        return (
          name === undefined ||
          (bottleName(name) === name && [...name].length <= longestBottleName && !/\p{Cc}/u.test(name))
        );
      }),
    );
  });
});

describe('joining', () => {
  const at = (slot: OwnBottle['slot'], name: string): OwnBottle => ({ ...brown, slot, name });
  test('[hand] one there already is not added twice; one whose place is taken moves to the next free place', () => {
    expect(
      joinBottles([at('own1', 'a'), at('own3', 'b')], [at('own7', 'a'), at('own3', 'c'), at('own2', 'd')]),
    ).toEqual({
      ok: true,
      added: 2,
      same: 1,
      bottles: [at('own1', 'a'), at('own2', 'd'), at('own3', 'b'), at('own4', 'c')],
    });
  });
  test('[hand] no room for all: none is added', () => {
    const full = ownSlots.slice(0, 11).map((slot, i) => at(slot, `n${i}`));
    expect(joinBottles(full, [at('own1', 'x'), at('own2', 'y')])).toEqual({
      ok: false,
      reason: 'no-room',
      free: 1,
      wanted: 2,
    });
    expect(joinBottles(full, [at('own1', 'x')])).toMatchObject({ ok: true, added: 1 });
    expect(joinBottles([], [])).toEqual({ ok: true, added: 0, same: 0, bottles: [] });
  });
});
