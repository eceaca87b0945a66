import type { PaperState } from '#calculators/sheets/paper.ts';
import type { State } from '#calculators/spec.ts';
import { ChoiceBox } from '#components/calculator/fields/ChoiceBox.tsx';
import { NumberBox } from '#components/calculator/fields/NumberBox.tsx';
import { rounded, type Desk } from '#components/calculator/frame/useCalculator.ts';
import { sheetsWords as words } from '#words/sheets.ts';

const papers = [
  { value: 'a4', label: words.papers.a4 },
  { value: 'letter', label: words.papers.letter },
];

/** Paper, and what the ruler reads on both bars. */
export function PaperBoxes<S extends State & PaperState, R>({
  desk,
  id,
}: Readonly<{ desk: Desk<S, R>; id: string }>) {
  const box = (name: 'across' | 'up', hint?: string) => (
    <NumberBox
      id={`${id}-${name}`}
      label={words[name]}
      hint={hint}
      unit="mm"
      shown={String(rounded(desk.state[name], 2))}
      refused={desk.draft(name)}
      onType={(text) => desk.type(name, text)}
    />
  );
  return (
    <>
      <ChoiceBox
        id={`${id}-paper`}
        label={words.paper}
        value={desk.state.paper}
        options={papers}
        onType={(text) => desk.type('paper', text)}
      />
      {box('across', words.measuredHint)}
      {box('up')}
    </>
  );
}

/** The label of a paper field, for messages. */
export function paperName(key: string): string {
  return key === 'paper' || key === 'across' || key === 'up' ? words[key] : key;
}
