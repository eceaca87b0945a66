import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mark } from '#lib/practice/marking.ts';
import { rangeAround } from '#lib/quantities/closedRange.ts';

const number = { kind: 'number', range: rangeAround(31.5, 0.1, 1), exact: 31.52 } as const;
const slips = [
  { id: 'shorter-part', value: 19.48, credit: 0.5 },
  { id: 'near-it', value: 19.6, credit: 0.25 },
  { id: 'no-subtraction', value: 38.9, credit: 0.2 },
];

test('[hand] right on the edges, wrong one tenth further', () => {
  for (const reply of [31.4, 31.5, 31.6])
    expect(mark(number, slips, reply)).toEqual({ right: true, credit: 1 });
  for (const reply of [31.3, 31.7]) expect(mark(number, slips, reply)).toEqual({ right: false, credit: 0 });
});

test('[hand] the nearest slip is named and earns its share', () => {
  expect(mark(number, slips, 19.5)).toEqual({ right: false, credit: 0.5, slipId: 'shorter-part' });
  expect(mark(number, slips, 19.6)).toEqual({ right: false, credit: 0.25, slipId: 'near-it' });
  expect(mark(number, slips, 38.8)).toEqual({ right: false, credit: 0.2, slipId: 'no-subtraction' });
  expect(mark(number, slips, 19.0)).toEqual({ right: false, credit: 0 });
});

test('[hand] a slip that lands on the right answer is right', () => {
  expect(mark(number, [{ id: 'lucky', value: 31.5, credit: 0 }], 31.5)).toEqual({ right: true, credit: 1 });
});

test('[hand] choices', () => {
  const choice = { kind: 'choice', correct: 'nose', options: ['nose', 'chin', 'none'] } as const;
  const named = [{ id: 'saw-nothing', value: 'none', credit: 0.25 }];
  expect(mark(choice, named, 'nose')).toEqual({ right: true, credit: 1 });
  expect(mark(choice, named, 'none')).toEqual({ right: false, credit: 0.25, slipId: 'saw-nothing' });
  expect(mark(choice, named, 'chin')).toEqual({ right: false, credit: 0 });
  expect(mark(number, slips, '31.5')).toEqual({ right: false, credit: 0 });
});

test('[property] any reply at all gets a mark from 0 to 1, and full marks only when right', () => {
  fc.assert(
    fc.property(fc.oneof(fc.double(), fc.string()), (reply) => {
      const marked = mark(number, slips, reply);
      expect(marked.credit).toBeGreaterThanOrEqual(0);
      expect(marked.credit === 1).toBe(marked.right);
    }),
    { seed: 5, numRuns: 2000 },
  );
});
