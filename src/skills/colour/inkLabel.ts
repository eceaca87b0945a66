import { labelFaults, labelFaultsOf, type LabelFault } from '#lib/colour/label/labelFault.ts';
import { drawFrom, drawOne, drawWhole, type Draw } from '#lib/quantities/seed.ts';
import {
  dayWords,
  inkLabelWords,
  labelAnswers,
  labelBadges,
  labelBecause,
  lastWords,
  type InkLabelGiven,
} from '#words/skills/inkLabel.ts';
import type { Skill } from '../skill.ts';

const letters = ['A', 'B', 'C', 'D', 'F', 'H', 'K', 'M', 'T'] as const;
const browns = [
  ['77492', '77499', '77491'],
  ['77492', '77491', '77499'],
  ['77499', '77492', '77491'],
  ['77491', '77492', '77266'],
  ['77492', '77266', '77491'],
] as const;
const faultOf = ({ label, today }: Pick<InkLabelGiven, 'label' | 'today'>): LabelFault | 'none' =>
  labelFaultsOf(label, today)[0] ?? 'none';

/**
 * The last month: in the past where that is the fault; else this month, so that the end of it counts, or a
 * later one.
 */
function lastMonth(
  draw: Draw,
  isPast: boolean,
  { year, month }: InkLabelGiven['today'],
): InkLabelGiven['label']['last'] {
  const away = isPast ? -drawWhole(draw, 1, 4) : drawOne(draw, [0, 0, drawWhole(draw, 1, 20)]);
  const count = year * 12 + (month - 1) + away;
  return { year: Math.floor(count / 12), month: (count % 12) + 1 };
}

/** One invented label on one day: what keeps the bottle shut, or that none of four things is missing. */
export const inkLabel: Skill<InkLabelGiven> = {
  id: 'ink-label',
  version: 1,
  words: inkLabelWords,
  given: (seed) => {
    const draw = drawFrom(seed);
    const wanted = drawOne<LabelFault | 'none'>(draw, ['none', ...labelFaults]);
    const today = {
      year: drawWhole(draw, 2026, 2028),
      month: drawWhole(draw, 1, 12),
      day: drawWhole(draw, 2, 28),
    };
    const label = {
      saysUse: wanted !== 'no-use',
      hasLot: wanted !== 'no-lot',
      listsIngredients: wanted !== 'no-list',
      last: lastMonth(draw, wanted === 'past', today),
    };
    const number = `${drawOne(draw, letters)}${drawWhole(draw, 1000, 9999)}`;
    return {
      label,
      today,
      number,
      pigments: drawOne<InkLabelGiven['pigments']>(draw, browns),
      badge: drawOne(draw, labelBadges),
      fault: faultOf({ label, today }),
    };
  },
  answer: (given) => ({ kind: 'choice', correct: faultOf(given), options: labelAnswers }),
  slips: [
    { id: 'trusted-the-badge', credit: 0, value: () => 'none' },
    { id: 'use-is-there', credit: 0, value: () => 'no-use' },
    { id: 'lot-is-there', credit: 0, value: () => 'no-lot' },
    { id: 'list-is-there', credit: 0, value: () => 'no-list' },
    { id: 'not-past', credit: 0.2, value: () => 'past' },
  ],
  steps: (given) => {
    const { label, number } = given;
    return [
      {
        id: 'use',
        values: {
          use: label.saysUse
            ? 'it says that it is for tattoos or permanent make-up'
            : 'it does not say that it is for skin',
        },
      },
      { id: 'lot', values: { lot: label.hasLot ? number : `none, ${number} is the number of the product` } },
      { id: 'list', values: { list: label.listsIngredients ? 'listed' : 'not listed, one is only praised' } },
      { id: 'last', values: { last: lastWords(given), today: dayWords(given.today) } },
      {
        id: 'decide',
        values: { answer: inkLabelWords.option(faultOf(given), given), because: labelBecause(given) },
      },
    ];
  },
  facts: ['label-before-opening', 'label-names-the-batch', 'lot-in-the-record'],
};
