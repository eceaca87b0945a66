import { reader, type WorkedNumbers, type WorkedWords } from '../workedReader.ts';

/** What the worked examples about strokes say. */
export const strokesWorkedWords = {
  'strokes-for-healed': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'The violinist: how many strokes, so that the healed brow is not too full?',
      steps: [
        `First plan: ${n('count', 0)} strokes side by side, ${n('lengthMm', 0)} mm long and ${n('widthMm', 2)} mm wide. Together ${n('count', 0)} × ${n('lengthMm', 0)} × ${n('widthMm', 2)} = ${n('inked')} mm². Her brow has ${n('areaMm2')} mm²: ${n('fresh')} % is covered.`,
        `Once spread they are ${n('spreadMm', 2)} mm wide: ${n('count', 0)} × ${n('lengthMm', 0)} × ${n('spreadMm', 2)} = ${n('inkedWide', 0)} mm², which is ${n('spread')} %. She wants ${n('wanted', 0)} % at most.`,
        `${n('wanted', 0)} % of ${n('areaMm2')} is ${n('wanting')} mm². One spread stroke covers ${n('lengthMm', 0)} × ${n('spreadMm', 2)} = ${n('oneWide')} mm².`,
        `${n('wanting')} ÷ ${n('oneWide')} = ${n('answer')}.`,
      ],
      answer: `${n('answer')} strokes at most: set ${String(Math.floor(numbers['answer'] ?? 0))}`,
      after: `On the day they cover only ${n('freshThen')} %. It will look thin to her. Show her the picture of both days before you begin.`,
    };
  },
} satisfies Readonly<Record<string, (numbers: WorkedNumbers) => WorkedWords>>;
