import { expect, test } from 'vitest';
import { masstone } from '#lib/colour/layers/masstone.ts';
import { spectrumToLab } from '#lib/colour/spectrum/observe.ts';
import { pigmentPowders } from '#lib/tables/pigmentPowders.ts';

const none = { '77891': 0, '77492': 0, '77491': 0, '77499': 0, '77266': 0 };

test('[table] one pigment alone, too thick to see through, has the colour of its measured powder', () => {
  for (const [id, powder] of [
    ['77492', 'goethite'],
    ['77491', 'ironRed'],
    ['77499', 'ironBlack'],
  ] as const) {
    const [ours, measured] = [masstone({ ...none, [id]: 1 }), spectrumToLab(pigmentPowders[powder])];
    for (const axis of ['l', 'a', 'b'] as const) expect(ours[axis]).toBeCloseTo(measured[axis], 6);
  }
});

test('[table] under tungsten, too', () => {
  const [ours, measured] = [
    masstone({ ...none, '77491': 1 }, 'A'),
    spectrumToLab(pigmentPowders.ironRed, 'A'),
  ];
  for (const axis of ['l', 'a', 'b'] as const) expect(ours[axis]).toBeCloseTo(measured[axis], 6);
});

test('[property] half as much of everything in the bottle is the same colour; black makes it darker', () => {
  const [whole, half] = [
    masstone({ ...none, '77492': 0.6, '77491': 0.4 }),
    masstone({ ...none, '77492': 0.3, '77491': 0.2 }),
  ];
  expect(half.l).toBeCloseTo(whole.l, 9);
  expect(masstone({ ...none, '77492': 0.6, '77491': 0.4, '77499': 0.2 }).l).toBeLessThan(whole.l - 1);
});
