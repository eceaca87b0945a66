import { defaultTreeAdapter } from 'parse5';
import { lineOf, nodesUnder } from '../builtPages.ts';
import type { Fault, OpenGate } from './fault.ts';

const stray = /\bundefined\b|\bNaN\b|\[object \w|\bInfinity\b/;

/** A missing value that slipped into the words or the drawing of a page. */
export const noStrayValues: OpenGate = () => ({
  read: (page) => {
    const faults: Fault[] = [];
    for (const node of nodesUnder(page.document)) {
      if (defaultTreeAdapter.isTextNode(node)) {
        const holder = node.parentNode?.nodeName ?? '';
        if (['script', 'style'].includes(holder) || !stray.test(node.value)) continue;
        faults.push({
          file: page.file,
          line: lineOf(node),
          says: `the words “${node.value.trim().slice(0, 80)}” hold a missing value`,
        });
      } else if (defaultTreeAdapter.isElementNode(node) && node.tagName !== 'astro-island') {
        for (const { name, value } of node.attrs) {
          if (stray.test(value))
            faults.push({
              file: page.file,
              line: lineOf(node),
              says: `<${node.tagName} ${name}="${value.slice(0, 60)}"> holds a missing value`,
            });
        }
      }
    }
    return faults;
  },
});
