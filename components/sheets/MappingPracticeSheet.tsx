import { practiceSheet, sheetLevels } from '#calculators/sheets/practiceSheet.ts';
import { ChoiceBox } from '#components/calculator/fields/ChoiceBox.tsx';
import { NumberBox } from '#components/calculator/fields/NumberBox.tsx';
import { useCalculator } from '#components/calculator/frame/useCalculator.ts';
import { onDemand } from '#components/site/onDemand.ts';
import { libraryVersion } from '#lib/version.ts';
import { practiceSheetWords as words, scaledFor, sheetFoot, sheetWords } from '#words/sheets.ts';
import { practiceFaceLevels } from '#words/practiceFaces.ts';
import type { ComponentChildren } from 'preact';
import { BarCheck } from './BarCheck.tsx';
import { PaperBoxes, paperName } from './PaperBoxes.tsx';
import { ReadingsTable } from './ReadingsTable.tsx';
import { SheetDesk } from './SheetDesk.tsx';
import { SheetPage } from './SheetPage.tsx';
import { useDrawing } from './useDrawing.ts';

const { title } = sheetWords['mapping-practice'];
const levels = sheetLevels.map((value, i) => ({ value, label: practiceFaceLevels[i] ?? value }));
const nameOf = (key: string) => (key === 'seed' || key === 'level' ? words[key] : paperName(key));
const fetchDrawing = onDemand(async () => (await import('./PracticeSheetDrawing.tsx')).PracticeSheetDrawing);

/**
 * The practice sheet: a face and a table on two pages. `inLink`: what a link to the exercise on the screen
 * carries for its version. The first face comes in as children, drawn at build.
 */
export function MappingPracticeSheet({
  inLink,
  children,
}: Readonly<{ inLink: string; children?: ComponentChildren }>) {
  const id = 'practice-sheet';
  const desk = useCalculator(practiceSheet, nameOf);
  const { drawn, Drawing, notice } = useDrawing(desk.result, fetchDrawing);
  const { seed, level, scale } = drawn;
  const foot = sheetFoot(
    [`Face ${seed}`, levels[level]?.label ?? '', scaledFor(scale.across, scale.up)].filter(Boolean),
    libraryVersion,
  );
  const page = { title, foot, pages: 2 };
  return (
    <SheetDesk
      paper={desk.state.paper}
      refused={desk.refused}
      notice={notice}
      missing={desk.missing}
      boxes={
        <>
          <NumberBox
            id={`${id}-seed`}
            label={words.seed}
            hint={words.seedHint}
            unit=""
            shown={String(Math.round(desk.state.seed))}
            refused={desk.draft('seed')}
            onType={(text) => desk.type('seed', text)}
          />
          <ChoiceBox
            id={`${id}-level`}
            label={words.level}
            value={desk.state.level}
            options={levels}
            onType={(text) => desk.type('level', text)}
          />
          <PaperBoxes desk={desk} id={id} />
        </>
      }
      links={
        <>
          <a class="btn text" href={`/practice/place-the-midline/?seed=${seed}&level=${level}${inLink}`}>
            {words.screen}
          </a>
          <a class="btn text" href="/calculators/measuring-error/">
            {words.workOut}
          </a>
        </>
      }
    >
      <SheetPage {...page} page={1}>
        <p>{words.task}</p>
        <BarCheck />
        {Drawing ? <Drawing seed={seed} level={level} scale={scale} id={id} /> : children}
      </SheetPage>
      <SheetPage {...page} title={words.tableTitle} page={2}>
        <ReadingsTable />
      </SheetPage>
    </SheetDesk>
  );
}
