import { readdirSync } from 'node:fs';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { calculators, type CalculatorId } from '#calculators/index.ts';
import { restsOn } from '#calculators/restsOn.ts';
import { type FactId, factOf, isFactId } from '#lib/catalogue.ts';
import { modelValues } from '#lib/colour/numbers/model.ts';
import { numbersReader } from '#tests/tools/numbersRead.ts';

/** Files that work out a part of the answer beside `solve`. */
const alsoThrough: Readonly<Partial<Record<CalculatorId, readonly string[]>>> = {
  // Its table was worked out beforehand by this sum.
  'which-hue': ['src/calculators/ownHueMoves.ts'],
  // A photo may give the reading.
  'skin-reading': [
    'src/lib/colour/reading/photoReading.ts',
    'src/lib/colour/reading/photoSkin.ts',
    'src/words/photoDesk.ts',
  ],
};

/** Numbers that no constant holds, because the library works them out: by what. */
const workedOutBy: Readonly<Partial<Record<FactId, string>>> = {
  'factor-95': 'lib/mapping/uncertainty/familyWise.ts familyCoverageFactor',
  't-of-three-readings': 'lib/mapping/uncertainty/studentFactor.ts studentFactor',
  'chi-square-low-of-twenty': 'lib/mapping/uncertainty/spreadInterval.ts spreadInterval',
  'golden-share': 'lib/mapping/placing/goldenShare.ts goldenShare',
  'golden-share-from-tail': 'lib/mapping/placing/goldenShare.ts goldenShareFromTail',
  'arch-two-thirds': 'lib/mapping/numbers/arch.ts archTwoThirds',
  'melanosome-at-500-nm': 'lib/colour/numbers/model.ts modelValues',
};

/** Numbers told beside an answer, for its measure: nothing computes with them. */
const toldBeside = {
  'measuring-error': ['pairs-for-own-error'],
  pose: [
    'turn-3-deg-tail-mm',
    'brow-straight-mm',
    'nod-none-tail-mm',
    'near-midface-taller',
    'selfie-nose-longer',
    'head-nod-drift-deg',
  ],
  'hair-and-bone': ['brow-against-rim-people', 'tail-falls-mm'],
  'arch-placement': ['arch-four-places-raters', 'arch-near-outer-corner-people', 'arch-rules-p-value'],
  'strokes-and-dots': ['hair-stroke-needle-mm', 'tattoo-needle-mm', 'fine-detail-lost-years'],
  'why-it-healed-this-way': [
    'pigment-put-in-least',
    'pigment-put-in-mean',
    'pigment-put-in-most',
    'deposit-unchanged-days',
  ],
} as const satisfies Readonly<Partial<Record<CalculatorId, readonly FactId[]>>>;

const root = new URL('../../', import.meta.url);
const factFiles = ['mapping', 'colour'].flatMap((subject) =>
  readdirSync(new URL(`src/lib/${subject}/facts`, root)).map((name) => `src/lib/${subject}/facts/${name}`),
);
const list = 'src/calculators/index.ts';
const reader = numbersReader([list, ...factFiles, ...Object.values(alsoThrough).flat()]);

/** The numbers of the sources that each fact's value is read from; none where it is typed in the fact. */
const numbersOfFacts = new Map(
  factFiles
    .flatMap((file) => reader.partsIn(file))
    .flatMap(({ key = '', value }) => {
      const values = ts.isCallExpression(value)
        ? [...value.arguments]
        : reader.partsOf(value).flatMap((part) => (part.key === 'value' ? [part.value] : []));
      const { numbers } = reader.readBy(values);
      return isFactId(key) && numbers.size > 0 ? [[key, numbers] as const] : [];
    }),
);

const isCalculatorId = (id: string): id is CalculatorId => Object.hasOwn(calculators, id);
const readings = reader.partsIn(list).flatMap(({ key = '', value }) => {
  if (!isCalculatorId(key)) return [];
  const { numbers, names } = reader.readBy([
    value,
    ...(alsoThrough[key] ?? []).flatMap((file) => reader.wholeOf(file)),
  ]);
  const read = [...numbersOfFacts].flatMap(([id, own]) =>
    [...own].every((number) => numbers.has(number)) ? [id] : [],
  );
  // The model's depth is what the field of depth starts from, so that pages load no model for it.
  const { fields }: Readonly<{ fields: Readonly<Record<string, Readonly<{ start: unknown }>>> }> =
    calculators[key];
  if (fields['depth']?.start === modelValues.depthMm) read.push('model-depth-mm');
  return [{ id: key, read: new Set<FactId>(read), names }];
});

test('[hand] every calculator was followed, and most of its numbers were found', () => {
  expect(readings.map(({ id }) => id).toSorted()).toEqual(Object.keys(calculators).toSorted());
  // By hand, from the sources: the level's two lengths, and the skins that are read from the model.
  const readOf = (id: CalculatorId) => readings.find((one) => one.id === id)?.read;
  expect(readOf('level-line')).toContain('thread-length-mm');
  expect(readOf('level-line')).not.toContain('most-see-mm');
  expect(readOf('midline-and-sides')).toContain('biweight-constant');
  expect(readOf('mix-by-drops')).toContain('blood-saturation');
  expect(readOf('usual-difference')).not.toContain('blood-saturation');
});

test('[property] each fact whose number a calculator reads is among those it rests on', () => {
  const missing = readings.flatMap(({ id, read }) =>
    [...read].filter((fact) => !restsOn[id].includes(fact)).map((fact) => `${id} reads ${fact}`),
  );
  expect(missing).toEqual([]);
});

test('[property] each number that a calculator rests on is read, worked out, or told beside it by name', () => {
  const told: Readonly<Partial<Record<CalculatorId, readonly FactId[]>>> = toldBeside;
  const idle = readings.flatMap(({ id, read, names }) =>
    restsOn[id]
      .filter((fact) => typeof factOf(fact).value === 'number')
      .filter((fact) => !read.has(fact) && !names.has(workedOutBy[fact] ?? ''))
      .filter((fact) => !told[id]?.includes(fact))
      .map((fact) => `${id} reads no ${fact}`),
  );
  expect(idle).toEqual([]);
});

test('[property] no exception is left over', () => {
  const listed = new Set<FactId>(Object.values(restsOn).flat());
  expect(Object.keys(workedOutBy).filter((id) => !isFactId(id) || !listed.has(id))).toEqual([]);
  const over = Object.entries(toldBeside).flatMap(([id, facts]: readonly [string, readonly FactId[]]) => {
    const reading = readings.find((one) => one.id === id);
    return facts.filter(
      (fact) => reading?.read.has(fact) || !isCalculatorId(id) || !restsOn[id].includes(fact),
    );
  });
  expect(over).toEqual([]);
});
