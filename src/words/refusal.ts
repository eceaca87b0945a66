import type { Unit } from '#lib/quantities/unit.ts';
import { fixed } from './number.ts';
import { unitInFull } from './units.ts';

/** A limit with all of its decimals: a message that rounds 0.05 to 0.1 would be untrue. */
function short(value: number): string {
  return fixed(value, String(value).split('.')[1]?.length ?? 0);
}

/** An unknown key of an address can be of any length. */
const longestName = 40;

type Refused = Readonly<{
  code: string;
  lo?: number;
  hi?: number;
  unit?: Unit;
  lines?: readonly Readonly<{ line: number; code: string }>[];
}>;

const lineFaults: Readonly<Record<string, string>> = {
  'not-two': 'two numbers are needed, such as 12.3 12.6',
  ambiguous: 'is that a thousand or a decimal?',
  'not-a-number': 'this is not a number',
};

/** What is wrong with a typed text, and what is accepted. `given` is the field's label: "Reading error". */
export function refusalSentence(given: string, { code, lo, hi, unit, lines = [] }: Refused): string {
  const name = given.slice(0, longestName);
  const limits =
    lo === undefined || hi === undefined
      ? ''
      : ` between ${short(lo)} and ${short(hi)}${unit ? ` ${unitInFull[unit]}` : ''}`.trimEnd();
  switch (code) {
    case 'empty':
      return `${name}: type a number${limits}.`;
    case 'ambiguous':
      return `${name}: is that a thousand or a decimal? Use one point or one comma, such as 31.5 or 31,5.`;
    case 'out-of-range':
      return `${name} must be${limits}.`;
    case 'unknown-choice':
      return `${name}: this page has no such choice. The first one is used.`;
    case 'not-a-point':
      return `${name}: a mark needs two numbers, across and up, such as -16.2_0.4.`;
    case 'not-pairs':
      return `${name}: ${lines.map((fault) => `line ${fault.line}, ${lineFaults[fault.code] ?? `the numbers must be${limits}`}`).join('; ')}.`;
    case 'too-many-pairs':
      return `${name}: at most ${hi ?? 0} pairs.`;
    case 'never-kept':
      return `${name}: this is asked anew each time. It is never kept in a link or a file, so answer it here.`;
    case 'given-twice':
      return `${name} stands in the address more than once. The first is used.`;
    case 'unknown-field':
      return `The address holds “${name}”, which this page does not know. It was left out.`;
    default:
      return `${name}: this is not a number. Type digits with one point or comma, such as 31.5.`;
  }
}
