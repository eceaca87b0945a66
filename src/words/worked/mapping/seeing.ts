import { reader, type WorkedNumbers, type WorkedWords } from '../workedReader.ts';

/** What the worked examples about which differences are real say. */
export const seeingWorkedWords = {
  'smallest-real-difference': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: `Is ${n('archDifference')} mm between the arches real?`,
      steps: [
        `Your own reading error is ${n('temMm')} mm. The tools add a little: pencil line ${n('pencil', 2)}, caliper ${n('caliper', 2)}, thread ${n('thread', 2)} mm.`,
        `Put the tools together: square each, add, take the root. That gives ${n('tools', 2)} mm.`,
        `One reading a side: add the squares of ${n('temMm')} and ${n('tools', 2)}. Double the sum, because there are two sides. Take the root.`,
        `You compare ${n('comparisons', 0)} numbers on this face, so multiply by ${n('factor', 2)} instead of 1.96.`,
      ],
      answer: `Real from ${n('answer')} mm`,
      after: `${n('archDifference')} mm is more, so this difference counts as real.`,
    };
  },
  'bell-ringer': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'The bell-ringer: a reminder says refresh',
      steps: [
        `She was tattooed eleven months ago. The brown is even, and her sides differ by ${n('sidesMm')} mm. Your error is ${n('temMm')} mm for one reading; you took ${n('readings', 0)} a side. Their mean has ${n('temMm')} divided by the root of ${n('readings', 0)}: ${n('mean', 2)} mm.`,
        `Pencil, caliper and thread add ${n('tools', 2)} mm. Square both, add, take the root: ${n('side', 2)} mm for one side.`,
        `A difference has two sides: times the root of 2 gives ${n('both', 2)} mm.`,
        `You compare ${n('comparisons', 0)} numbers, so the factor is ${n('factor', 2)}: ${n('factor', 2)} × ${n('both', 2)}.`,
      ],
      answer: `Real from ${n('answer')} mm: her ${n('sidesMm')} mm is not shown`,
      after:
        'The colour is even and no difference is shown. A date is not a reason to tattoo: leave it, and look again in six months.',
    };
  },
} satisfies Readonly<Record<string, (numbers: WorkedNumbers) => WorkedWords>>;
