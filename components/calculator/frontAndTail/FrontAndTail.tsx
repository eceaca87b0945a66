import { frontAndTailFields, type FrontAndTailState } from '#calculators/frontAndTailFields.ts';
import { placingKeys } from '#calculators/wideNoseMarks.ts';
import { FrontAndTailOverlay } from '#components/pictures/FrontAndTailOverlay.tsx';
import { Later } from '#components/site/Later.tsx';
import { onDemand } from '#components/site/onDemand.ts';
import type { NoPlacing, Placing } from '#lib/mapping/placing/placeFrontAndTail.ts';
import { anchorWords, edgeWords, frontAndTailSays } from '#words/frontAndTail.ts';
import { facePairWords } from '#words/facePairs.ts';
import { browMarkWords, capital } from '#words/marks.ts';
import type { ComponentChildren } from 'preact';
import { frontAndTailView } from './frontAndTailView.ts';
import { type CalculatorFace, Shell } from '../frame/Shell.tsx';
import { useSums } from '../lazy/useSums.tsx';

const names: Readonly<Record<string, string>> = { ...facePairWords, ...browMarkWords, tail: 'tail tip' };
const markOf = (key: (typeof placingKeys)[number]) => ({
  key,
  label: `${capital(names[key.slice(0, -1)] ?? key)}, ${key.endsWith('R') ? 'right' : 'left'}`,
});

const words = {
  labels: {
    anchor: { label: 'Start the fronts above', options: anchorWords },
    own: { label: 'My own distance', hint: 'From the midline; used when chosen above.' },
    edge: { label: 'Measure the front at', options: edgeWords },
    nostril: {
      label: 'Middle of the nostril',
      hint: 'Share of the way from the middle of the nose to its wing.',
    },
    error: { label: 'Your reading error', hint: 'Your technical error: the spread of one reading.' },
    readings: { label: 'Readings of each mark' },
  },
  shown: ['anchor', 'own'],
  folded: { heading: 'How they were read', names: ['edge', 'nostril', 'error', 'readings'] },
  marks: [
    { label: 'Nose and eyes', marks: placingKeys.slice(0, 6).map(markOf) },
    { label: 'Brows', marks: placingKeys.slice(6).map(markOf) },
  ],
  firstMark: 'tailR',
  view: frontAndTailView,
  pictureLabel:
    'Brows, eyes and nose on millimetre paper: anchors for the front, line and level for the tail',
  says: frontAndTailSays,
  caution: () => undefined,
} as const satisfies Partial<CalculatorFace<FrontAndTailState, Placing | NoPlacing>>;

const fetchTables = onDemand(() => import('./FrontAndTailTables.tsx'));
const fetchSums = onDemand(async () => (await import('#calculators/frontAndTailSums.ts')).frontAndTailSums);

type Props = Readonly<{
  id?: string;
  /** On the calculator's own page every table stands open. */
  open?: boolean;
  /** The placing of the first state, made at build. */
  start: Placing | NoPlacing;
  /** The tables of the first state, made at build: on the calculator's own page, where they stand open. */
  firstTables?: ComponentChildren;
  legend?: ComponentChildren;
  children?: ComponentChildren;
}>;

/**
 * Front and tail: the island. The sums are fetched at the first change; the still face comes in as children.
 */
export function FrontAndTail({ id = 'placing', open = false, start, firstTables, legend, children }: Props) {
  const { calculator, is, isMissing, watch } = useSums(frontAndTailFields, start, fetchSums);
  const face: CalculatorFace<FrontAndTailState, Placing | NoPlacing> = {
    ...words,
    calculator,
    draw: (state, placing) => (
      <>
        <FrontAndTailOverlay state={state} placing={placing} />
        {watch(state)}
      </>
    ),
    missing: isMissing && 'What places front and tail',
    sums: is,
  };
  return (
    <Shell
      face={face}
      id={id}
      open={open}
      legend={legend}
      address="/calculators/front-and-tail/"
      tables={(placing, _, isOpen) => (
        <Later
          fetchPart={fetchTables}
          isWanted={isOpen}
          what="The tables"
          meanwhile={placing === start && firstTables}
          show={({ FrontAndTailTables }) => <FrontAndTailTables placing={placing} />}
        />
      )}
    >
      {children}
    </Shell>
  );
}
