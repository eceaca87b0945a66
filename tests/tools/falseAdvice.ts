const advises =
  /\b(?:points? back|tak(?:es?|ing) \S+(?: \S+){0,3} away|goes back|wants?|helps?|use|lay|lays|mix|put|choose|covers?|hides?)\b/i;
const refuses = /\b(?:not|never|no|none|nothing|without|keeps? it green|falls? in|pulls?|leave it)\b|n’t\b/i;
const black = /\b(?:iron black|a black|black oxide|plain black)\b/i;
const yellow = /\byellow\b/i;

/** Bottle and old colour in one sentence that advises the one over the other. */
const pairs: readonly Readonly<{ bottle: RegExp; old: RegExp; unless?: RegExp }>[] = [
  {
    bottle: black,
    old: /\b(?:grey-blue|orange|pink|salmon)\b/i,
    unless: /\bbrown,? (?:with )?iron black\b|\borange and\b|\borange, /i,
  },
  { bottle: yellow, old: /\b(?:green|pink|salmon)\b/i, unless: /\bred\b|\borange\b|yellow-heavy/i },
];

/**
 * Sentences that advise what harms: iron black over grey-blue, orange or pink; yellow, which holds white or
 * no red, over green or pink; or the claim that pigment always darkens. By the practice of the trade, not by
 * any sum of this site.
 */
export function falseAdviceIn(text: string): readonly string[] {
  const sentences = text.replace(/\s+/g, ' ').split(/(?<=[.!?])\s+/);
  return sentences.filter((sentence) => {
    if (/\bpigment (?:only )?darkens\b/i.test(sentence) || /\bblack lets less light\b/i.test(sentence))
      return true;
    if (!advises.test(sentence) || refuses.test(sentence)) return false;
    return pairs.some(
      ({ bottle, old, unless }) =>
        bottle.test(sentence) && old.test(sentence.replace(bottle, '')) && !unless?.test(sentence),
    );
  });
}
