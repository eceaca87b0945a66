import type { Lab } from '#lib/colour/spaces/lab.ts';
import { dropsOnPaper, labWords, mixRefusals, noFirstGone, skinOnPaper } from './mixByDrops.ts';
import { fixed } from './number.ts';

export const ageWords = {
  'six-weeks': 'six weeks',
  'three-months': 'three months',
  'six-months': 'six months',
  'one-year': 'one year',
  'eighteen-months': 'eighteen months',
  'two-years': 'two years',
  'three-years': 'three years',
} as const;

export const whyLabels = {
  healedL: 'Lightness L*',
  healedA: 'Red a*',
  healedB: 'Yellow b*',
  error: 'Reading error',
  age: 'Age of the work',
  second: 'A second reading',
  secondL: 'Later L*',
  secondA: 'Later a*',
  secondB: 'Later b*',
  doseLo: 'Lowest dose',
  doseHi: 'Highest dose',
  skinL: 'Skin L*',
  skinA: 'Skin a*',
  skinB: 'Skin b*',
  oldWork: 'Old pigment',
  coverage: 'Skin covered',
  depth: 'Depth planned',
  dose: 'Dose planned',
} as const;

type Ends = Readonly<{ lo: number; hi: number }>;
type Cell = Readonly<{
  depthMm: number;
  dose: number;
  loss: number;
  difference: number;
  fits: readonly number[];
}>;
type Row = Readonly<{
  depthMm: number;
  doses: Ends | undefined;
  losses: Ends | undefined;
  difference: number;
}>;
type Result =
  | Readonly<{
      ok: true;
      doses: readonly number[];
      set: Readonly<{
        count: number;
        of: number;
        isTied: boolean;
        ranges: Readonly<{ depthMm: Ends; dose: Ends; loss: Ends }> | undefined;
        rows: readonly Row[];
      }>;
      nearest: Cell;
      plan: Cell;
      planAway: number;
      dates: readonly Readonly<{ seen: Lab }>[];
      isOutsideMeasured: boolean;
      hasSwatch: boolean;
    }>
  | Readonly<{
      ok: false;
      reason:
        | 'no-drops'
        | 'own-bottle-missing'
        | 'no-dose-range'
        | 'no-skin-like-spectrum'
        | 'old-pigment-not-reached';
    }>;

/** At the field of the highest dose. */
export const noDoseRange = 'Highest dose must be above the lowest dose.';

const refusals = {
  ...mixRefusals,
  'no-dose-range': { answer: 'There is no dose to look at.', doubt: noDoseRange },
} as const;

const plain = (value: number) => String(Number(value.toFixed(2)));

/** "0.12 to 0.59", or one number where both ends are printed alike. */
export function endsWords({ lo, hi }: Ends, decimals = 2): string {
  return fixed(lo, decimals) === fixed(hi, decimals)
    ? fixed(lo, decimals)
    : `${fixed(lo, decimals)} to ${fixed(hi, decimals)}`;
}

/** "0.5 to 2 times the assumed loss", "the assumed loss" */
export function lossWords({ lo, hi }: Ends): string {
  if (lo === 1 && hi === 1) return 'the assumed loss';
  return `${lo === hi ? plain(lo) : `${plain(lo)} to ${plain(hi)}`} times the assumed loss`;
}

const lossesOf = (fits: readonly number[]): Ends => ({ lo: Math.min(...fits), hi: Math.max(...fits) });

function planWords({ plan, planAway }: Extract<Result, { ok: true }>): string {
  const named = `The plan, ${fixed(plan.depthMm, 2)} mm with dose ${fixed(plan.dose, 2)},`;
  if (plan.fits.includes(1)) return `${named} fits too.`;
  if (plan.fits.length > 0) return `${named} fits only with ${lossWords(lossesOf(plan.fits))}.`;
  return `${named} does not fit: with the assumed loss it stays ${fixed(planAway)} away.`;
}

