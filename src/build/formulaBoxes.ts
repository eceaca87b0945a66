type Node = {
  type: string;
  tagName?: string;
  properties?: Record<string, unknown>;
  children?: Node[];
};

const isFormula = ({ tagName, children }: Node): boolean =>
  tagName === 'span' &&
  children?.some((child) => child.tagName === 'math' && child.properties?.['display'] === 'block') === true;

/**
 * A formula on a line of its own: one box that scrolls where it is too wide, by keys as well, and that the
 * search leaves out.
 */
const boxed = (formula: Node): Node => ({
  type: 'element',
  tagName: 'div',
  properties: {
    className: ['formula'],
    dataPagefindIgnore: true,
    tabIndex: 0,
    role: 'group',
    ariaLabel: 'Formula',
  },
  children: [formula],
});

function boxIn(node: Node): void {
  if (node.children === undefined) return;
  node.children = node.children.map((child) => (isFormula(child) ? boxed(child) : child));
  for (const child of node.children) if (child.properties?.['role'] !== 'group') boxIn(child);
}

/** The same as a step of the renderer, after the one that makes formulas. */
export const formulaBoxes = () => boxIn;
