import { pageOf, sheetsWords } from '#words/sheets.ts';
import type { ComponentChildren } from 'preact';

type Props = Readonly<{
  title: string;
  foot: string;
  page: number;
  pages: number;
  children: ComponentChildren;
}>;

/** One sheet of paper: whose it is, its title, what it holds, and a foot that says how to make it again. */
export function SheetPage({ title, foot, page, pages, children }: Props) {
  return (
    <section class="sheet" aria-label={pageOf(page, pages)}>
      <div class="sheet-head">
        <span class="sheet-mark">Tautline</span>
        <span class="sheet-who">{sheetsWords.name}</span>
        <span class="sheet-who sheet-day">{sheetsWords.date}</span>
      </div>
      <h2>{title}</h2>
      {children}
      <p class="sheet-foot">
        <span>{foot}</span> <span>{pageOf(page, pages)}</span>
      </p>
    </section>
  );
}
