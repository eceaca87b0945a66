import { emergencySigns } from '../emergencySigns.ts';
import { poseWords, postureWords, skinWords } from '../marks.ts';
import { fixed } from '../number.ts';
import type { ProblemWords } from './problemWords.ts';
import type { TakenSide } from './changeNothing.ts';
import { say } from './say.ts';

/** One reading: how it was taken, and the heights of both arches above the pupils. */
export type TakenReading = TakenSide & Readonly<{ rightMm: number; leftMm: number }>;
/** What keeps a reading from being mapped. */
export const readingFaults = ['raised', 'frown', 'lying', 'numb', 'swollen'] as const;
export type ReadingFault = (typeof readingFaults)[number];
/**
 * What she told you: the fourth means that the brows may still be moving, the last that a doctor looks first.
 */
export const browNews = ['tint', 'glasses', 'fringe', 'toxin', 'dropped'] as const;
export type BrowNews = (typeof browNews)[number];
export type RestOrRaisedGiven = Readonly<{
  readings: readonly [TakenReading, TakenReading, TakenReading];
  news: BrowNews;
  newsDays: number;
}>;

/** What her news asks for before any reading is looked at. */
export const newsAsks = (news: BrowNews): 'doctor' | 'wait' | 'nothing' =>
  news === 'dropped' ? 'doctor' : news === 'toxin' ? 'wait' : 'nothing';

const newsWords: Readonly<Record<BrowNews, (days: number) => string>> = {
  tint: (days) => `She had her brows tinted ${days} days ago.`,
  glasses: (days) => `She has had new glasses for ${days} days and likes them.`,
  fringe: (days) => `She had her fringe cut ${days} days ago.`,
  toxin: (days) => `She had toxin in her forehead ${days} days ago.`,
  dropped: (days) => `Her left brow has sat lower for ${days} days, and she does not know why.`,
};

const faultWords: Readonly<Record<ReadingFault, string>> = {
  raised: 'the brows were raised',
  frown: 'she was frowning',
  lying: 'she was lying down',
  numb: 'the skin was numb',
  swollen: 'the skin was swollen',
};

/** The one thing that keeps a reading from being mapped; nothing for one that may be. */
export function faultOf({ pose, posture, skin }: TakenSide): ReadingFault | undefined {
  if (pose === 'raised' || pose === 'frown') return pose;
  if (posture === 'lying') return 'lying';
  return skin === 'normal' ? undefined : skin;
}

const indexOf = (given: RestOrRaisedGiven, fault: ReadingFault | undefined) =>
  given.readings.findIndex((reading) => faultOf(reading) === fault) + 1;

/** The way out. */
function truth(given: RestOrRaisedGiven): string {
  const fit = indexOf(given, undefined);
  if (given.news === 'toxin')
    return 'After toxin the brows may still be moving. Wait until they have settled; she can ask whoever gave it. Then read again.';
  if (given.news === 'dropped')
    return `A brow that dropped by itself is not settling. A doctor looks first, today if it came suddenly, and no reading of it is mapped. ${emergencySigns}`;
  if (fit > 0) return `Reading ${fit} is the only one at rest, upright and on normal skin.`;
  return 'Each reading has one thing wrong with it. Read again at rest, upright, on normal skin.';
}

function mapped(title: string, why: string) {
  return (given: RestOrRaisedGiven, reply: string) => ({
    title,
    text: `You chose “${reply}”. ${why} ${truth(given)}`,
  });
}

const newsDone: Readonly<Record<string, string>> = {
  doctor: 'Her brow dropped by itself and nobody knows why: a doctor first. That outranks any reading.',
  wait: 'What she told you means that her brows may still be moving. That outranks any reading.',
};

