import { isBeingMended, type MendedKind, mendedWords } from '#words/beingMended.ts';
import type { ComponentChildren } from 'preact';
import { Icon } from './Icon.tsx';
import { cautionIcon } from './icons.ts';

type Props = Readonly<{
  kind: MendedKind;
  id: string;
  /** What else is to be said here. */
  children?: ComponentChildren;
}>;

/**
 * The notice of a page or part that is being mended; nothing of one that is not. It stands above every
 * answer.
 */
export function BeingMended({ kind, id, children }: Props) {
  if (!isBeingMended(kind, id)) return null;
  return (
    <div class="caution mended" role="note" data-mended={`${kind}/${id}`}>
      <Icon of={cautionIcon} />
      <div>
        <p class="mended-title">{mendedWords.title}</p>
        <p>
          {mendedWords.why} {mendedWords.instead}
        </p>
        {children}
      </div>
    </div>
  );
}
