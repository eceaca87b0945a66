import { browKeys, type BrowKey } from '#calculators/browFields.ts';
import { outlineAndCover, type OutlineAndCoverState } from '#calculators/outlineAndCover.ts';
import { OutlineOverlay } from '#components/pictures/OutlineOverlay.tsx';
import type { TradeReport } from '#lib/mapping/outline/tradeChecks.ts';
import type { NoPlacing } from '#lib/mapping/placing/placeFrontAndTail.ts';
import { anchorWords, edgeWords } from '#words/frontAndTail.ts';
import { browMarkWords, capital } from '#words/marks.ts';
import { outlineSays } from '#words/outlineAndCover.ts';
import { browMarks } from '#lib/mapping/markSet.ts';
import type { ComponentChildren } from 'preact';
import { OutlineTables } from './OutlineTables.tsx';
import { outlineView } from './outlineView.ts';
import { type CalculatorFace, Shell } from './Shell.tsx';

const markOf = (key: BrowKey) => {
  const mark = browMarks.find((name) => key.startsWith(name));
  return { key, label: `${mark ? capital(browMarkWords[mark]) : key}, ${key.endsWith('R') ? 'right' : 'left'}` };
};

const face: CalculatorFace<OutlineAndCoverState, TradeReport | NoPlacing> = {
  calculator: outlineAndCover,
  labels: {
    station: { label: 'My own station', hint: 'Share of the length, from the front. Its number stands below the brow.' },
    edge: { label: 'Measure the front at', options: edgeWords },
    anchor: { label: 'The fronts stand above', options: anchorWords },
    error: { label: 'Your reading error', hint: 'Your technical error: the spread of one reading.' },
    readings: { label: 'Readings of each mark' },
  },
  shown: ['station'],
  folded: { heading: 'How they were read', names: ['edge', 'anchor', 'error', 'readings'] },
  marks: [
    { label: 'Right brow', marks: browKeys.filter((key) => key.endsWith('R')).map(markOf) },
    { label: 'Left brow', marks: browKeys.filter((key) => key.endsWith('L')).map(markOf) },
  ],
  firstMark: 'frontTopR',
  view: outlineView,
  pictureLabel: 'Both brows on millimetre paper: planned outlines, and thickness straight across at every station; one station larger',
  draw: (state, report) => <OutlineOverlay points={state} report={report} ownShare={state.station / 100} />,
  says: outlineSays,
  caution: () => undefined,
};

type Props = Readonly<{ id?: string; /** On the calculator's own page every table stands open. */ open?: boolean; legend?: ComponentChildren; children?: ComponentChildren }>;

/** Outline and thickness: the island. The still face comes in as children, drawn at build. */
export function OutlineAndCover({ id = 'outline', open = false, legend, children }: Props) {
  return (
    <Shell face={face} id={id} open={open} legend={legend} address="/calculators/outline-and-cover/" tables={(report) => <OutlineTables report={report} />}>
      {children}
    </Shell>
  );
}
