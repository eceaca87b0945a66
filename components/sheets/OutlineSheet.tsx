import { browKeys } from '#calculators/browFields.ts';
import { outlineSheet } from '#calculators/sheets/outlineSheet.ts';
import { useCalculator } from '#components/calculator/frame/useCalculator.ts';
import { onDemand } from '#components/site/onDemand.ts';
import { libraryVersion } from '#lib/version.ts';
import { outlineSheetWords as words, scaledFor, sheetFoot, sheetWords } from '#words/sheets.ts';
import type { ComponentChildren } from 'preact';
import { BarCheck } from './BarCheck.tsx';
import { BrowMarksTable } from './BrowMarksTable.tsx';
import { PaperBoxes, paperName } from './PaperBoxes.tsx';
import { SheetDesk } from './SheetDesk.tsx';
import { SheetPage } from './SheetPage.tsx';
import { useDrawing } from './useDrawing.ts';

const fetchDrawing = onDemand(async () => (await import('./OutlineSheetDrawing.tsx')).OutlineSheetDrawing);

/** The outline of both brows on one page. Its first drawing comes in as children, made at build. */
export function OutlineSheet({ children }: Readonly<{ children?: ComponentChildren }>) {
  const id = 'outline-sheet';
  const desk = useCalculator(outlineSheet, paperName);
  const { drawn, Drawing, notice } = useDrawing(desk.result, fetchDrawing);
  const { scale, brows } = drawn;
  const marks = browKeys.map((key) => `${key}=${outlineSheet.fields[key].write(desk.state[key])}`).join('&');
  const foot = sheetFoot([scaledFor(scale.across, scale.up)].filter(Boolean), libraryVersion);
  return (
    <SheetDesk
      paper={desk.state.paper}
      refused={desk.refused}
      notice={notice}
      missing={desk.missing}
      boxes={<PaperBoxes desk={desk} id={id} />}
      links={
        <a class="btn text" href={`/calculators/outline-and-cover/?${marks}`}>
          {words.back}
        </a>
      }
    >
      <SheetPage title={sheetWords.outline.title} foot={foot} page={1} pages={1}>
        <p class="sheet-warning">{words.warning}</p>
        <p>{words.flat}</p>
        <BarCheck />
        {Drawing ? <Drawing brows={brows} scale={scale} /> : children}
        <BrowMarksTable brows={brows} />
      </SheetPage>
    </SheetDesk>
  );
}
