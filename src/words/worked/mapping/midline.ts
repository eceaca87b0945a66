import { reader, type WorkedNumbers, type WorkedWords } from '../workedReader.ts';

/** What the worked examples about the midline say. */
export const midlineWorkedWords = {
  'midline-by-pair-middles': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'A ruler across the face, four pairs of marks',
      steps: [
        `Inner eye corners at ${n('innerRight')} and ${n('innerLeft')} mm. Add them and halve: the middle is ${n('innerMiddle')} mm.`,
        `Pupils at ${n('pupilRight')} and ${n('pupilLeft')} mm: the middle is ${n('pupilMiddle')} mm. Outer eye corners at ${n('outerRight')} and ${n('outerLeft')} mm: the middle is ${n('outerMiddle')} mm.`,
        `Nose wings at ${n('wingRight')} and ${n('wingLeft')} mm: the middle is ${n('wingMiddle')} mm. That is ${n('noseOff')} mm to the client’s left of where the others meet. Leave the nose out.`,
        `Take the mean of the three that agree: (${n('innerMiddle')} + ${n('pupilMiddle')} + ${n('outerMiddle')}) ÷ 3.`,
      ],
      answer: `The midline crosses the ruler at ${n('answer')} mm`,
      after: 'The figure does this with every mark at once. It finds how the head leans as well.',
    };
  },
} satisfies Readonly<Record<string, (numbers: WorkedNumbers) => WorkedWords>>;
