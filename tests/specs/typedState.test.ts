import { expect, test } from 'vitest';
import type { PointMm } from '#lib/geometry/point.ts';
import type { Calculator } from '#calculators/spec.ts';
import { numberField, choiceField, markField } from '#calculators/fields.ts';
import { startState } from '#calculators/startState.ts';
import { fromTyped, toTyped } from '#components/calculator/frame/typedState.ts';

const width = numberField('w', 3, { unit: 'mm', lo: 0, hi: 9, step: 1, decimals: 1 });
const side = choiceField<Invented['side']>('s', 'left', ['left', 'right']);
const skin = choiceField<Invented['skin']>('h', 'calm', ['calm', 'itchy']);
const mark = markField('m', { xMm: 1, yMm: 2 }, { x: [-5, 5], y: [-5, 5] });
type Invented = Readonly<{
  width: number;
  side: 'left' | 'right';
  mark: PointMm;
  skin: 'calm' | 'itchy';
}>;
const calculator: Calculator<Invented, undefined> = {
  id: 'invented',
  fields: { width, side, mark, skin: { ...skin, kept: 'memory' } },
  solve: () => undefined,
};
const start = startState(calculator);
const nameOf = (name: string) => `the ${name}`;
const again = (typed: unknown) => fromTyped(calculator, JSON.parse(JSON.stringify(typed)), nameOf);

test('[hand] numbers, choices, marks and refused texts come back as they were typed; the start keeps nothing', () => {
  expect(toTyped<Invented>(calculator, start, {}, '')).toBeUndefined();
  const state: Invented = { ...start, width: 4.5, side: 'right' as const, mark: { xMm: -1.5, yMm: 0 } };
  const drafts = {
    width: { text: 'four', sentence: 'said then' },
    'mark.y': { text: '70', sentence: 'said then' },
  };
  const found = again(toTyped<Invented>(calculator, state, drafts, '?w=4'));
  expect(found).toMatchObject({ state, query: '?w=4', isLost: false });
  expect(found.drafts['width']?.text).toBe('four');
  expect(found.drafts['width']?.sentence).toMatch(/^the width: this is not a number/);
  expect(found.drafts['mark.y']).toEqual({
    text: '70',
    sentence: 'Up must be between -5 and 5 millimetres.'.replace('-', '−'),
  });
});

test('[hand] a refused text alone is kept', () => {
  const found = again(toTyped<Invented>(calculator, start, { width: { text: 'x', sentence: '' } }, ''));
  expect(found.state).toEqual(start);
  expect(Object.keys(found.drafts)).toEqual(['width']);
});

test('[hand] a field that is kept in memory alone is never written, neither its value nor a refused text', () => {
  const state: Invented = { ...start, skin: 'itchy' };
  expect(toTyped<Invented>(calculator, state, { skin: { text: 'sore', sentence: '' } }, '')).toBeUndefined();
  const typed = toTyped<Invented>(
    calculator,
    { ...state, width: 4 },
    { skin: { text: 'sore', sentence: '' } },
    '',
  );
  expect(JSON.stringify(typed)).not.toMatch(/itchy|sore|"h"/);
  expect(again({ query: '', fields: { h: 'itchy' }, drafts: {} })).toMatchObject({
    state: start,
    isLost: true,
  });
});

test('[hand] what an earlier form of the calculator kept and this one does not read is left out and named as lost; the rest stays', () => {
  for (const fields of [{ w: '12' }, { s: 'middle' }, { gone: '1' }, { m: '1' }])
    expect(again({ query: '', fields, drafts: {} }), JSON.stringify(fields)).toMatchObject({
      state: start,
      isLost: true,
    });
  expect(again({ query: '', fields: { w: '4', gone: '1' }, drafts: {} }).state.width).toBe(4);
  expect(again({ query: '', fields: { w: '4' }, drafts: { gone: '1' } }).isLost).toBe(true);
  for (const spoilt of [undefined, null, 3, 'x', [], { fields: 'w' }])
    expect(fromTyped(calculator, spoilt, nameOf).state).toEqual(start);
});

test('[hand] a refused text that is accepted by now is taken as a number', () => {
  const found = again({ query: '', fields: { w: '4' }, drafts: { width: '5', 'mark.x': '-2' } });
  expect(found).toMatchObject({ state: { width: 5, mark: { xMm: -2, yMm: 2 } }, drafts: {}, isLost: false });
});
