import { unfitToMap } from '#lib/mapping/compare/unfitToMap.ts';
import { drawFrom, drawOne, drawWhole, type Draw } from '#lib/quantities/seed.ts';
import {
  browNews,
  faultOf,
  faultsWords,
  newsAsks,
  readingFaults,
  restOrRaisedWords,
} from '#words/skills/restOrRaised.ts';
import type { ReadingFault, RestOrRaisedGiven, TakenReading } from '#words/skills/restOrRaised.ts';
import type { Skill } from '../skill.ts';

type Given = RestOrRaisedGiven;
const tenths = (mm: number) => Math.round(mm * 10) / 10;

/** The reading whose only fault is this one (none: the reading that may be mapped), as an option. */
function readingWith({ readings }: Given, fault: ReadingFault | undefined): string {
  const at = readings.findIndex((reading) => faultOf(reading) === fault);
  return at < 0 ? 'no such reading' : `reading-${at + 1}`;
}

function right(given: Given): string {
  const asks = newsAsks(given.news);
  if (asks !== 'nothing') return asks === 'doctor' ? 'doctor-first' : 'not-yet';
  const fit = given.readings.findIndex((reading) => unfitToMap(reading).length === 0);
  return fit < 0 ? 'read-again' : `reading-${fit + 1}`;
}

function takenWith(draw: Draw, fault: ReadingFault | undefined): TakenReading {
  const baseMm =
    17 + 5 * draw() + (fault === 'raised' ? 4 : fault === 'frown' ? -1.5 : fault === 'lying' ? 1 : 0);
  const apartMm = (draw() < 0.5 ? -1 : 1) * (fault === undefined ? 0.4 + 1.8 * draw() : 2.2 * draw());
  return {
    pose: fault === 'raised' || fault === 'frown' ? fault : drawOne(draw, ['rest', 'rest', 'eyes-closed']),
    posture: fault === 'lying' ? 'lying' : 'sitting',
    skin: fault === 'numb' || fault === 'swollen' ? fault : 'normal',
    rightMm: tenths(baseMm - apartMm / 2),
    leftMm: tenths(baseMm + apartMm / 2),
  };
}

/** Puts things in any order (Fisher & Yates). */
function shuffled<T>(draw: Draw, things: readonly T[]): readonly T[] {
  return things
    .map((thing) => ({ thing, at: draw() }))
    .sort((a, b) => a.at - b.at)
    .map(({ thing }) => thing);
}

/**
 * Which reading of one face is mapped: at rest, upright, normal skin, brows that are not still moving, and no
 * brow that dropped by itself.
 */
export const restOrRaised: Skill<Given> = {
  id: 'rest-or-raised',
  version: 2,
  words: restOrRaisedWords,
  given: (seed) => {
    const draw = drawFrom(seed);
    const hasFit = draw() < 0.78;
    const faults = shuffled<ReadingFault>(draw, readingFaults);
    const [a, b, c] = shuffled<ReadingFault | undefined>(draw, [
      faults[0],
      faults[1],
      hasFit ? undefined : faults[2],
    ]);
    const news =
      draw() < 0.25
        ? drawOne(draw, [browNews[3], browNews[4]])
        : drawOne(draw, [browNews[0], browNews[1], browNews[2]]);
    return {
      readings: [takenWith(draw, a), takenWith(draw, b), takenWith(draw, c)],
      news,
      newsDays: drawWhole(draw, 5, 25),
    };
  },
  answer: (given) => ({
    kind: 'choice',
    correct: right(given),
    options: ['reading-1', 'reading-2', 'reading-3', 'read-again', 'not-yet', 'doctor-first'],
  }),
  slips: [
    ...readingFaults.map((fault) => ({
      id: `mapped-${fault}`,
      credit: 0,
      value: (given: Given) => readingWith(given, fault),
    })),
    { id: 'mapped-too-soon', credit: 0.3, value: (given) => readingWith(given, undefined) },
    { id: 'asked-again', credit: 0.3, value: () => 'read-again' },
    { id: 'waited', credit: 0, value: () => 'not-yet' },
    { id: 'sent-on', credit: 0.3, value: () => 'doctor-first' },
  ],
  steps: (given) => [
    { id: 'faults', values: { faults: faultsWords(given) } },
    { id: 'news', values: { news: newsAsks(given.news) } },
    { id: 'answer', values: { answer: restOrRaisedWords.option(right(given), given) } },
  ],
  facts: ['map-at-rest', 'upright-to-draw', 'settle-after-toxin'],
};
