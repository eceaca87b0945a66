import { printIcon } from '#components/site/icons.ts';
import { Icon } from '#components/site/Icon.tsx';
import { sheetsWords as words } from '#words/sheets.ts';
import { notFetched } from '#words/fetching.ts';
import type { ComponentChildren } from 'preact';

type Props = Readonly<{
  paper: string;
  refused: ComponentChildren;
  notice: string;
  /** What could not be fetched. */
  missing: string | false;
  boxes: ComponentChildren;
  links?: ComponentChildren;
  children: ComponentChildren;
}>;

/** What stands above a sheet on the screen, and the sheet. Only the sheet reaches the paper. */
export function SheetDesk({ paper, refused, notice, missing, boxes, links, children }: Props) {
  return (
    <div class="sheet-desk">
      <div class="no-print">{refused}</div>
      <form
        class="sheet-boxes js-only no-print"
        method="dialog"
        autocomplete="off"
        onSubmit={(event) => event.preventDefault()}
      >
        {boxes}
      </form>
      <div class="sheet-tools no-print">
        <button class="btn needs-js" type="button" onClick={() => print()}>
          <Icon of={printIcon} /> {words.print}
        </button>
        {links}
        <span role="status" class="plain small">
          {missing ? notFetched(missing) : notice}
        </span>
      </div>
      <p class="plain small no-print">{words.actualSize}</p>
      <div class={`sheets ${paper}`}>{children}</div>
    </div>
  );
}
