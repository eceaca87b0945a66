import { ita } from '#lib/colour/spaces/ita.ts';
import { hueDeg } from '#lib/colour/spaces/lch.ts';
import { worked } from '../worked.ts';

function itaDeg(l: number, b: number): number {
  const reading = ita({ l, b });
  if (!reading.ok) throw new Error('The worked example has no typology angle: there is no yellow in it.');
  return reading.deg;
}

/**
 * Two people of the reference set of measured skin (subjects 57 and 94): nearly one typology angle, two hues.
 */
const twoMeasuredPeople = worked({
  id: 'two-measured-people',
  inputs: { firstL: 62.82, firstA: 12.69, firstB: 10.91, secondL: 67.37, secondA: 8.71, secondB: 16.6 },
  run: ({ firstL, firstA, firstB, secondL, secondA, secondB }) => {
    const [firstIta, secondIta] = [itaDeg(firstL, firstB), itaDeg(secondL, secondB)];
    const [firstHue, secondHue] = [hueDeg(firstA, firstB), hueDeg(secondA, secondB)];
    return {
      firstIta,
      secondIta,
      itaApart: Math.abs(firstIta - secondIta),
      firstHue,
      secondHue,
      answer: secondHue - firstHue,
    };
  },
  shown: { digits: 1, unit: '°' },
  facts: ['ita-light-above-deg', 'ita-very-light-above-deg'],
});

/** Worked examples about reading skin. */
export const skinReadingWorked = {
  'two-measured-people': twoMeasuredPeople,
} as const;
