import type { ArchPlaces, ArchRule } from './archRules.ts';

/** The two rules that stand furthest apart, and by how much. */
export type ArchSpread = Readonly<{
  innermost: ArchRule;
  outermost: ArchRule;
  fromMm: number;
  toMm: number;
  spreadMm: number;
}>;

/** How far a group of rules disagrees: the honest size of "about here". The first of equals is named. */
export function archSpread(places: ArchPlaces, rules: readonly [ArchRule, ...ArchRule[]]): ArchSpread {
  const [first] = rules;
  const innermost = rules.reduce((best, rule) => (places[rule] < places[best] ? rule : best), first);
  const outermost = rules.reduce((best, rule) => (places[rule] > places[best] ? rule : best), first);
  const fromMm = places[innermost];
  const toMm = places[outermost];
  return { innermost, outermost, fromMm, toMm, spreadMm: toMm - fromMm };
}
