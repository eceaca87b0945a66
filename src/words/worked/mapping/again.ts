import { reader, type WorkedNumbers, type WorkedWords } from '../workedReader.ts';

/** What the worked examples about reading again after the first pass say. */
export const againWorkedWords = {
  'baker-first-pass': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'The baker: the top of her right arch after the first pass',
      steps: [
        `She waited until her brow had settled. Today she approved the outline sitting up, face at rest: arch top at ${n('approvedMm')} mm. Now, sitting up again and at rest, the pigment ends at ${n('pigmentMm')} mm. Her skin is swollen.`,
        `At an upper mark, lower is short: ${n('approvedMm')} − ${n('pigmentMm')} = ${n('answer')} mm short.`,
        `Your error is ${n('temMm')} mm and you took ${n('readings', 0)} readings, so the difference has ${n('both', 3)} mm. You judge ${n('comparisons', 0)} marks together: ${n('factor', 2)} × ${n('both', 3)} = ${n('real', 2)} mm. The gap is real.`,
        `Did the whole arch move? Her lower arch edge was approved at ${n('lowerApprovedMm')} mm and reads ${n('lowerMm')} mm: on its line. So only the top is short.`,
        'The gap is inside the approved outline, and more than a millimetre, so swelling is no reason to leave it. Her skin is whole and does not bleed.',
      ],
      answer: `Add here: ${n('answer')} mm, to the outline and no further`,
      after: `Filled, her arch is ${n('thick')} mm thick, as she approved. If its lower edge had read lower as well, the brow or the level would have moved: then nothing is added, and both are read again.`,
    };
  },
} satisfies Readonly<Record<string, (numbers: WorkedNumbers) => WorkedWords>>;
