import { reader, type WorkedNumbers, type WorkedWords } from '../workedReader.ts';

/** What the worked examples about covering an old shape say. */
export const coverWorkedWords = {
  'ferry-pilot-old-shape': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'The ferry pilot: does the old shape fit?',
      steps: [
        `Her planned arch top stands at ${n('topMm')} mm. She allows ${n('raiseMm')} mm more: ${n('topMm')} + ${n('raiseMm')} = ${n('allowed')} mm, and no higher.`,
        `The old upper edge stands at ${n('oldTopMm')} mm: ${n('oldTopMm')} − ${n('allowed')} = ${n('answer')} mm too high. The approved limit holds, so this much stays outside.`,
        `To chase it, the arch would rise ${n('chased')} mm with its margin. And a margin above and below adds 2 × ${n('factor', 3)} × ${n('uncertaintyMm')} = ${n('grows')} mm to ${n('oldThicknessMm')} mm of old work, ${n('share', 0)} % each time.`,
      ],
      answer: `Lighten first: ${n('answer')} mm stay above the top she allows; no colour today`,
      after:
        'Tell her both numbers: what stays outside, and what each refresh adds. When the old work is lighter, plan again from fresh marks.',
    };
  },
} satisfies Readonly<Record<string, (numbers: WorkedNumbers) => WorkedWords>>;
