import type { Side } from '#lib/mapping/marks/markSet.ts';
import type { FrontAnchor } from '#lib/mapping/placing/anchorDistances.ts';
import type { FrontEdge, LengthKind } from '#lib/mapping/placing/drawnLengths.ts';
import { limitVerdict, type LimitVerdict } from '#lib/mapping/placing/limitVerdict.ts';
import type { NoPlacing, Placing, TailSide } from '#lib/mapping/placing/placeFrontAndTail.ts';
import { includesZero, type Interval } from '#lib/quantities/interval.ts';
import { fixed } from './number.ts';

export const anchorWords: Readonly<Record<FrontAnchor | 'own', string>> = {
  'nose-wing': 'nose wing',
  'inner-corner': 'inner eye corner',
  'nostril-middle': 'middle of the nostril',
  own: 'my own distance',
};

export const edgeWords: Readonly<Record<FrontEdge, string>> = {
  frontLower: 'lower front mark',
  frontTop: 'upper front mark',
};

export const lengthWords: Readonly<Record<LengthKind, string>> = {
  level: 'straight across, from the front',
  chord: 'front mark to tail tip',
  upperEdge: 'along the upper edge',
};

export const verdictWords: Readonly<Record<LimitVerdict, string>> = {
  keeps: 'keeps it',
  breaks: 'breaks it',
  'too-near': 'too near to tell',
};

/** The tail checks of one side, in the order in which they are read. */
export const tailChecks = ['inside', 'overLower', 'underTop'] as const;
export const tailCheckWords = {
  inside: 'inside the tail line',
  overLower: 'tip over the front’s lower edge',
  underTop: 'tip under the front’s top',
} as const satisfies Readonly<Record<(typeof tailChecks)[number], string>>;

const brokenWords = {
  inside: 'past the line',
  overLower: 'below the front’s lower edge',
  underTop: 'above the front’s top',
} as const;

/**
 * "3.2 mm past the line and 1.2 mm below the front's lower edge": past the line is told level, as it would be
 * taken off.
 */
function tailSays(side: Side, tail: TailSide): string {
  const roomMm = {
    inside: tail.insideLevelMm,
    overLower: tail.overLower.value,
    underTop: tail.underTop.value,
  };
  const broken = tailChecks
    .filter((check) => limitVerdict(tail[check]) === 'breaks')
    .map((check) => `${fixed(Math.abs(roomMm[check]))} mm ${brokenWords[check]}`);
  const near = tailChecks
    .filter((check) => limitVerdict(tail[check]) === 'too-near')
    .map((check) => tailCheckWords[check]);
  const name = side === 'right' ? 'Right tail' : 'Left tail';
  const doubt = near.length > 0 ? `${broken.length > 0 ? '; ' : ''}too near to tell: ${near.join(', ')}` : '';
  if (broken.length > 0) return `${name}: ${broken.join(' and ')}${doubt}.`;
  return doubt ? `${name}: ${doubt}.` : `${name}: keeps all three checks.`;
}

/** A difference left minus right, in words. */
function apartSays(difference: Interval, name: string, more: string): string {
  if (includesZero(difference)) return `${name}: not shown to be different`;
  return `${name}: the ${difference.value > 0 ? 'left' : 'right'} is ${fixed(Math.abs(difference.value))} mm ${more}`;
}

/** What the figure says: the anchors and the chosen front, then the tails. */
export function frontAndTailSays(
  placing: Placing | NoPlacing,
  { anchor, edge }: Readonly<{ anchor: FrontAnchor | 'own'; edge: FrontEdge }>,
): Readonly<{ answer: string; doubt: string }> {
  if (!placing.ok)
    return { answer: 'There is no tail line.', doubt: 'An outer eye corner must stand above its nose wing.' };
  const { anchors, chosenMm, fronts, tails, tailsUp, lengthsApart } = placing;
  const both = (name: FrontAnchor) => fixed(anchors[name].bothMm);
  const moved = (side: Side) => {
    const { moveMm } = fronts[side];
    return Math.abs(moveMm) < 0.05
      ? `${side} stays`
      : `${side} ${fixed(Math.abs(moveMm))} mm ${moveMm > 0 ? 'out' : 'in'}`;
  };
  const lean = Math.abs(anchors['nose-wing'].leftMinusRightMm);
  const wings = lean < 0.05 ? '' : ` The two wings are unequal by ${fixed(lean)} mm: their mean is used.`;
  return {
    answer: `Nose wing ${both('nose-wing')} mm, inner corner ${both('inner-corner')}, nostril ${both('nostril-middle')}. Start both fronts at ${fixed(chosenMm)} mm by ${anchor === 'own' ? anchorWords.own : `the ${anchorWords[anchor]}`}.`,
    doubt: `Measured at the ${edgeWords[edge]}: ${moved('right')}, ${moved('left')}.${wings} ${tailSays('right', tails.right)} ${tailSays('left', tails.left)} ${apartSays(lengthsApart, 'Lengths', 'longer')}. ${apartSays(tailsUp, 'Tail tips', 'higher')}.`,
  };
}
