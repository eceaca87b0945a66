import { reader, type WorkedNumbers, type WorkedWords } from '../workedReader.ts';

/** What the worked examples about pictures say. */
export const picturesWorkedWords = {
  'scale-by-iris': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'A picture without a ruler: a scale from the iris',
      steps: [
        `The visible iris measures ${n('irisDots', 0)} dots in the picture. People’s irises are ${n('irisMm', 2)} mm wide on average, give or take ${n('spreadMm', 2)}.`,
        `One dot is ${n('irisMm', 2)} ÷ ${n('irisDots', 0)} = ${n('dotMm', 3)} mm.`,
        `One arch stands ${n('differenceDots', 0)} dots higher: ${n('differenceDots', 0)} × ${n('dotMm', 3)} = ${n('answer')} mm. Twice the spread makes that uncertain by ${n('differenceDoubt')} mm.`,
        `The brow is ${n('lengthDots', 0)} dots long: ${n('lengthMm')} mm. The same spread makes that uncertain by ${n('lengthDoubt')} mm.`,
      ],
      answer: `Use the difference: ${n('answer')} mm, from this scale ± ${n('differenceDoubt')}`,
      after: `Refuse the length: ± ${n('lengthDoubt')} mm is more than any brow is worth. A sticker of known width in the brow’s plane mends both.`,
    };
  },
} satisfies Readonly<Record<string, (numbers: WorkedNumbers) => WorkedWords>>;
