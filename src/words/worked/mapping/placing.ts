import { reader, type WorkedNumbers, type WorkedWords } from '../workedReader.ts';

/** What the worked examples about placing the arch and the tail say. */
export const placingWorkedWords = {
  'one-arch-for-both': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'The bell-ringer: one arch from two sides',
      steps: [
        `Fronts ${n('frontRight')} mm right and ${n('frontLeft')} mm left, tails ${n('tailRight')} and ${n('tailLeft')} mm. No difference is shown to be real. Take the means: front ${n('front', 2)}, tail ${n('tail', 2)} mm.`,
        `The settled length is ${n('tail', 2)} − ${n('front', 2)} = ${n('length', 2)} mm.`,
        `Golden section from the front: ${n('share', 3)} × ${n('length', 2)} = ${n('part', 2)} mm. Add the front, because you measure from the midline.`,
      ],
      answer: `One arch, ${n('answer', 2)} mm from the midline on both sides: mark ${n('answer')} mm`,
      after: `Counted from the tail, the same section gives ${n('fromTail', 2)} mm: inside the pupil on most faces. Each side by itself would give ${n('rightAlone')} on the right and ${n('leftAlone')} on the left, from differences nobody has shown.`,
    };
  },
  'violinist-tail': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'The violinist: what is wrong with the right tail?',
      steps: [
        `Length, straight across. Right: ${n('tailRight')} − ${n('frontRight')} = ${n('rightLength')} mm. Left: ${n('tailLeft')} − ${n('frontLeft')} = ${n('leftLength')} mm. The right brow is ${n('answer')} mm longer.`,
        `Level. The right tip lies ${n('tipUp')} mm above the pupils, the front’s lower edge ${n('frontUp')} mm. The tip is ${n('below')} mm too low.`,
        `Line. From nose wing to outer eye corner it goes ${n('out')} mm out and ${n('up')} mm up: ${n('slope', 3)} mm out for each mm up.`,
        `The tip lies ${n('rise')} mm above the corner. There the line stands at ${n('cornerOut')} + ${n('rise')} × ${n('slope', 3)} = ${n('limit')} mm. The tail ends at ${n('tailRight')} mm: ${n('past')} mm past it.`,
      ],
      answer: `The right brow is ${n('answer')} mm too long`,
      after:
        'Three checks out of four speak of one thing: the end of the right tail. Raising the left arch would have left all three as they are.',
    };
  },
} satisfies Readonly<Record<string, (numbers: WorkedNumbers) => WorkedWords>>;
