/** What stands on the label of one bottle, as far as it decides about use. */
export type InkLabel = Readonly<{
  /** It says that the mixture is for tattoos or permanent make-up. */
  saysUse: boolean;
  hasLot: boolean;
  listsIngredients: boolean;
  /** The month at whose end the bottle is past, 1 to 12. */
  last: Readonly<{ year: number; month: number }>;
}>;

export const labelFaults = ['no-use', 'no-lot', 'no-list', 'past'] as const;
export type LabelFault = (typeof labelFaults)[number];

/**
 * What keeps a bottle shut, in the order of the list; empty where none of the four was found. It lasts
 * through its last month.
 */
export function labelFaultsOf(
  { saysUse, hasLot, listsIngredients, last }: InkLabel,
  today: Readonly<{ year: number; month: number }>,
): readonly LabelFault[] {
  const isPast = today.year * 12 + today.month > last.year * 12 + last.month;
  const found: Readonly<Record<LabelFault, boolean>> = {
    'no-use': !saysUse,
    'no-lot': !hasLot,
    'no-list': !listsIngredients,
    past: isPast,
  };
  return labelFaults.filter((fault) => found[fault]);
}
