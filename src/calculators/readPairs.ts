import { readWithin } from './readWithin.ts';
import type { PairLimits, Read, Refusal } from './spec.ts';

type LineFault = NonNullable<Refusal['lines']>[number];

/** Long enough for any list that is typed; the rest of a longer text is not looked at. */
const longestText = 5000;
const mostFaults = 5;

/**
 * The two texts of one line: parted by spaces, a semicolon or a stroke; "12.3,12.6" counts, as both carry
 * points.
 */
function partsOf(line: string): readonly string[] {
  const plain = line.replace(/mm\b/g, ' ').replace(/(\d\.\d+),(?=[-−]?\d+\.\d)/g, '$1 ');
  return plain
    .split(/[\s_;|/]+/)
    .map((part) => part.replace(/,$/, ''))
    .filter((part) => part !== '');
}

/**
 * Reads pairs of numbers, one pair a line (in an address a line ends with "*"), with decimal points or
 * commas.
 * Gives them in the one form in which they are kept: "12.3_12.6*41_40.9". Empty lines are passed over, each
 * line that cannot be read is named.
 */
export function readPairs(text: string, limits: PairLimits): Read<string> {
  const { most, lo, hi, unit } = limits;
  const pairs: string[] = [];
  const lines: LineFault[] = [];
  text
    .slice(0, longestText)
    .split(/\r\n|[\r\n*]/)
    .forEach((line, i) => {
      const parts = partsOf(line);
      if (parts.length === 0 || lines.length >= mostFaults) return;
      const fault = (code: LineFault['code']) => lines.push({ line: i + 1, code });
      if (parts.length !== 2) return fault('not-two');
      const numbers: number[] = [];
      for (const part of parts) {
        const read = readWithin(part, limits);
        if (!read.ok)
          return fault(
            read.refusal.code === 'ambiguous' || read.refusal.code === 'out-of-range'
              ? read.refusal.code
              : 'not-a-number',
          );
        numbers.push(Number(read.value.toFixed(3)) || 0);
      }
      return pairs.push(numbers.join('_'));
    });
  if (lines.length > 0) return { ok: false, refusal: { code: 'not-pairs', lo, hi, unit, lines } };
  if (pairs.length === 0) return { ok: false, refusal: { code: 'empty', lo, hi, unit } };
  if (pairs.length > most || text.length > longestText)
    return { ok: false, refusal: { code: 'too-many-pairs', hi: most } };
  return { ok: true, value: pairs.join('*') };
}
