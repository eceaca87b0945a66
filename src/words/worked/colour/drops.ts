import { reader, type WorkedNumbers, type WorkedWords } from '../workedReader.ts';

/** What the worked examples about counting in drops say. */
export const dropsWorkedWords = {
  'drops-against-difference': (numbers: WorkedNumbers): WorkedWords => {
    const n = reader(numbers);
    return {
      title: 'The glazier: drops against difference',
      steps: [
        `Her skin has L* ${n('l', 0)}; she wants a brown of L* ${n('wantL', 0)}. On the shelf: orange, red oxide, a dark brown with carbon, iron black. Every recipe of up to eight drops is tried.`,
        `One drop stays ${n('one', 2)} away at its worse date. Two drops stay ${n('two', 2)} away: the nearest of two is the same bottle twice, so it is the same recipe.`,
        `The nearest of all takes ${n('nearestDrops', 0)} drops and stays ${n('nearest', 2)} away. Half a unit more is ${n('limit', 2)}: up to there, nobody could tell.`,
        `The fewest drops within that: ${n('drops', 0)}, as ${n('orange', 0)} of orange and ${n('black', 0)} of iron black.`,
      ],
      answer: `Mix ${n('orange', 0)} to ${n('black', 0)}: ${n('answer')} away`,
      after:
        'A ratio that small can be said over the shoulder, written on a card, and mixed again next year.',
    };
  },
} satisfies Readonly<Record<string, (numbers: WorkedNumbers) => WorkedWords>>;
