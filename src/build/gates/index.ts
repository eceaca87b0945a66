import type { BuiltPage } from '../builtPages.ts';
import type { Gate } from './fault.ts';
import { idsAreUnique } from './idsAreUnique.ts';
import { linksLead } from './linksLead.ts';
import { noFormulaErrors } from './noFormulaErrors.ts';
import { noInlineStyle } from './noInlineStyle.ts';
import { noStrayValues } from './noStrayValues.ts';
import { noThirdParty } from './noThirdParty.ts';
import { pagesAreNamed } from './pagesAreNamed.ts';
import { picturesHaveWords } from './picturesHaveWords.ts';

/** Every gate the built pages pass before they may ship. */
export const gates: Readonly<Record<string, Gate>> = {
  idsAreUnique,
  linksLead,
  noFormulaErrors,
  noInlineStyle,
  noStrayValues,
  noThirdParty,
  pagesAreNamed,
  picturesHaveWords,
};

/** Runs every gate. One line a fault, with every place it occurs: the layout's faults occur on each page. */
export function faultsIn(pages: readonly BuiltPage[], site: Parameters<Gate>[1]): readonly string[] {
  const places = new Map<string, string[]>();
  for (const [name, gate] of Object.entries(gates)) {
    for (const { file, line, says } of gate(pages, site)) {
      const text = `${says} (${name})`;
      places.set(text, [...(places.get(text) ?? []), `${file}:${line}`]);
    }
  }
  return [...places].map(([says, where]) => `${where[0]}: ${says}${where.length > 1 ? `, and in ${where.length - 1} more places: ${where.slice(1, 4).join(', ')}${where.length > 4 ? ' …' : ''}` : ''}`);
}
