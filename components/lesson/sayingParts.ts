import { isCalculatorId } from '#calculators/index.ts';
import { isToldId, toldText } from '#calculators/toldNumbers.ts';
import { factOf, isFactId } from '#lib/catalogue.ts';
import { markedName } from '#words/beingMended.ts';
import { calculatorWords } from '#words/calculators.ts';
import { factText } from '#words/evidence.ts';
import { spelt } from '#words/spelt.ts';

/** Words, or words that lead to an address. */
export type SayingPart = Readonly<{ text: string; address?: string }>;

/** What a name in braces stands for. */
function namedPart(name: string): SayingPart {
  const [id = '', inWords] = name.split(/ (in words)$/);
  if (isFactId(id)) return { text: inWords ? spelt(Number(factOf(id).value)) : factText(id) };
  if (isToldId(id)) return { text: toldText(id) };
  if (isCalculatorId(id))
    return {
      text: markedName('calculators', id, calculatorWords[id].title),
      address: `/calculators/${id}/`,
    };
  throw new Error(
    `"{${name}}" names no fact, no number of src/calculators/toldNumbers.ts and no calculator.`,
  );
}

/**
 * A sentence of a calculator's front matter in parts: `{id}` is the value of a fact or of a sum, `{id in
 * words}` a fact's number as a word, and the id of a calculator leads there by its title. Another name is an
 * error.
 */
export const sayingParts = (says: string): readonly SayingPart[] =>
  says
    .split(/\{([^}]*)\}/)
    .map((text, at) => (at % 2 === 0 ? { text } : namedPart(text)))
    .filter(({ text }) => text !== '');
