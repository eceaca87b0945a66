import { attribute, elementsOf, lineOf, textOf } from '../builtPages.ts';
import type { OpenGate } from './fault.ts';

/** The formula renderer swallows errors and prints the source in red instead; here they stop the build. */
export const noFormulaErrors: OpenGate = () => ({
  read: (page) =>
    [...elementsOf(page)]
      .filter((element) => attribute(element, 'class')?.split(/\s+/).includes('katex-error'))
      .map((element) => ({
        file: page.file,
        line: lineOf(element),
        says: `a formula did not render: ${textOf(element).slice(0, 60)} (${attribute(element, 'title') ?? 'no reason given'})`,
      })),
});
