import { roundScaled } from '#lib/quantities/closedRange.ts';
import { drawFrom, drawNormalWithin, drawOne, type Draw } from '#lib/quantities/seed.ts';
import { listedMarks, listedMarkWords, suspects, whichMarkWords } from '#words/skills/whichMarkNotToTrust.ts';
import type { ListedMark, Suspect, WhichMarkGiven } from '#words/skills/whichMarkNotToTrust.ts';
import type { Skill } from '../skill.ts';

type Given = WhichMarkGiven;

/** Beyond this a mark is out; nothing is dealt close to it. */
const limitMm = 2;
const closeCallMm = 0.4;
const marksOf = (suspect: Suspect): readonly ListedMark[] =>
  suspect === 'none' ? [] : suspect === 'nose' ? ['nose-wing', 'nose-base'] : [suspect];

function deal(draw: Draw): Given {
  const midlineMm = 60 + 8 * draw();
  const chance = draw();
  const out =
    chance < 0.22
      ? 'none'
      : chance < 0.52
        ? 'nose'
        : drawOne<Suspect>(draw, ['inner-corner', 'pupil', 'outer-corner', 'nasion', 'chin']);
  const offMm = (draw() < 0.5 ? -1 : 1) * (3.2 + 3 * draw());
  const place = (name: ListedMark) => {
    const scatterMm = drawNormalWithin(draw, 0, 0.45, -0.9, 0.9);
    return roundScaled(midlineMm + scatterMm + (marksOf(out).includes(name) ? offMm : 0), 1) / 10;
  };
  const [inner, pupil, outer, nasion, wing, base, chin] = listedMarks.map(place);
  const placesMm = {
    'inner-corner': inner ?? 0,
    pupil: pupil ?? 0,
    'outer-corner': outer ?? 0,
    nasion: nasion ?? 0,
    'nose-wing': wing ?? 0,
    'nose-base': base ?? 0,
    chin: chin ?? 0,
  };
  return { placesMm, outerWidthMm: Math.round(2 * (84 + 10 * draw())) / 2, limitMm };
}

const inOrder = ({ placesMm }: Given) => [...listedMarks].sort((a, b) => placesMm[a] - placesMm[b]);
const middleMm = (given: Given) => given.placesMm[inOrder(given)[3] ?? 'pupil'];
const awayMm = (given: Given, name: ListedMark) => Math.abs(given.placesMm[name] - middleMm(given));

function notTrusted(given: Given): Suspect {
  const isOut = (name: ListedMark) => awayMm(given, name) > given.limitMm;
  return suspects.find((suspect) => marksOf(suspect).some(isOut)) ?? 'none';
}

function furthest(given: Given): ListedMark {
  return [...listedMarks].sort((a, b) => awayMm(given, b) - awayMm(given, a))[0] ?? 'chin';
}

/**
 * The mark that stands furthest from the median of all and beyond the limit; the nose's two marks are one
 * answer.
 * The median, because a mean would follow the very mark in question.
 */
export const whichMarkNotToTrust: Skill<Given> = {
  id: 'which-mark-not-to-trust',
  version: 1,
  words: whichMarkWords,
  given: (seed) => {
    const draw = drawFrom(seed);
    for (;;) {
      const given = deal(draw);
      if (listedMarks.every((name) => Math.abs(awayMm(given, name) - limitMm) > closeCallMm)) return given;
    }
  },
  answer: (given) => ({ kind: 'choice', correct: notTrusted(given), options: suspects }),
  slips: [
    { id: 'saw-none', credit: 0, value: () => 'none' },
    { id: 'widest-pair', credit: 0, value: () => 'outer-corner' },
    { id: 'nose-by-habit', credit: 0.2, value: () => 'nose' },
    { id: 'far-from-the-eyes', credit: 0, value: () => 'chin' },
    { id: 'single-mark', credit: 0, value: () => 'nasion' },
    { id: 'eyes-move', credit: 0.2, value: () => 'pupil' },
    { id: 'nearest-to-the-nose', credit: 0, value: () => 'inner-corner' },
  ],
  steps: (given) => [
    {
      id: 'order',
      values: {
        inOrder: inOrder(given)
          .map((name) => given.placesMm[name].toFixed(1))
          .join(', '),
        middleMm: middleMm(given),
      },
    },
    {
      id: 'furthest',
      values: {
        furthest: listedMarkWords[furthest(given)].replace(', middle', ''),
        awayMm: roundScaled(awayMm(given, furthest(given)), 1) / 10,
        limitMm: given.limitMm,
      },
    },
    { id: 'decide', values: { answer: whichMarkWords.option(notTrusted(given), given) } },
  ],
  facts: ['biweight-constant', 'scatter-floor-mm'],
};
