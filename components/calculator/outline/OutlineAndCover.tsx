import { browKeys, type BrowKey } from '#calculators/browFields.ts';
import { outlineAndCoverFields, type OutlineAndCoverState } from '#calculators/outlineAndCoverFields.ts';
import { OutlineOverlay } from '#components/pictures/OutlineOverlay.tsx';
import { Later } from '#components/site/Later.tsx';
import { onDemand } from '#components/site/onDemand.ts';
import type { OutlineReport } from '#calculators/outlineSums.ts';
import { browMarkWords, capital } from '#words/marks.ts';
import { outlineSays } from '#words/outlineAndCover.ts';
import { browMarks } from '#lib/mapping/marks/markSet.ts';
import type { ComponentChildren } from 'preact';
import { outlineView } from './outlineView.ts';
import { type CalculatorFace, Shell } from '../frame/Shell.tsx';
import { useSums } from '../lazy/useSums.tsx';

const markOf = (key: BrowKey) => {
  const mark = browMarks.find((name) => key.startsWith(name));
  return {
    key,
    label: `${mark ? capital(browMarkWords[mark]) : key}, ${key.endsWith('R') ? 'right' : 'left'}`,
  };
};

type Options = Readonly<Record<'edge' | 'anchor', Readonly<Record<string, string>>>>;
const words = (options: Options) =>
  ({
    labels: {
      station: {
        label: 'My own station',
        hint: 'Share of the length, from the front. Its number stands below the brow.',
      },
      edge: { label: 'Measure the front at', options: options.edge },
      anchor: { label: 'The fronts stand above', options: options.anchor },
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
    pictureLabel:
      'Both brows on millimetre paper: planned outlines, and thickness straight across at every station; one station larger',
    caution: () => undefined,
  }) as const satisfies Partial<CalculatorFace<OutlineAndCoverState, OutlineReport>>;

const fetchTables = onDemand(() => import('./OutlineTables.tsx'));
const fetchSums = onDemand(async () => (await import('#calculators/outlineSums.ts')).outlineSums);

type Props = Readonly<{
  id?: string;
  /** On the calculator's own page every table stands open. */
  open?: boolean;
  /** The result of the first state, and the names of the choices: both made at build. */
  start: OutlineReport;
  options: Options;
  /** The tables of the first state, made at build: on the calculator's own page, where they stand open. */
  firstTables?: ComponentChildren;
  legend?: ComponentChildren;
  children?: ComponentChildren;
}>;

/**
 * Outline and thickness: the island. The sums are fetched at the first change; the still face comes in as
 * children.
 */
export function OutlineAndCover({
  id = 'outline',
  open = false,
  start,
  options,
  firstTables,
  legend,
  children,
}: Props) {
  const { calculator, is, isMissing, watch } = useSums(outlineAndCoverFields, start, fetchSums);
  const face: CalculatorFace<OutlineAndCoverState, OutlineReport> = {
    ...words(options),
    calculator,
    draw: (state, report) => (
      <>
        <OutlineOverlay points={state} report={report} ownShare={state.station / 100} />
        {watch(state)}
      </>
    ),
    says: outlineSays,
    missing: isMissing && 'What works out the outline',
    sums: is,
  };
  return (
    <Shell
      face={face}
      id={id}
      open={open}
      legend={legend}
      address="/calculators/outline-and-cover/"
      tables={(report, _, isOpen) => (
        <Later
          fetchPart={fetchTables}
          isWanted={isOpen}
          what="The tables"
          meanwhile={report === start && firstTables}
          show={({ OutlineTables }) => <OutlineTables report={report} />}
        />
      )}
    >
      {children}
    </Shell>
  );
}
