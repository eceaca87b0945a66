import { fromAddress } from '#calculators/address.ts';
import { parsers } from '#calculators/parsers.ts';
import { refusalSentence } from '#words/refusal.ts';

/** What is needed once something is typed, linked or copied; fetched then, so that a page that is only read stays small. */
export { toAddress } from '#calculators/address.ts';
export { fromAddress, parsers, refusalSentence };
