import { reader, type WorkedNumbers, type WorkedWords } from '../workedReader.ts';

/** What the worked examples about the outline say. */
export const outlineWorkedWords = {
  'pilot-thickness': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'The ferry pilot’s first sketch: is the right tail too thick?',
      steps: [
        `Look at three quarters of the length. Straight up, the right brow measures ${n('rightStraightUp')} mm and the left one ${n('leftStraightUp')}. The right one seems ${n('seeming')} mm thicker.`,
        `Now lay the ruler square to the brow. On the right it crosses the lower edge ${n('rightLowerOut')} mm out and ${n('rightLowerUp')} up, the upper edge ${n('rightUpperOut')} out and ${n('rightUpperUp')} up.`,
        `That is ${n('rightOut')} mm sideways and ${n('rightUp')} up: √(${n('rightOut')}² + ${n('rightUp')}²) = ${n('answer')} mm.`,
        `On the left it goes from ${n('leftLowerOut')} out, ${n('leftLowerUp')} up to ${n('leftUpperOut')} out, ${n('leftUpperUp')} up: ${n('leftOut')} sideways, ${n('leftUp')} up, √(${n('leftOut')}² + ${n('leftUp')}²) = ${n('left')} mm.`,
      ],
      answer: `Both are ${n('answer')} mm thick, straight across`,
      after:
        'The right tail falls more steeply, and that is all. Thinning it by what straight up said would have made it the thinner one.',
    };
  },
} satisfies Readonly<Record<string, (numbers: WorkedNumbers) => WorkedWords>>;
