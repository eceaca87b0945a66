import { reader, type WorkedNumbers, type WorkedWords } from '../workedReader.ts';

/** What the worked examples about the level say. */
export const levelWorkedWords = {
  'leaning-head': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: `The violinist: is her right arch really ${n('read')} mm higher?`,
      steps: [
        `In the picture the right arch stands ${n('read')} mm higher. The line of her eye corners leans too: ${n('tiltDeg')}°, higher on her right. So her head leans.`,
        `The sine of ${n('tiltDeg')}° is ${n('sine', 4)}: so many millimetres up for each millimetre along.`,
        `Her arches are ${n('spanMm', 0)} mm apart. ${n('spanMm', 0)} × ${n('sine', 4)} = ${n('answer')} mm come from the lean alone.`,
        `What is left: ${n('read')} − ${n('answer')} = ${n('left')} mm. Her smallest real difference is ${n('real', 2)} mm, so a difference of the arches is not shown to be real.`,
      ],
      answer: `The lean fakes ${n('answer')} mm`,
      after:
        '“Raise the left arch” would have tattooed the lean of her head. Her real problem is the tail, and that is another lesson.',
    };
  },
} satisfies Readonly<Record<string, (numbers: WorkedNumbers) => WorkedWords>>;
