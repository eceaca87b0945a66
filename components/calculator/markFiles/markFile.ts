import { toAddress } from '#calculators/address.ts';
import { readMarkFile, writeMarkFile } from '#calculators/markFile.ts';
import { mostBytes } from '#calculators/openOurs.ts';
import { calculatorWords } from '#words/calculators.ts';
import { markFileRefusal, markFileWords, otherCalculator } from '#words/markFile.ts';
import { askDesk } from '../frame/askDesk.ts';
import { handOut } from './handOut.ts';

type Say = (sentence: string, link?: Readonly<{ href: string; label: string }>) => void;

const titles: Readonly<Record<string, Readonly<{ title: string }>>> = calculatorWords;

/** Hands the reader a file with every number of the page's calculator. */
export function saveMarks(say: Say): void {
  const isReady = askDesk(({ calculator, state }) => {
    handOut(`tautline-${calculator.id}.json`, writeMarkFile(calculator, state));
  });
  say(isReady ? markFileWords.saved : markFileWords.notReady);
}

/**
 * Opens a file as the address of its calculator. What stood on the page is first written into the page's own
 * address, so that Back brings it again: opening a file loses nothing.
 */
export async function openMarks(chosen: File, say: Say): Promise<void> {
  if (chosen.size > mostBytes) return say(markFileRefusal({ reason: 'too-large' }));
  let content: string;
  try {
    content = await chosen.text();
  } catch {
    return say(markFileWords.failed);
  }
  const read = readMarkFile(content, Object.keys(calculatorWords));
  if (!read.ok) return say(markFileRefusal(read));
  const { calculator: id } = read.file;
  const href = `/calculators/${id}/?${read.query}`;
  const title = titles[id]?.title ?? id;
  let isOther = false;
  const isReady = askDesk(({ calculator, state }) => {
    isOther = calculator.id !== id;
    const query = toAddress(calculator, state);
    history.replaceState(history.state, '', query ? `?${query}` : location.pathname);
  });
  if (!isReady) return say(markFileWords.notReady);
  if (isOther) return say(otherCalculator(title), { href, label: title });
  location.assign(href);
}
