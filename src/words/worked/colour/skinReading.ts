import { reader, type WorkedNumbers, type WorkedWords } from '../workedReader.ts';

/** What the worked examples about reading skin say. */
export const skinReadingWorkedWords = {
  'two-measured-people': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'Two measured people: one typology angle, two hues',
      steps: [
        `The first reads L* ${n('firstL', 2)}, a* ${n('firstA', 2)}, b* ${n('firstB', 2)}; the second L* ${n('secondL', 2)}, a* ${n('secondA', 2)}, b* ${n('secondB', 2)}. Both are people of a public set of measured skin.`,
        `Typology angle: lightness minus 50, over yellow, as an angle. That gives ${n('firstIta')}° and ${n('secondIta')}°. They are ${n('itaApart')}° apart, and both are “light” in the scheme of Chardon and Del Bino.`,
        `Hue angle: yellow over red, as an angle. That gives ${n('firstHue')}° for the first and ${n('secondHue')}° for the second.`,
      ],
      answer: `Their hues are ${n('answer')}° apart`,
      after:
        'The first leans clearly red, the second does not. A class alone would have called them the same.',
      whose: 'Measured by Cooksey, Allen and Tsai, inside of the forearm',
    };
  },
} satisfies Readonly<Record<string, (numbers: WorkedNumbers) => WorkedWords>>;
