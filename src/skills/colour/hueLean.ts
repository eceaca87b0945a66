import { hueDeg } from '#lib/colour/spaces/lch.ts';
import { drawFrom, drawOne, drawWhole, type Draw } from '#lib/quantities/seed.ts';
import {
  bothAngles,
  hueLeanWords,
  leanAnswers,
  type HueLeanGiven,
  type LeanAnswer,
  type LeanSkin,
} from '#words/skills/hueLean.ts';
import { skinClients } from '#words/skills/skinClients.ts';
import type { Skill } from '../skill.ts';

const hue = ({ a, b }: LeanSkin) => hueDeg(a, b);
const apartDeg = ({ first, second }: HueLeanGiven) => Math.abs(hue(first) - hue(second));

function right(given: HueLeanGiven): LeanAnswer {
  if (apartDeg(given) <= 2 * given.doubtDeg) return 'not-shown';
  return hue(given.first) < hue(given.second) === (given.asks === 'red') ? 'first' : 'second';
}

/**
 * Why somebody would choose a skin wrongly: its number of the asked colour is larger, or it is the deeper, or
 * the lighter one.
 */
function reasonFor(given: HueLeanGiven, choice: 'first' | 'second'): string {
  const [mine, other] = choice === 'first' ? [given.first, given.second] : [given.second, given.first];
  const axis = given.asks === 'red' ? 'a' : 'b';
  if (mine[axis] > other[axis]) return 'larger-number';
  return mine.l < other.l ? 'deeper-skin' : 'lighter-skin';
}

function wrongBy(given: HueLeanGiven, reason: string): string {
  const found = (['first', 'second'] as const).find(
    (choice) => choice !== right(given) && reasonFor(given, choice) === reason,
  );
  return found ?? '';
}

function skin(draw: Draw): LeanSkin {
  const hDeg = 44 + 30 * draw();
  const chroma = 15 + 8 * draw();
  const tenth = (value: number) => Math.round(value * 10) / 10;
  return {
    client: drawOne(draw, skinClients),
    l: drawWhole(draw, 35, 72),
    a: tenth(chroma * Math.cos((hDeg * Math.PI) / 180)),
    b: tenth(chroma * Math.sin((hDeg * Math.PI) / 180)),
  };
}

/** Near the limit nobody has to guess: the difference is clearly inside the doubts or clearly outside. */
function isClear(given: HueLeanGiven): boolean {
  const share = apartDeg(given) / (2 * given.doubtDeg);
  const { first, second } = given;
  return (
    (share < 0.75 || share > 1.3) &&
    first.client !== second.client &&
    first.l !== second.l &&
    Math.abs(first.a - second.a) > 0.2 &&
    Math.abs(first.b - second.b) > 0.2
  );
}

/** Which of two skins leans further to red or yellow, by hue angle, or no difference shown. */
export const hueLean: Skill<HueLeanGiven> = {
  id: 'hue-lean',
  version: 1,
  words: hueLeanWords,
  given: (seed) => {
    const draw = drawFrom(seed);
    for (;;) {
      const given: HueLeanGiven = {
        first: skin(draw),
        second: skin(draw),
        doubtDeg: drawWhole(draw, 2, 5),
        asks: drawOne(draw, ['red', 'yellow']),
      };
      if (isClear(given)) return given;
    }
  },
  answer: (given) => ({ kind: 'choice', correct: right(given), options: leanAnswers }),
  slips: [
    { id: 'larger-number', credit: 0.2, value: (given) => wrongBy(given, 'larger-number') },
    { id: 'deeper-skin', credit: 0, value: (given) => wrongBy(given, 'deeper-skin') },
    { id: 'lighter-skin', credit: 0, value: (given) => wrongBy(given, 'lighter-skin') },
    { id: 'hid-behind-doubt', credit: 0.3, value: () => 'not-shown' },
  ],
  steps: (given) => [
    { id: 'angles', values: { both: bothAngles(given) } },
    {
      id: 'apart',
      values: {
        apart: apartDeg(given),
        doubts: 2 * given.doubtDeg,
        verdict:
          right(given) === 'not-shown'
            ? 'they meet, so no difference is shown'
            : 'they do not meet, so the difference is shown',
      },
    },
    { id: 'decide', values: { answer: hueLeanWords.option(right(given), given) } },
  ],
  facts: ['forehead-hue-deg', 'forearm-hue-deg'],
};
