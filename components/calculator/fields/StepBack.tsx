import { Icon } from '#components/site/Icon.tsx';
import { undoIcon } from '#components/site/icons.ts';

type Props = Readonly<{
  /** What the last change changed; undefined while there is none. */
  undoes: string | undefined;
  onUndo: () => void;
  resets: string;
  onReset: () => void;
}>;

/** The last change taken back, and all of them. */
export function StepBack({ undoes, onUndo, resets, onReset }: Props) {
  return (
    <>
      <button
        class="btn line needs-js"
        type="button"
        aria-label={undoes ? `Undo: ${undoes}` : undefined}
        aria-disabled={undoes === undefined}
        onClick={onUndo}
      >
        <Icon of={undoIcon} /> Undo
      </button>
      <button class="btn text needs-js" type="button" onClick={onReset}>
        {resets}
      </button>
    </>
  );
}
