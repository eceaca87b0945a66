import { outcomes, type Answers, type Condition, type Outcome, type Rule } from './rule.ts';

export type Truth = 'yes' | 'no' | 'unknown';

export type Verdict<Q extends string = string> = Readonly<{
  /** The strongest outcome of the rules that speak; `none` is not "all is well". */
  outcome: Outcome | 'none';
  /** Ids of the rules that speak, strongest outcome first. */
  hits: readonly string[];
  /** Questions not asked on which a silent rule still hangs, in the order of the rules. */
  unasked: readonly Q[];
  /** The strongest outcome the unasked questions could still bring; `none` where nothing is open. */
  couldBecome: Outcome | 'none';
}>;

/**
 * The truth of one condition in three values (Kleene's strong logic): an answer not given decides nothing by
 * itself.
 */
export function truthOf<Q extends string>(condition: Condition<Q>, answers: Answers<Q>): Truth {
  if ('all' in condition) return joined(condition.all, answers, 'no', 'yes');
  if ('any' in condition) return joined(condition.any, answers, 'yes', 'no');
  if ('not' in condition) {
    const inner = truthOf(condition.not, answers);
    return inner === 'unknown' ? 'unknown' : inner === 'yes' ? 'no' : 'yes';
  }
  const answer = answers[condition.question];
  if (answer === undefined) return 'unknown';
  if ('is' in condition) return answer === condition.is ? 'yes' : 'no';
  if (typeof answer !== 'number' || Number.isNaN(answer)) return 'unknown';
  if ('atLeast' in condition) return answer >= condition.atLeast ? 'yes' : 'no';
  return answer < condition.below ? 'yes' : 'no';
}

/**
 * Runs rules over answers. An unasked question outranks a rule that is satisfied with less: see
 * `couldBecome`.
 */
export function evaluate<Q extends string>(rules: readonly Rule<Q>[], answers: Answers<Q>): Verdict<Q> {
  const hits: Rule<Q>[] = [];
  const open: Rule<Q>[] = [];
  for (const rule of rules) {
    const truth = truthOf(rule.when, answers);
    if (truth === 'yes') hits.push(rule);
    if (truth === 'unknown') open.push(rule);
  }
  const unasked = [...new Set(open.flatMap(({ when }) => questionsOf(when)))].filter(
    (question) => answers[question] === undefined,
  );
  return {
    outcome: strongest(hits),
    hits: hits
      .toSorted((a, b) => outcomes.indexOf(a.outcome) - outcomes.indexOf(b.outcome))
      .map(({ id }) => id),
    unasked,
    couldBecome: strongest(open),
  };
}

/** Every question a condition asks, in reading order. */
export function questionsOf<Q extends string>(condition: Condition<Q>): readonly Q[] {
  if ('all' in condition) return condition.all.flatMap((part) => questionsOf(part));
  if ('any' in condition) return condition.any.flatMap((part) => questionsOf(part));
  if ('not' in condition) return questionsOf(condition.not);
  return [condition.question];
}

/**
 * `all` is decided by the first "no", `any` by the first "yes"; otherwise one unknown part leaves the whole
 * unknown.
 */
function joined<Q extends string>(
  parts: readonly Condition<Q>[],
  answers: Answers<Q>,
  decides: Truth,
  otherwise: Truth,
): Truth {
  const truths = parts.map((part) => truthOf(part, answers));
  if (truths.includes(decides)) return decides;
  return truths.includes('unknown') ? 'unknown' : otherwise;
}

function strongest(rules: readonly Rule[]): Outcome | 'none' {
  return outcomes.find((outcome) => rules.some((rule) => rule.outcome === outcome)) ?? 'none';
}
