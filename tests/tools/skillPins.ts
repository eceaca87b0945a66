import { readFileSync } from 'node:fs';
import { seedCount } from '#lib/practice/itemSeed.ts';
import { seedFrom } from '#lib/quantities/seed.ts';
import { skills } from '#skills/index.ts';
import { placeMidline } from '#skills/mapping/placeMidline.ts';
import type { Answer } from '#skills/skill.ts';

/** What a version of a skill deals: its numbers for seeds 0 to 9, one by one, and its numbers and right answers for every seed, in one. */
export type Pin = Readonly<{
  version: number;
  givens: readonly number[];
  everyGiven: number;
  everyAnswer: number;
}>;

type Dealt = Readonly<{ given: unknown; answer: unknown }>;
type Pinned = Readonly<{ id: string; version: number; seeds: number; deal: (seed: number) => Dealt }>;

/** What is right, as a page marks it: the exact value between the ends of a range is not part of that. */
function marked(answer: Answer): unknown {
  if (answer.kind === 'choice') return { correct: answer.correct, options: answer.options.toSorted() };
  const { range, unit } = answer;
  return { range, unit };
}

/** Any skill: what it deals is its own to read. */
type AnySkill = Readonly<{
  id: string;
  version: number;
  given: (seed: number) => unknown;
  answer: (given: never) => Answer;
}>;

const pinnedSkill = ({ id, version, given, answer }: AnySkill): Pinned => ({
  id,
  version,
  seeds: seedCount,
  deal: (seed) => {
    const dealt = given(seed);
    return { given: dealt, answer: marked(answer(dealt as never)) };
  },
});

/** Faces take longer to deal: a hundred of them, over all levels. */
const faces: Pinned = {
  id: placeMidline.id,
  version: placeMidline.version,
  seeds: 100,
  deal: (seed) => {
    const levels = [0, 1, 2, 3, 4] as const;
    const given = placeMidline.given(seed, levels[seed % levels.length] ?? 0);
    const { brows, chin } = placeMidline.answer(given);
    return { given, answer: { brows, chin } };
  },
};

/** Every exercise that is pinned, by its id. */
export const pinned: readonly Pinned[] = [...Object.values(skills).map(pinnedSkill), faces];

/** Twelve digits: what an engine rounds otherwise in the last place is no other exercise. */
const text = (value: unknown): string =>
  JSON.stringify(value, (_, part: unknown) =>
    typeof part === 'number' ? Number(part.toPrecision(12)) : part,
  );

export function pinOf({ version, seeds, deal }: Pinned): Pin {
  const dealt = Array.from({ length: seeds }, (_, seed) => deal(seed));
  const every = (part: keyof Dealt) => dealt.reduce((hash, one) => seedFrom(hash, text(one[part])), 0);
  return {
    version,
    givens: dealt.slice(0, 10).map(({ given }) => seedFrom(JSON.stringify(given))),
    everyGiven: every('given'),
    everyAnswer: every('answer'),
  };
}

export const pinFile = (id: string): URL => new URL(`../specs/pins/${id}.json`, import.meta.url);

export function readPin(id: string): Pin | undefined {
  try {
    return JSON.parse(readFileSync(pinFile(id), 'utf8'));
  } catch {
    return undefined;
  }
}

/** What stands between a skill and its pin, as one line that says what to do. Nothing when they agree. */
export function pinFault(id: string, pin: Pin | undefined, now: Pin): string | undefined {
  const accept = `node tests/tools/pinSkill.ts ${id}`;
  if (!pin) return `"${id}" is new and has no pin. Write it: ${accept}`;
  const changed = [
    ...(String(pin.givens) === String(now.givens) && pin.everyGiven === now.everyGiven
      ? []
      : ['the numbers that its seeds deal']),
    ...(pin.everyAnswer === now.everyAnswer ? [] : ['what is right for them']),
  ].join(' and ');
  if (now.version === pin.version) {
    return changed
      ? `"${id}" changed ${changed}, and its version is still ${pin.version}: every answer that was ever kept, and every seed that was ever noted, would mean something else in silence. If it was made anew on purpose, count its version up to ${pin.version + 1}, then: ${accept}`
      : undefined;
  }
  if (now.version === pin.version + 1)
    return `"${id}" is version ${now.version}, its pin is of version ${pin.version}. Write the new one: ${accept}`;
  return `"${id}" is version ${now.version}, its pin is of version ${pin.version}: versions count up by one.`;
}
