import { seedCount } from '#lib/practice/itemSeed.ts';
import { rungs, type Rung } from '#lib/practice/ladder.ts';
import { keepTyped, typedHere } from '#components/site/typedShelf.ts';
import type { Skill } from '#skills/skill.ts';

// Needed once an answer is typed, or where one was typed earlier today: fetched then.

/** An answer that was typed or chosen and not settled, with the item it belongs to. */
export type TypedAnswer = Readonly<{ seed: number; index: number; rung: Rung; text: string }>;

const longest = 100;
const place = ({ id }: Readonly<{ id: string }>): string => `problem ${id}`;
const isCount = (value: unknown, below: number): value is number =>
  typeof value === 'number' && Number.isInteger(value) && value >= 0 && value < below;

function readTyped<G>(skill: Skill<G>, typed: unknown): TypedAnswer | undefined {
  if (typeof typed !== 'object' || typed === null) return undefined;
  if (!('seed' in typed && 'index' in typed && 'rung' in typed && 'text' in typed)) return undefined;
  const { seed, index, text } = typed;
  const rung = rungs.find((name) => name === typed.rung);
  if (!isCount(seed, seedCount) || !isCount(index, 1e6) || !rung || typeof text !== 'string')
    return undefined;
  const answer = skill.answer(skill.given(seed));
  if (answer.kind === 'choice' && !answer.options.includes(text)) return undefined;
  return { seed, index, rung, text: text.slice(0, longest) };
}

/** What was typed into this problem today; `lost` where it belongs to another version of it. */
export function typedAnswer<G>(skill: Skill<G>): TypedAnswer | 'lost' | undefined {
  const entry = typedHere(place(skill));
  if (!entry) return undefined;
  return (entry.version === skill.version ? readTyped(skill, entry.typed) : undefined) ?? 'lost';
}

/** Keeps an answer until the day is over; nothing where it is settled or taken away. */
export function keepTypedAnswer<G>(skill: Skill<G>, typed: TypedAnswer | undefined): void {
  keepTyped(
    place(skill),
    typed && { version: skill.version, typed: { ...typed, text: typed.text.slice(0, longest) } },
  );
}

export { typedWords } from '#words/typed.ts';
