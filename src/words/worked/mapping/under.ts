import { reader, type WorkedNumbers, type WorkedWords } from '../workedReader.ts';

/** What the worked examples about hair and bone say. */
export const underWorkedWords = {
  'nothing-under-the-tail': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'The potter: how much of her tail sits on nothing?',
      steps: [
        `Her outline is ${n('outline', 0)} mm long. Hair lies under it from ${n('hairFrom', 0)} to ${n('hairTo', 0)} mm. Without hair at the tail: ${n('hairTo', 0)} to ${n('outline', 0)} mm.`,
        `The edge of the bone lies ${n('under', 0)} mm under the lower edge at the arch, which stands at ${n('arch', 0)} mm, and ${n('boneTail', 0)} mm over it at the tail. Between them it rises ${n('rise', 0)} mm in ${n('span', 0)} mm.`,
        `It has to rise ${n('under', 0)} mm to meet the lower edge: ${n('span', 0)} × ${n('under', 0)} ÷ ${n('rise', 0)} = ${n('span', 0)} ÷ ${n('rise', 0)} mm further out. The outline leaves the bone at ${n('leaves', 0)} mm.`,
        `No hair from ${n('hairTo', 0)} mm, no bone from ${n('leaves', 0)} mm. Both are missing from the later of the two: ${n('from', 0)} to ${n('outline', 0)} mm.`,
      ],
      answer: `The last ${n('answer')} mm sit on nothing`,
      after: `Between ${n('hairTo', 0)} and ${n('leaves', 0)} mm there is bare skin on bone. That part is a question for her, not for the ruler.`,
    };
  },
} satisfies Readonly<Record<string, (numbers: WorkedNumbers) => WorkedWords>>;
