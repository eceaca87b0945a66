import type { Path, Step } from './path.ts';
import type { Spot } from '#lib/face/spot.ts';

/**
 * SVG path data, relative commands. Each step starts from the rounded pen position, so rounding errors do not
 * add up.
 * `place` turns the drawing's y-up spots into the picture's y-down millimetres.
 */
export function pathText(path: Path, place: (spot: Spot) => Spot, decimals: number): string {
  const grain = 10 ** decimals;
  let pen: Spot = [0, 0];
  let start: Spot = [0, 0];
  let text = '';
  let letterBefore = '';
  for (const step of path) {
    if (step[0] === 'Z') {
      text += 'z';
      pen = start;
      letterBefore = '';
      continue;
    }
    const spots = spotsOf(step)
      .map(place)
      .map(([x, y]): Spot => [Math.round(x * grain), Math.round(y * grain)]);
    const numbers = spots.flatMap(([x, y]) => [x - pen[0], y - pen[1]]);
    const letter = step[0].toLowerCase();
    text += joined(letter === letterBefore && letter !== 'm' ? '' : letter, numbers, grain, decimals);
    letterBefore = letter;
    pen = spots.at(-1) ?? pen;
    if (letter === 'm') start = pen;
  }
  return text;
}

function spotsOf(step: Step): readonly Spot[] {
  switch (step[0]) {
    case 'Z':
      return [];
    case 'Q':
      return [step[1], step[2]];
    case 'C':
      return [step[1], step[2], step[3]];
    default:
      return [step[1]];
  }
}

/** Numbers side by side, as tight as the grammar allows: a letter or a minus already separates. */
function joined(letter: string, numbers: readonly number[], grain: number, decimals: number): string {
  return numbers.reduce((text, whole, i) => {
    const digits = String(Number((whole / grain).toFixed(decimals))).replace(/^(-?)0\./, '$1.');
    const parted = (i === 0 && letter !== '') || digits.startsWith('-');
    return text + (parted ? '' : ' ') + digits;
  }, letter);
}
