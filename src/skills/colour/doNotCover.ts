import { modelValues } from '#lib/colour/numbers/model.ts';
import { drawFrom, drawOne, type Draw } from '#lib/quantities/seed.ts';
import {
  coverAnswers,
  coverClients,
  doNotCoverWords,
  worseDate,
  type CoverAnswer,
  type DoNotCoverGiven,
} from '#words/skills/doNotCover.ts';
import type { Skill } from '../skill.ts';
import { coverCases, type CoverCase } from './coverCases.ts';

type Given = DoNotCoverGiven;
const limit = modelValues.reachedBelow;
const skinLightnesses = [72, 63, 54, 45, 36] as const;

/**
 * Near enough already: leave it. Else a recipe without much white must reach the brown at both dates, or
 * nothing is covered.
 */
function right({ now, six, two }: Pick<CoverCase, 'now' | 'six' | 'two'>): CoverAnswer {
  if (now < limit) return 'leave';
  return Math.max(six, two) < limit ? 'cover' : 'lighten';
}

/**
 * The ending first, then the skin, then the case: each ending comes as often as the others, in deep skin as
 * in fair.
 */
function deal(draw: Draw): Given {
  const ending = drawOne<CoverAnswer>(draw, ['cover', 'lighten', 'leave']);
  const l = drawOne(draw, skinLightnesses);
  const [first, ...rest] = coverCases.filter((one) => one.skin[0] === l && right(one) === ending);
  if (!first) throw new Error(`No case of "${ending}" on skin of L* ${l}.`);
  return { client: drawOne(draw, coverClients), ...drawOne(draw, [first, ...rest]) };
}

/**
 * Cover, lighten first, or leave: by what the old work is now and how far the nearest recipe stays at the
 * worse date.
 */
export const doNotCover: Skill<Given> = {
  id: 'do-not-cover',
  version: 1,
  words: doNotCoverWords,
  given: (seed) => deal(drawFrom(seed)),
  answer: (given) => ({ kind: 'choice', correct: right(given), options: coverAnswers }),
  slips: [
    { id: 'covered-anyway', credit: 0, value: () => 'cover' },
    { id: 'lightened-anyway', credit: 0.2, value: () => 'lighten' },
    { id: 'left-anyway', credit: 0.2, value: () => 'leave' },
    { id: 'hid-under-skin-colour', credit: 0, value: () => 'skin-colour' },
    { id: 'hid-by-darkness', credit: 0, value: () => 'darker' },
  ],
  steps: (given) => [
    {
      id: 'now',
      values: {
        now: given.now,
        limit,
        verdict:
          given.now < limit
            ? 'near enough: nothing has to be covered'
            : 'too far: she would see the difference',
      },
    },
    {
      id: 'nearest',
      values: {
        worse: worseDate(given),
        limit,
        verdict: worseDate(given) < limit ? 'a recipe reaches it' : 'no recipe reaches it',
      },
    },
    { id: 'decide', values: { answer: doNotCoverWords.option(right(given), given) } },
  ],
  facts: ['cover-counts-below'],
};
