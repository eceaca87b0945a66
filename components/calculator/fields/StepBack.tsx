import { Icon } from '#components/site/Icon.tsx';
import { undoIcon } from '#components/site/icons.ts';

type Props = Readonly<{
  /** What the last change changed; undefined while there is none. */
  undoes: string | undefined;
  undo: () => void;
  reset: () => void;
  /** What is reset: the marks, the numbers. */
  all: string;
}>;

/** The last change taken back, and all of them. */
export function StepBack({ undoes, undo, reset, all }: Props) {
  return (
    <>
      <button
        class="btn line needs-js"
        type="button"
        aria-label={undoes && `Undo: ${undoes}`}
        aria-disabled={undoes === undefined}
        onClick={undo}
      >
        <Icon of={undoIcon} /> Undo
      </button>
      <button class="btn text needs-js" type="button" onClick={reset}>
        Reset the {all}
      </button>
    </>
  );
}
