import { reader, type WorkedNumbers, type WorkedWords } from '../workedReader.ts';

/** What the worked examples about poses say. */
export const posesWorkedWords = {
  'baker-talking': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'The baker: two readings of two brows',
      steps: [
        `She talks while you read. Right arch ${n('talkRight')}, left ${n('talkLeft')} mm above the pupils: ${n('talking')} mm apart.`,
        `She lets her forehead go. Right ${n('restRight')}, left ${n('restLeft')} mm: ${n('answer')} mm apart.`,
        `Your error is ${n('temMm')} mm a reading, each number is the mean of ${n('readings', 0)}, the tools add ${n('tools', 2)} mm. For two sides that is ${n('both', 2)} mm. You look at two differences, so multiply by ${n('factor', 2)}: real from ${n('real', 2)} mm.`,
        `${n('talking')} mm is more. It is real, and it belongs to a talking face. ${n('answer')} mm is less: not shown to be real.`,
        'Map the reading at rest. There both arches stay as they are: same shape.',
      ],
      answer: `At rest ${n('answer')} mm, not shown to be real`,
      after:
        'She had toxin in her forehead 16 days ago, so even this reading waits until her brows have settled.',
    };
  },
} satisfies Readonly<Record<string, (numbers: WorkedNumbers) => WorkedWords>>;
