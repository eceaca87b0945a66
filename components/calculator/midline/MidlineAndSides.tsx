import { type MidlineAndSidesState, midlineAndSidesFields } from '#calculators/midlineAndSidesFields.ts';
import { type MarkKey, namedMarks } from '#calculators/marks.ts';
import type { NoFaceReading, ShownReading } from '#lib/mapping/compare/readFace.ts';
import { MidlineOverlay } from '#components/pictures/MidlineOverlay.tsx';
import { onDemand } from '#components/site/onDemand.ts';
import { facePairWords } from '#words/facePairs.ts';
import { faceSingleWords } from '#words/faceSingles.ts';
import { browMarkWords, capital, poseWords, postureWords, skinWords } from '#words/marks.ts';
import { judgedWords, levelWords, midlineSays, takenCaution } from '#words/midline.ts';
import type { ComponentChildren } from 'preact';
import { LaterTables } from './LaterTables.tsx';
import type { Tables } from '../frame/tables.ts';
import { midlineView } from './midlineView.ts';
import { type CalculatorFace, Shell } from '../frame/Shell.tsx';
import { useSums } from '../lazy/useSums.tsx';

type Option = Readonly<{ key: MarkKey; label: string }>;
const inGroup = (group: 'pair' | 'single' | 'brow'): readonly Option[] =>
  namedMarks
    .filter((named) => named.group === group)
    .map((named) => ({
      key: named.key,
      label: capital(
        named.group === 'single'
          ? faceSingleWords[named.mark]
          : `${named.group === 'pair' ? facePairWords[named.mark] : browMarkWords[named.mark]}, ${named.side}`,
      ),
    }));

export type MidlineAnswer = ShownReading | NoFaceReading;
const fetchSums = onDemand(
  async () => (await import('#calculators/midlineAndSides.ts')).midlineAndSides.solve,
);

const words = {
  labels: {
    level: { label: 'Level is', options: levelWords },
    error: { label: 'Your reading error', hint: 'Your technical error: the spread of one reading.' },
    readings: { label: 'Readings of each mark', hint: 'A mean of more readings has less error.' },
    judged: { label: 'Judge the differences', options: judgedWords },
    pose: { label: 'Face', options: poseWords },
    posture: { label: 'Position', options: postureWords },
    skin: { label: 'Skin', options: skinWords },
  },
  shown: ['level', 'readings'],
  folded: { heading: 'How they were read', names: ['error', 'judged', 'pose', 'posture', 'skin'] },
  marks: [
    { label: 'Eyes and nose', marks: inGroup('pair') },
    { label: 'Middle', marks: inGroup('single') },
    { label: 'Brows', marks: inGroup('brow') },
  ],
  firstMark: 'noseWingL',
  view: midlineView,
  pictureLabel: 'A face on millimetre paper: marks, midline and level',
  says: midlineSays,
  caution: takenCaution,
} as const satisfies Partial<CalculatorFace<MidlineAndSidesState, MidlineAnswer>>;

type Props = Readonly<{
  id?: string;
  /** The answer to the first state, made at build. */
  start: MidlineAnswer;
  /** On the calculator's own page the tables stand open. */
  tables?: Tables;
  legend?: ComponentChildren;
  children?: ComponentChildren;
}>;

/**
 * Midline and sides as a lesson's island. The still face comes in as children, drawn at build; the sums are
 * fetched at the first change.
 */
export function MidlineAndSides({ id = 'midline', start, tables: Own, legend, children }: Props) {
  const { calculator, is, isMissing, watch } = useSums(midlineAndSidesFields, start, fetchSums);
  const face: CalculatorFace<MidlineAndSidesState, MidlineAnswer> = {
    ...words,
    calculator,
    draw: (state, reading) => (
      <>
        <MidlineOverlay points={state} reading={reading} />
        {watch(state)}
      </>
    ),
    missing: isMissing && 'What works out the midline',
    sums: is,
  };
  return (
    <Shell
      face={face}
      id={id}
      open={Own !== undefined}
      legend={legend}
      address="/calculators/midline-and-sides/"
      tables={(reading, state, isOpen) =>
        Own ? (
          <Own reading={reading} state={state} />
        ) : (
          <LaterTables reading={reading} state={state} isOpen={isOpen} />
        )
      }
    >
      {children}
    </Shell>
  );
}
