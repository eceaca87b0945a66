import type { ArchPlaces, ArchRule } from '#lib/mapping/placing/archRules.ts';
import type { ArchSpread } from '#lib/mapping/placing/archSpread.ts';
import { fixed } from './number.ts';

/** Each rule as an artist would say it, short enough for a list. */
export const archRuleWords: Readonly<Record<ArchRule, string>> = {
  pupil: 'above the pupil',
  'iris-edge': 'above the outer edge of the iris',
  'iris-edge-to-corner': 'halfway from the iris edge to the outer corner',
  'two-thirds': 'two thirds of the length from the front',
  women: 'as measured on women, in eye widths',
  models: 'as measured on models, in eye widths',
  'outer-corner': 'above the outer eye corner',
  'golden-from-front': 'golden section of the length, from the front',
  'golden-from-tail': 'golden section of the length, from the tail',
  'own-share': 'your own share of the length',
};

/** What stands behind a rule. */
export const archGradeWords = { published: 'Study', habit: 'Common practice', own: 'Your own' } as const;

export const archLabels = {
  rule: 'Your rule',
  share: 'Your own share of the length',
  front: 'Front, both sides',
  tail: 'Tail, both sides',
  inner: 'Inner eye corner',
  pupil: 'Pupil',
  outer: 'Outer eye corner',
  iris: 'Width of the iris you can see',
} as const;

type Result =
  | Readonly<{ ok: true; places: ArchPlaces; published: ArchSpread; chosenMm: number }>
  | Readonly<{ ok: false; reason: 'no-length' | 'eye-not-in-order' }>;

/**
 * What the figure of arch rules says: where print puts the arch, how far it disagrees, what the reader's rule
 * gives.
 */
export function archSays(
  result: Result,
  { rule, share }: Readonly<{ rule: ArchRule; share: number }>,
): Readonly<{ answer: string; doubt: string }> {
  if (!result.ok) {
    return result.reason === 'no-length'
      ? {
          answer: 'This brow has no length.',
          doubt: 'The tail must stand further from the midline than the front.',
        }
      : {
          answer: 'These eye marks do not follow each other.',
          doubt: 'From the nose outwards: inner corner, pupil, edge of the iris, outer corner.',
        };
  }
  const { published, chosenMm, places } = result;
  const mine = rule === 'own-share' ? `${archRuleWords[rule]}, ${fixed(share)} %` : archRuleWords[rule];
  const golden =
    rule === 'golden-from-front'
      ? ''
      : ` The golden section from the front gives ${fixed(places['golden-from-front'])} mm.`;
  return {
    answer: `The published rules put the arch ${fixed(published.fromMm)} to ${fixed(published.toMm)} mm from the midline: they are ${fixed(published.spreadMm)} mm apart.`,
    doubt: `Your rule, ${mine}, gives ${fixed(chosenMm)} mm on both sides.${golden} No study was found that supports a golden-section arch as such. Every rule is a place to start: the mirror decides.`,
  };
}
