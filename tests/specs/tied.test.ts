import { expect, it } from 'vitest';
import { tieNumbers } from '#build/tieNumbers.ts';
import { tied } from '#words/skills/say.ts';

const tie = '\u00A0';

it('[hand] a number stays on one line with its unit, and with its axis of colour', () => {
  expect(tied('0.1 mm at 60 %, turned by 4 °')).toBe(`0.1${tie}mm at 60${tie}%, turned by 4${tie}°`);
  expect(tied('skin of L* 63, a* −2.0 and b* +21')).toBe(`skin of L*${tie}63, a*${tie}−2.0 and b*${tie}+21`);
});

it('[hand] what is no number with its unit stays as it is', () => {
  for (const text of ['more in L* than in a* or b*', '3 drops', '5 men', 'L* and 63'])
    expect(tied(text)).toBe(text);
});

it('[hand] in Markdown only text is tied, however deep it lies', () => {
  const tree = {
    type: 'root',
    children: [
      {
        type: 'paragraph',
        children: [
          { type: 'strong', children: [{ type: 'text', value: 'L* 63' }] },
          { type: 'inlineCode', value: 'L* 63' },
        ],
      },
    ],
  };
  tieNumbers()(tree);
  expect(JSON.stringify(tree)).toBe(
    JSON.stringify({
      type: 'root',
      children: [
        {
          type: 'paragraph',
          children: [
            { type: 'strong', children: [{ type: 'text', value: `L*${tie}63` }] },
            { type: 'inlineCode', value: 'L* 63' },
          ],
        },
      ],
    }),
  );
});
