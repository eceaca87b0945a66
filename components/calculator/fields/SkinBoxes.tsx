import { strokesFor } from '#calculators/strokesLink.ts';
import type { OldWork } from '#lib/colour/old/oldWorks.ts';
import { oldWorkWords } from '#words/mixByDrops.ts';
import { ChoiceBox } from './ChoiceBox.tsx';
import { NumberBox } from './NumberBox.tsx';
import type { Draft } from '../frame/useCalculator.ts';

type SkinState = Readonly<{
  skinL: number;
  skinA: number;
  skinB: number;
  oldWork: OldWork;
  depth: number;
  coverage: number;
}>;
export type SkinName = keyof SkinState;
type Props = Readonly<{
  id: string;
  state: SkinState;
  draft: (name: SkinName) => Draft | undefined;
  onType: (name: SkinName, text: string) => void;
}>;

export const skinLabels = {
  skinL: 'Lightness L*',
  skinA: 'Red a*',
  skinB: 'Yellow b*',
  oldWork: 'Old pigment',
  depth: 'Model depth',
  coverage: 'Skin covered',
} as const satisfies Readonly<Record<SkinName, string>>;

/**
 * The skin beside the brow, what lies in the brow, how much is covered: the same boxes in every calculator of
 * colour.
 */
export function SkinBoxes({ id, state, draft, onType }: Props) {
  const number = (name: Exclude<SkinName, 'oldWork'>, unit = '') => (
    <NumberBox
      key={name}
      id={`${id}-${name}`}
      label={skinLabels[name]}
      unit={unit}
      shown={String(state[name])}
      refused={draft(name)}
      onType={(text) => onType(name, text)}
    />
  );
  const { count, address } = strokesFor(state.coverage);
  return (
    <>
      <fieldset class="drops three">
        <legend>The skin beside the brow</legend>
        {number('skinL')}
        {number('skinA')}
        {number('skinB')}
      </fieldset>
      <ChoiceBox
        id={`${id}-oldWork`}
        label={skinLabels.oldWork}
        value={state.oldWork}
        options={Object.entries(oldWorkWords).map(([value, label]) => ({ value, label }))}
        onType={(text) => onType('oldWork', text)}
      />
      <div class="two">
        {number('coverage', '%')}
        {number('depth', 'mm')}
      </div>
      <p class="hint">
        How much is that? For instance <a href={address}>{count} strokes, once spread</a>.
      </p>
    </>
  );
}
