import { frontAndTail, type FrontAndTailState } from '#calculators/frontAndTail.ts';
import { placingKeys } from '#calculators/wideNoseMarks.ts';
import { FrontAndTailOverlay } from '#components/pictures/FrontAndTailOverlay.tsx';
import type { NoPlacing, Placing } from '#lib/mapping/placing/placeFrontAndTail.ts';
import { anchorWords, edgeWords, frontAndTailSays } from '#words/frontAndTail.ts';
import { facePairWords } from '#words/facePairs.ts';
import { browMarkWords, capital } from '#words/marks.ts';
import type { ComponentChildren } from 'preact';
import { FrontAndTailTables } from './FrontAndTailTables.tsx';
import { frontAndTailView } from './frontAndTailView.ts';
import { type CalculatorFace, Shell } from '../frame/Shell.tsx';

const names: Readonly<Record<string, string>> = { ...facePairWords, ...browMarkWords, tail: 'tail tip' };
const markOf = (key: (typeof placingKeys)[number]) => ({
  key,
  label: `${capital(names[key.slice(0, -1)] ?? key)}, ${key.endsWith('R') ? 'right' : 'left'}`,
});

const face: CalculatorFace<FrontAndTailState, Placing | NoPlacing> = {
  calculator: frontAndTail,
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
  draw: (state, placing) => <FrontAndTailOverlay state={state} placing={placing} />,
  says: frontAndTailSays,
  caution: () => undefined,
};

type Props = Readonly<{
  id?: string;
  /** On the calculator's own page every table stands open. */
  open?: boolean;
  legend?: ComponentChildren;
  children?: ComponentChildren;
}>;

/** Front and tail: the island. The still face comes in as children, drawn at build. */
export function FrontAndTail({ id = 'placing', open = false, legend, children }: Props) {
  return (
    <Shell
      face={face}
      id={id}
      open={open}
      legend={legend}
      address="/calculators/front-and-tail/"
      tables={(placing) => <FrontAndTailTables placing={placing} />}
    >
      {children}
    </Shell>
  );
}
