import { tied } from '#words/skills/say.ts';

type Node = { type: string; value?: string; children?: Node[] };

/**
 * Ties numbers to their units and axes in the text of lessons, rules and pages. Code and formulas stay as
 * they are.
 */
function tieIn(node: Node): void {
  if (node.type === 'text' && node.value !== undefined) node.value = tied(node.value);
  node.children?.forEach(tieIn);
}

/** The same as a step of the Markdown renderer. */
export const tieNumbers = () => tieIn;