/** What would fit, in words. Never what happened. */
export function whySays(result: Result, error: number): Readonly<{ answer: string; doubt: string }> {
  if (!result.ok) return refusals[result.reason];
  const { set, nearest, doses } = result;
  if (!set.ranges) {
    const atEnd =
      nearest.dose === doses[0] || nearest.dose === doses.at(-1)
        ? ' It lies at the end of the doses looked at: try a wider range.'
        : '';
    return {
      answer: 'Nothing looked at fits: what was read is not explained by this model.',
      doubt: `The nearest pair is ${fixed(nearest.depthMm, 2)} mm and dose ${fixed(nearest.dose, 2)} with ${lossWords({ lo: nearest.loss, hi: nearest.loss })}: still ${fixed(nearest.difference)} away, where ${fixed(error)} is allowed.${atEnd} Check the share of skin covered first: it moves the colour most. The model does not know the hand, the healing, aftercare, sun, another pigment in the bottle or another lamp. Each can be the reason; none is a fault by itself.`,
    };
  }
  const { depthMm, dose, loss } = set.ranges;
  const [first, last] = [set.rows[0]?.depthMm, set.rows.at(-1)?.depthMm];
  const isOneDepth = depthMm.lo === depthMm.hi;
  const apart = isOneDepth
    ? ''
    : ` Depth and dose cannot be told apart here${set.isTied ? ': deeper with more heals like shallower with less' : ''}.`;
  const isAtEnd =
    depthMm.lo === first || depthMm.hi === last || dose.lo === doses[0] || dose.hi === doses.at(-1);
  return {
    answer: `${isOneDepth ? 'Depth' : 'Depths'} ${isOneDepth ? '' : 'from '}${endsWords(depthMm)} mm and ${dose.lo === dose.hi ? 'dose ' : 'doses from '}${endsWords(dose)} fit, in this model.`,
    doubt: `That is ${set.count} of ${set.of} pairs, with ${lossWords(loss)}.${apart} ${planWords(result)}${isAtEnd ? ' They reach the end of what was looked at: more may fit beyond.' : ''} This is what would fit, not what happened.`,
  };
}

type Age = keyof typeof ageWords;
type Asked = Parameters<typeof skinOnPaper>[0] &
  Readonly<
    Record<
      | 'healedL'
      | 'healedA'
      | 'healedB'
      | 'secondL'
      | 'secondA'
      | 'secondB'
      | 'error'
      | 'dose'
      | 'doseLo'
      | 'doseHi',
      number
    > & { age: Age; second: Age | 'none' }
  >;
/** What was read, what was mixed and planned, for paper: there the fields are left out. */
export function whyOnPaper(state: Asked, drops: Parameters<typeof dropsOnPaper>[0]): string {
  const { age, healedL, healedA, healedB, second, secondL, secondA, secondB, error, dose, doseLo, doseHi } =
    state;
  const then =
    second === 'none' ? '' : `, at ${ageWords[second]} ${labWords({ l: secondL, a: secondA, b: secondB })}`;
  return `Read at ${ageWords[age]} ${labWords({ l: healedL, a: healedA, b: healedB })}${then}, each within ${error}. ${skinOnPaper(state, ' before the work')} Drops: ${dropsOnPaper(drops)}. Dose planned ${dose}; doses looked at ${doseLo} to ${doseHi}.`;
}

/** Colour is the last question: what outranks it. */
export function whyCaution(result: Result): string {
  const skin =
    'Raised, itchy, scaly or lumpy skin is not a question of colour: refer, and put no pigment in.';
  const swatch = result.ok && result.hasSwatch ? ` ${noFirstGone} Its loss is a guess.` : '';
  return `${skin}${swatch}${result.ok && result.isOutsideMeasured ? ' This skin lies outside the measured skins the model learned from: the map is less sure.' : ''}`;
}

/** The map in words, for those who do not see it. */
export function mapLabel(result: Extract<Result, { ok: true }>): string {
  const { set, nearest, doses } = result;
  const fits = set.ranges
    ? `${set.count} of ${set.of} fit: depths ${endsWords(set.ranges.depthMm)} millimetres, doses ${endsWords(set.ranges.dose)}.`
    : `None of ${set.of} fits.`;
  return `Map of model depth across and dose ${fixed(doses[0] ?? 0, 2)} to ${fixed(doses.at(-1) ?? 0, 2)} upwards. ${fits} Nearest: ${fixed(nearest.depthMm, 2)} millimetres, dose ${fixed(nearest.dose, 2)}. The table below holds the same, depth by depth.`;
}
