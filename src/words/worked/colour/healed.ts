import { reader, type WorkedNumbers, type WorkedWords } from '../workedReader.ts';

/** What the worked examples about healed colours say. */
export const healedWorkedWords = {
  'heals-alike': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'Two different works, one healed colour',
      steps: [
        `One work lies ${n('firstMm', 2)} mm deep in the model, with a dose of ${n('firstDose')} and the loss as assumed. After one year it shows L* ${n('firstL')}, a* ${n('firstA')}, b* ${n('firstB')}.`,
        `Another lies ${n('secondMm', 2)} mm deep, with a dose of ${n('secondDose')} and ${n('times', 0)} times that loss. After one year: L* ${n('secondL')}, a* ${n('secondA')}, b* ${n('secondB')}.`,
        `The colour difference of the two is ${n('answer')}. A single reading may be off by ${n('allowed', 0)}: it cannot tell them apart.`,
        `After ${n('later', 0)} years they are ${n('laterApart')} apart. Time parts them a little more.`,
      ],
      answer: `They are ${n('answer')} apart, and ${n('allowed', 0)} is allowed`,
      after: 'So a healed colour names no cause. It names what would fit.',
    };
  },
} satisfies Readonly<Record<string, (numbers: WorkedNumbers) => WorkedWords>>;
