import type { Band } from '#lib/mapping/compare/band.ts';
import { type BrowMark, browMarks } from '#lib/mapping/marks/markSet.ts';
import type { LevelReference } from '#lib/mapping/marks/levelReference.ts';
import type { MidlineMark } from '#lib/mapping/marks/mirrorMarks.ts';
import type { Difference, ShownReading, NoFaceReading } from '#lib/mapping/compare/readFace.ts';
import type { Interval } from '#lib/quantities/interval.ts';
import { facePairWords } from './facePairs.ts';
import { faceSingleWords } from './faceSingles.ts';
import { capital } from './marks.ts';
import { fixed } from './number.ts';

/** The figure's answer: the bold first sentence, then what else there is to say. */
export type Says = Readonly<{ answer: string; doubt: string }>;

export const levelWords: Readonly<Record<LevelReference, string>> = {
  midline: 'at right angles to the midline',
  'eye-corners': 'along the eye corners',
  pupils: 'along the pupils',
};

export const judgedWords = { together: 'all ten together', 'one-alone': 'one alone' } as const;

export const bandWords: Readonly<Record<Band, string>> = {
  'not-shown': 'not shown',
  'few-see': 'real, few see it',
  'some-see': 'real, some see it',
  'most-see': 'real, most see it',
};

/** How a brow mark is called when its height or its distance is spoken of. */
const heightOf: Readonly<Record<BrowMark, string>> = {
  frontLower: 'lower front',
  frontTop: 'top of the front',
  archTop: 'arch',
  archLower: 'lower arch',
  tail: 'tail',
};

/** A range without its sign: 0.5 to 2.7, or up to 3.1 where it reaches zero. */
export function rangeWords({ lo, hi }: Pick<Interval, 'lo' | 'hi'>, unit = ' mm'): string {
  const [near = 0, far = 0] = [Math.abs(lo), Math.abs(hi)].sort((a, b) => a - b);
  return lo <= 0 && hi >= 0
    ? `up to ${fixed(far)}${unit} either way`
    : `${fixed(near)} to ${fixed(far)}${unit}`;
}

/** The trade's name of a mark of the midline; a pair is named as two. */
function markName(mark: MidlineMark): string {
  return mark === 'glabella' || mark === 'nasion' || mark === 'subnasale' || mark === 'chin'
    ? faceSingleWords[mark]
    : `${facePairWords[mark]}s`;
}

/** "a", "a and b", "a, b and c". */
export function listed(names: readonly string[]): string {
  if (names.length < 2) return names.join('');
  return `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

/** The marks that were weighed down, in the trade's words; the nose's own marks are named as one. */
export function untrustedNames(notTrusted: readonly MidlineMark[]): string {
  const isNose = notTrusted.includes('noseWing') && notTrusted.includes('subnasale');
  const rest = notTrusted.filter((mark) => !isNose || (mark !== 'noseWing' && mark !== 'subnasale'));
  return listed([...(isNose ? ['nose wings and nose base'] : []), ...rest.map(markName)]);
}

/** Which way the head leans; under a twentieth of a degree it stands straight. */
function leanSentence(lean: Interval): string {
  if (lean.lo <= 0 && lean.hi >= 0) return 'A lean of the head is not shown';
  return `The head leans ${fixed(Math.abs(lean.value))}° (${rangeWords(lean, '')}) to the client’s ${lean.value < 0 ? 'left' : 'right'}`;
}

function realOnes(brows: ShownReading['brows']): readonly { text: string; size: number }[] {
  return browMarks.flatMap((mark) => {
    const said = (difference: Difference, how: string) => {
      const size = Math.abs(difference.value);
      const who = difference.band === 'most-see' ? 'most' : difference.band === 'some-see' ? 'some' : 'few';
      return {
        text: `the ${difference.value > 0 ? 'left' : 'right'} ${heightOf[mark]} stands ${fixed(size)} mm ${how} (${rangeWords(difference)}); ${who} people see it`,
        size,
        isReal: difference.band !== 'not-shown',
      };
    };
    return [said(brows[mark].up, 'higher'), said(brows[mark].outward, 'further out')].filter(
      ({ isReal }) => isReal,
    );
  });
}

/** Said where another midline fits about equally well. */
const rivalSays =
  'Two midlines fit about equally well: read the marks of the face again before you trust one.';

/** What the figure of midline and sides says about one reading. */
export function midlineSays(
  reading: (ShownReading & Readonly<{ hasRivalMidline?: boolean }>) | NoFaceReading,
): Says {
  if (!reading.ok) return refusedReading(reading);
  const lean = leanSentence(reading.rollDeg);
  const untrusted = untrustedNames(reading.notTrusted);
  const off = Math.max(0, ...reading.notTrusted.map((mark) => reading.marks[mark].residualMm));
  const trust = untrusted
    ? `Not trusted: ${untrusted}, up to ${fixed(off)} mm from where the others agree.`
    : 'All marks agree.';
  const real = [...realOnes(reading.brows)].sort((a, b) => b.size - a.size);
  const others =
    real.length === 0
      ? 'No difference is shown to be real.'
      : `${capital(real[0]?.text ?? '')}.${real.length > 1 ? ` ${real.length - 1} more ${real.length === 2 ? 'difference is' : 'differences are'} real: see All numbers.` : ' No other is shown to be real.'}`;
  return {
    answer: `${lean}. ${trust}${reading.hasRivalMidline === true ? ` ${rivalSays}` : ''}`,
    doubt: `${others}${real.length === 0 ? ' That is not the same as equal.' : ''}`,
  };
}

function refusedReading({ reason }: NoFaceReading): Says {
  switch (reason) {
    case 'face-not-upright':
      return {
        answer: 'This face lies on its side, or its sides are exchanged.',
        doubt: 'The client’s right is on the picture’s left.',
      };
    case 'marks-do-not-fix-a-midline':
      return { answer: 'These marks do not fix a midline.', doubt: 'Check the eyes and the chin.' };
    case 'mark-not-a-number':
      return { answer: 'One mark has no place.', doubt: 'Type both of its numbers.' };
  }
}

/** A caution that follows from how the marks were taken. */
export function takenCaution({
  pose,
  posture,
  skin,
}: Readonly<{ pose: string; posture: string; skin: string }>): string | undefined {
  if (skin === 'swollen')
    return 'Swollen skin has moved: do not chase differences under 1 mm, and do not plan from this reading.';
  if (skin === 'numb') return 'Numb skin: compare only with other numb readings.';
  if (pose === 'raised' || pose === 'frown')
    return 'The brows are not at rest: a difference may come from the muscle. Read again at rest.';
  if (posture === 'lying')
    return 'Brows move when a client lies down: compare only with other readings taken lying down.';
  return undefined;
}
