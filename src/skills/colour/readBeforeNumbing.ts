import { drawFrom, drawNormalWithin, drawOne, drawWhole, type Draw } from '#lib/quantities/seed.ts';
import { skinClients } from '#words/skills/skinClients.ts';
import {
  notesSay,
  readBeforeNumbingWords,
  spoiledAnswers,
  spoiledOf,
  whyLeftOut,
} from '#words/skills/readBeforeNumbing.ts';
import type {
  NotedReading,
  ReadBeforeGiven,
  ReadingNote,
  SpoiledAnswer,
} from '#words/skills/readBeforeNumbing.ts';
import type { Skill } from '../skill.ts';

type Given = ReadBeforeGiven;
const places = ['first', 'second', 'third'] as const;
const tenth = (value: number) => Math.round(value * 10) / 10;
type Change = Readonly<{ l: number; a: number; b: number }>;

/** What a spoiled reading gains, each number by so much times a chance around one. Invented sizes. */
const changes: Readonly<Record<Exclude<ReadingNote, 'before'>, readonly [Change, ...Change[]]>> = {
  wiped: [{ l: -1.2, a: 3, b: 0.3 }],
  numbed: [
    { l: 1.4, a: -2.5, b: 0 },
    { l: -1, a: 2.6, b: 0 },
  ],
  drawn: [{ l: -2.4, a: -0.6, b: -1.5 }],
  window: [{ l: 0.4, a: -1.2, b: -2.6 }],
  'not-written': [
    { l: -1, a: 4.6, b: 0.2 },
    { l: 1, a: -4.4, b: 0.2 },
  ],
};

function deal(draw: Draw): Given {
  const skin = { l: drawWhole(draw, 35, 72), a: drawWhole(draw, 9, 13), b: drawWhole(draw, 13, 20) };
  const kind = drawOne<ReadingNote | 'none' | 'none-written'>(draw, [
    'wiped',
    'numbed',
    'drawn',
    'window',
    'not-written',
    'not-written',
    'none',
    'none-written',
  ]);
  const at = drawWhole(draw, 0, 2);
  const plain: ReadingNote = kind === 'not-written' || kind === 'none-written' ? 'not-written' : 'before';
  const near = (value: number) => tenth(drawNormalWithin(draw, value, 0.5, value - 0.9, value + 0.9));
  const reading = (i: number): NotedReading => {
    const bare = { l: near(skin.l), a: near(skin.a), b: near(skin.b) };
    if (i !== at || kind === 'none' || kind === 'none-written' || kind === 'before')
      return { ...bare, note: plain };
    const change = drawOne(draw, changes[kind]);
    const times = 0.85 + 0.4 * draw();
    return {
      l: tenth(bare.l + times * change.l),
      a: tenth(bare.a + times * change.a),
      b: tenth(bare.b + times * change.b),
      note: kind,
    };
  };
  return { who: drawOne(draw, skinClients), readings: [reading(0), reading(1), reading(2)] };
}

/**
 * The readings nobody should leave out, in the order in which their lightness stands apart from the middle
 * one.
 */
function keptByLightness(given: Given): readonly SpoiledAnswer[] {
  const lightness = given.readings.map(({ l }) => l).sort((a, b) => a - b);
  const middle = lightness[1] ?? 0;
  return places
    .map((place, i) => ({ place, off: Math.abs((given.readings[i]?.l ?? 0) - middle) }))
    .filter(({ place }) => place !== spoiledOf(given))
    .sort((one, other) => other.off - one.off)
    .map(({ place }) => place);
}

/**
 * Three readings: the one that was touched, lit otherwise or far off in redness is left out; a plain spread
 * is kept.
 */
export const readBeforeNumbing: Skill<Given> = {
  id: 'read-before-numbing',
  version: 1,
  words: readBeforeNumbingWords,
  given: (seed) => {
    const draw = drawFrom(seed);
    for (;;) {
      const given = deal(draw);
      if (new Set(given.readings.map(({ l }) => l)).size === 3) return given;
    }
  },
  answer: (given) => ({ kind: 'choice', correct: spoiledOf(given), options: spoiledAnswers }),
  slips: [
    { id: 'went-by-lightness', credit: 0.1, value: (given) => keptByLightness(given)[0] ?? '' },
    { id: 'no-sign', credit: 0, value: (given) => keptByLightness(given)[1] ?? '' },
    { id: 'in-between', credit: 0, value: (given) => keptByLightness(given)[2] ?? '' },
    { id: 'kept-spoiled', credit: 0.2, value: () => 'none' },
  ],
  steps: (given) => {
    const [first, second, third] = given.readings;
    const spoiled = spoiledOf(given);
    const isFar = given.readings.some(({ note }) => note === 'not-written') && spoiled !== 'none';
    return [
      { id: 'when', values: { when: notesSay(given) } },
      {
        id: 'numbers',
        values: {
          first: first.a,
          second: second.a,
          third: third.a,
          verdict: isFar
            ? 'One stands far from both others.'
            : spoiled === 'none'
              ? 'None stands far off.'
              : 'The time it was taken decides, whatever the numbers say.',
        },
      },
      {
        id: 'decide',
        values: { answer: readBeforeNumbingWords.option(spoiled, given), because: whyLeftOut(given) },
      },
    ];
  },
  facts: ['read-skin-untouched', 'numbing-blanches', 'skin-reading-repeats'],
};