export const restOrRaisedWords: ProblemWords<RestOrRaisedGiven> = {
  name: 'Rest or raised',
  summary: 'Choose which of three readings of one face you map, or say that none will do.',
  question: () => 'Which reading do you map?',
  givens: ({ news, newsDays }) => [
    'You read the arches of one client three times. Heights are above the pupils, with the same level line each time.',
    newsWords[news](newsDays),
  ],
  table: ({ readings }) => ({
    caption: 'Three readings',
    head: ['How it was taken', 'Right', 'Left'],
    rows: readings.map(({ pose, posture, skin, rightMm, leftMm }, i) => [
      `${i + 1}: ${poseWords[pose]}; ${postureWords[posture]}; skin ${skinWords[skin]}`,
      `${fixed(rightMm)} mm`,
      `${fixed(leftMm)} mm`,
    ]),
  }),
  label: 'You map',
  option: (code) => {
    const [, number] = /^reading-(\d)$/.exec(code) ?? [];
    if (number !== undefined) return `Reading ${number}`;
    if (code === 'doctor-first') return 'None: a doctor first';
    return code === 'read-again' ? 'None of these: read again now' : 'None: the brows may still be moving';
  },
  steps: {
    faults: {
      hint: 'Go through the three words of each reading: the face, the position, the skin. One word that is wrong is enough.',
      done: (v) => `What is wrong with each: ${say(v, 'faults')}.`,
    },
    news: {
      hint: 'Does what she told you mean that her brows may still be moving, or that a doctor should look first?',
      done: (v) => newsDone[String(say(v, 'news'))] ?? 'What she told you does not move a brow.',
    },
    answer: {
      hint: 'The heights do not decide. Take the reading with nothing wrong, if there is one.',
      done: (v) => `You map: ${say(v, 'answer')}.`,
    },
  },
  right: (given, reply) => `${reply}. ${truth(given)}`,
  slips: {
    'mapped-raised': mapped(
      'Those brows were lifted',
      'The forehead holds them up, and often one more than the other.',
    ),
    'mapped-frown': mapped('That face was frowning', 'A frown pulls the fronts down and in.'),
    'mapped-lying': mapped(
      'She was lying down',
      'Skin moves when the weight pulls another way, and she will be seen upright.',
    ),
    'mapped-numb': mapped(
      'The skin was numb',
      'Numbing can stiffen or swell the skin, and the marks go with it.',
    ),
    'mapped-swollen': mapped(
      'The skin was swollen',
      'Swelling carries the marks with it and goes down again.',
    ),
    'mapped-too-soon': (given, reply) =>
      given.news === 'dropped'
        ? mapped(
            'Well taken, and not to be mapped',
            'It was taken well. But nobody has said why her brow dropped.',
          )(given, reply)
        : mapped(
            'A good reading, on the wrong day',
            'It was taken well. But the brow itself may be somewhere else next month.',
          )(given, reply),
    'asked-again': mapped(
      'Reading again now does not help',
      'Look once more at what you have, and at what she told you.',
    ),
    waited: (given, reply) =>
      given.news === 'dropped'
        ? mapped(
            'Do not wait for it to pass',
            'Brows settle after a treatment with a known day. This one dropped by itself.',
          )(given, reply)
        : mapped('Nothing here has to settle', 'What she told you does not move a brow.')(given, reply),
    'sent-on': (given, reply) =>
      given.news === 'toxin'
        ? mapped('The cause is known', 'She can ask the person who gave it.')(given, reply)
        : mapped('Nothing here asks for a doctor', 'Nothing she told you is new in her face.')(given, reply),
  },
  other: (given, reply) => ({ title: 'Not that one', text: `You chose “${reply}”. ${truth(given)}` }),
};

/** "reading 1, the brows were raised; reading 2, nothing" */
export const faultsWords = ({ readings }: RestOrRaisedGiven): string =>
  readings
    .map((reading, i) => {
      const fault = faultOf(reading);
      return `reading ${i + 1}, ${fault ? faultWords[fault] : 'nothing'}`;
    })
    .join('; ');
