import type { BrowAgain, MarkStep } from '#lib/mapping/again/afterFirstPass.ts';
import type { StopReason } from '#lib/mapping/again/nextStep.ts';
import type { BrowMark, SkinState } from '#lib/mapping/marks/markSet.ts';
import { browMarkWords } from './marks.ts';
import { fixed } from './number.ts';

type Refused = Extract<BrowAgain, { ok: false }>['reason'];

const refusedWords: Readonly<Record<Refused, string>> = {
  'pose-differs':
    'Not compared: she approved the outline with her face at rest and her eyes open. Wait until she rests, and read again.',
  'posture-differs': 'Not compared: she approved the outline sitting up. Sit her up and read again.',
  'approved-on-swollen-skin': 'Not compared: the outline was drawn on swollen skin.',
};

const stopWords: Readonly<Record<Exclude<StopReason, 'over'>, string>> = {
  swollen: 'Stop: swollen',
  'not-shown': 'Stop: not shown',
  thicker: 'Stop: it would be thicker',
};

/** The verdict at one mark, for a table. */
export function stepWords({ short, step }: MarkStep): string {
  if (step.do === 'read-again') return 'Both moved: read again';
  if (step.do === 'add-here') return `Add here, ${fixed(step.addMm)} mm`;
  return step.because === 'over' ? `Stop: ${fixed(-short.value)} mm over` : stopWords[step.because];
}

/**
 * "a, b and c". Written here as well, so that a lesson's figure loads one file less than with the words of
 * problems.
 */
function listed(items: readonly string[]): string {
  return items.join(', ').replace(/, ([^,]+)$/, ' and $1');
}

/** A mark inside a sentence: "arch top", "tail". */
function markName(mark: BrowMark): string {
  return browMarkWords[mark].replace(',', '');
}

/**
 * What the figure says: where both edges moved and are read again, where to add, and why to stop everywhere
 * else.
 */
export function afterTheFirstPassSays(again: BrowAgain): Readonly<{ answer: string; doubt: string }> {
  if (!again.ok)
    return {
      answer: refusedWords[again.reason],
      doubt:
        'A lifted or lying brow sits elsewhere. What you would add is the difference between two moments.',
    };
  const { marks, realFromMm } = again;
  const names: readonly BrowMark[] = ['frontTop', 'archTop', 'frontLower', 'archLower', 'tail'];
  const at = (because: StopReason) =>
    names.filter(
      (mark) =>
        marks[mark].step.do === 'stop' &&
        'because' in marks[mark].step &&
        marks[mark].step.because === because,
    );
  const added = names.flatMap((mark) => {
    const { step } = marks[mark];
    return step.do === 'add-here' ? [`${markName(mark)} ${fixed(step.addMm)} mm`] : [];
  });
  const moved = (['front', 'arch'] as const).filter((place) => marks[`${place}Top`].step.do === 'read-again');
  const sentence = (because: StopReason, say: (which: string) => string) => {
    const which = at(because);
    return which.length === 0
      ? []
      : [
          say(
            listed(
              which.map((mark) =>
                because === 'over'
                  ? `${markName(mark)} ${fixed(-marks[mark].short.value)} mm`
                  : markName(mark),
              ),
            ),
          ),
        ];
  };
  const add = `dd here, if the skin bears it: ${listed(added)}, to the outline and no further. Stop everywhere else.`;
  const readAgain = `Both edges of the ${moved.join(' and of the ')} moved the same way: read them again, level first. Add nothing there until you have.`;
  return {
    answer:
      moved.length > 0
        ? `${readAgain} ${added.length === 0 ? 'Stop everywhere else.' : `Elsewhere, a${add}`}`
        : added.length > 0
          ? `A${add}`
          : at('thicker').length + at('swollen').length > 0
            ? 'Stop: nowhere may pigment be added today.'
            : 'Stop: nowhere is the pigment shown to be short of the approved outline.',
    doubt: [
      ...(moved.length > 0
        ? ['If both still read alike, the brow has shifted, not the pigment: leave it.']
        : []),
      ...sentence(
        'over',
        (which) => `Past the outline: ${which}. Pigment is not taken out; leave it, and say so to her.`,
      ),
      ...sentence(
        'thicker',
        (which) =>
          `Short, but the other edge is past its line: ${which}. Filled, the brow would be thicker than she approved.`,
      ),
      ...sentence(
        'swollen',
        (which) => `Short, but under a millimetre on swollen skin: ${which}. Look again when it has healed.`,
      ),
      ...sentence('not-shown', (which) => `Not shown: ${which}.`),
      `Five marks together: real from ${fixed(realFromMm, 2)} mm.`,
    ].join(' '),
  };
}

/** What the state of the skin does to the reading. */
export function skinCaution(skin: SkinState): string | undefined {
  if (skin === 'normal') return undefined;
  return skin === 'numb'
    ? 'Numbed skin can be thicker and paler than it will be. Judge colour when it has healed.'
    : 'Swelling moves edges. What is left is judged at the perfecting visit.';
}
