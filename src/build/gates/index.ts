import type { BuiltPage } from '../builtPages.ts';
import type { BuiltSite, Fault, OpenGate } from './fault.ts';
import { idsAreUnique } from './idsAreUnique.ts';
import { linksLead } from './linksLead.ts';
import { noFormulaErrors } from './noFormulaErrors.ts';
import { noInlineStyle } from './noInlineStyle.ts';
import { noStrayValues } from './noStrayValues.ts';
import { noThirdParty } from './noThirdParty.ts';
import { pagesAreNamed } from './pagesAreNamed.ts';
import { picturesHaveWords } from './picturesHaveWords.ts';

/** Every gate the built pages pass before they may ship. */
export const gates: Readonly<Record<string, OpenGate>> = {
  idsAreUnique,
  linksLead,
  noFormulaErrors,
  noInlineStyle,
  noStrayValues,
  noThirdParty,
  pagesAreNamed,
  picturesHaveWords,
};

/**
 * Shows each page to every gate. One line a fault, with every place it occurs: the layout's faults occur on
 * each page.
 */
export function faultsIn(pages: Iterable<BuiltPage>, site: BuiltSite): readonly string[] {
  const places = new Map<string, string[]>();
  const note = (name: string, faults: readonly Fault[]) => {
    for (const { file, line, says } of faults) {
      const text = `${says} (${name})`;
      const where = places.get(text);
      if (where) where.push(`${file}:${line}`);
      else places.set(text, [`${file}:${line}`]);
    }
  };
  const open = Object.entries(gates).map(([name, gate]) => ({ name, gate: gate(site) }));
  for (const page of pages) for (const { name, gate } of open) note(name, gate.read(page));
  for (const { name, gate } of open) note(name, gate.end?.() ?? []);
  return [...places].map(
    ([says, where]) =>
      `${where[0]}: ${says}${where.length > 1 ? `, and in ${where.length - 1} more places: ${where.slice(1, 4).join(', ')}${where.length > 4 ? ' …' : ''}` : ''}`,
  );
}
