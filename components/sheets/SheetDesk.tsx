import { cautionIcon, printIcon } from '#components/site/icons.ts';
import { Icon } from '#components/site/Icon.tsx';
import { sheetsWords as words } from '#words/sheets.ts';
import type { ComponentChildren } from 'preact';

type Props = Readonly<{ paper: string; refused: readonly string[]; notice: string; boxes: ComponentChildren; links?: ComponentChildren; children: ComponentChildren }>;

/** What stands above a sheet on the screen, and the sheet. Only the sheet reaches the paper. */
export function SheetDesk({ paper, refused, notice, boxes, links, children }: Props) {
  return (
    <div class="sheet-desk">
      {refused.length > 0 && (
        <div class="caution slim no-print" role="alert">
          <Icon of={cautionIcon} />
          <div>
            <h3>Part of this link could not be read.</h3>
            <ul>{refused.slice(0, 5).map((sentence) => <li key={sentence}>{sentence}</li>)}</ul>
          </div>
        </div>
      )}
      <form class="sheet-boxes js-only no-print" autocomplete="off" onSubmit={(event) => event.preventDefault()}>{boxes}</form>
      <div class="sheet-tools no-print">
        <button class="btn needs-js" type="button" onClick={() => print()}><Icon of={printIcon} /> {words.print}</button>
        {links}
        <span role="status" class="plain small">{notice}</span>
      </div>
      <p class="plain small no-print">{words.actualSize}</p>
      <div class={`sheets ${paper}`}>{children}</div>
    </div>
  );
}
