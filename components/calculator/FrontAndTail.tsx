import { frontAndTail, type FrontAndTailState } from '#calculators/frontAndTail.ts';
import { placingKeys } from '#calculators/wideNoseMarks.ts';
import { FrontAndTailOverlay } from '#components/pictures/FrontAndTailOverlay.tsx';
import type { NoPlacing, Placing } from '#lib/mapping/placing/placeFrontAndTail.ts';
import { anchorWords, edgeWords, frontAndTailSays } from '#words/frontAndTail.ts';
import type { ComponentChildren } from 'preact';
import { frontAndTailView } from './frontAndTailView.ts';
import { LaterFrontAndTail } from './LaterFrontAndTail.tsx';
import { type CalculatorFace, Shell } from './Shell.tsx';

const names: Readonly<Record<string, string>> = {
  noseWing: 'Nose wing',
  innerCorner: 'Inner eye corner',
  outerCorner: 'Outer eye corner',
  frontLower: 'Front, lower',
  frontTop: 'Front, top',
  archTop: 'Arch, top',
  tail: 'Tail tip',
};
const markOf = (key: (typeof placingKeys)[number]) => ({ key, label: `${names[key.slice(0, -1)]}, ${key.endsWith('R') ? 'right' : 'left'}` });

const face: CalculatorFace<FrontAndTailState, Placing | NoPlacing> = {
  calculator: frontAndTail,
  labels: {
    anchor: { label: 'Start the fronts above', options: anchorWords },
    own: { label: 'My own distance', hint: 'From the midline; used when chosen above.' },
    edge: { label: 'Measure the front at', options: edgeWords },
    nostril: { label: 'Middle of the nostril', hint: 'Share of the way from the middle of the nose to its wing.' },
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
  pictureLabel: 'Brows, eyes and nose on millimetre paper: anchors for the front, line and level for the tail',
  draw: (state, placing) => <FrontAndTailOverlay state={state} placing={placing} />,
  says: frontAndTailSays,
  caution: () => undefined,
};

export type FrontAndTailTable = (props: Readonly<{ placing: Placing | NoPlacing }>) => ComponentChildren;
type Props = Readonly<{ id?: string; tables?: FrontAndTailTable; legend?: ComponentChildren; children?: ComponentChildren }>;

/** Front and tail as a lesson's island. The still face comes in as children, drawn at build. */
export function FrontAndTail({ id = 'placing', tables: Built, legend, children }: Props) {
  return (
    <Shell
      face={face}
      id={id}
      open={Built !== undefined}
      legend={legend}
      address="/calculators/front-and-tail/"
      tables={(placing, _, isOpen) => (Built ? <Built placing={placing} /> : <LaterFrontAndTail placing={placing} isOpen={isOpen} />)}
    >
      {children}
    </Shell>
  );
}
