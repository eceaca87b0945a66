import type { BrowMark, Side } from '#lib/mapping/marks/markSet.ts';
import { notFetched } from './fetching.ts';
import { browMarkWords, capital, sideWords } from './marks.ts';
import { fixed } from './number.ts';

/** Every sheet for paper: where it is, what it is for. */
export const sheetWords = {
  'mapping-practice': {
    title: 'Mapping practice',
    line: 'A practice face at true size for pencil, thread and ruler, with a table for measuring twenty things twice.',
  },
  outline: {
    title: 'Outline at true size',
    line: 'Both planned brows as large as they will be on the face, and the right one turned over onto the left. For comparing, not a stencil.',
  },
} as const;
export type SheetId = keyof typeof sheetWords;
export const isSheetId = (id: string): id is SheetId => Object.hasOwn(sheetWords, id);

export const sheetsWords = {
  title: 'Sheets',
  line: 'For paper, at true size. Print, check the bars with a ruler, then draw and measure by hand.',
  paper: 'Paper',
  papers: { a4: 'A4', letter: 'Letter' },
  across: 'The 100 mm bar across measures',
  up: 'The 100 mm bar upright measures',
  measuredHint: 'Print once, lay a ruler on both bars, type what it reads, print again.',
  print: 'Print this sheet',
  trueSize: 'Print at true size',
  actualSize:
    'Print at actual size (100 %, no “fit to page”). If the 50 mm bar is not 50 mm, do not use the sheet.',
  itMeasures: ['My ruler reads', 'mm on the 100 mm bar across,', 'mm on the upright one.'],
  name: 'Name or code',
  date: 'Date',
  loadFailed: `${notFetched('The drawing')} The sheet below is unchanged.`,
  noScript:
    'Other faces, papers and printer corrections are chosen in your browser, which needs JavaScript. The sheet below prints without it.',
} as const;

export const practiceSheetWords = {
  task: 'Mark both brows with five small dots each. Draw the midline, then a level line square to it through the pupils. Fill in the table on the next page.',
  seed: 'Face number',
  seedHint: 'From 0 to 999. The same number is always the same face.',
  level: 'Level',
  screen: 'The same face on the screen, with its answer',
  workOut: 'Let the calculator work out your twenty pairs',
  picture: 'A practice face at true size, without marks, between two scale bars',
  tableTitle: 'Twenty readings, twice',
  tableTask:
    'Measure each dot twice: across from the midline, and up or down from the level line. Finish the first column. Cover it before you start the second.',
  columns: ['First pass', 'Second pass', 'Difference', 'Squared'],
  sum: 'Sum of the squares',
  shared: 'Divided by 40',
  root: 'Its square root: your technical error, mm',
  why: 'Forty is two times the twenty pairs. The root is the spread of one of your readings. A difference between two brows that is not clearly larger than this is not shown to be real.',
} as const;

export const outlineSheetWords = {
  warning: 'For comparing, not a stencil. Not sterile: keep it off skin that is being worked on.',
  flat: 'This is the brow as seen straight from the front, laid flat. Skin curves: a length on this sheet is shorter than the same length along the skin.',
  back: 'Change the marks in the calculator',
  picture:
    'Both brow outlines at true size with their marks, the midline and the pupil level, between two scale bars; below them the right brow turned over onto the left',
  right: 'client’s right',
  left: 'client’s left',
  midline: 'midline',
  over: 'left: solid. Right, turned over: dashed',
  marks: 'The marks, in millimetres: out from the midline and up from the pupil level',
  columns: ['Right, out', 'Left, out', 'Right, up', 'Left, up'],
} as const;

/** One line of the table: Front, lower, right: across. */
export function readingName(mark: BrowMark, side: Side, way: 'across' | 'up'): string {
  return `${capital(browMarkWords[mark])}, ${sideWords[side]}: ${way}`;
}

/** What stands in the foot of a sheet: enough to make it again. */
export function sheetFoot(parts: readonly string[], version: string): string {
  return [...parts, `Tautline ${version}`].join(' · ');
}

export function pageOf(page: number, pages: number): string {
  return `Page ${page} of ${pages}`;
}

/** Said in the foot when the sheet is drawn for one printer only. */
export function scaledFor(across: number, up: number): string {
  return across === 1 && up === 1
    ? ''
    : `Drawn ${fixed(across, 3)} across and ${fixed(up, 3)} up for one printer`;
}
