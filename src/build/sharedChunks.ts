import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/**
 * How the browser's scripts are parted: files of ours that travel together, by their paths from the root.
 * `base` is what every island needs; `fields` what every calculator and every movable picture needs;
 * `midline` is the midline's figure with its library; `problem` what every problem needs, `quantities` what
 * typed numbers and days need, `small` what several pages need a little of; `colour` is what every swatch
 * needs, `hues` what old hues and the notice over them need, `readings` what is shared by figures of two readings,
 * `skin` what a reading of skin needs, `drops` what
 * bottles and skins are chosen with. Everything else parts as the bundler finds best.
 */
const together = {
  base: [
    'components/site/Icon.tsx',
    'components/site/icons.ts',
    'components/site/onDemand.ts',
    'src/lib/mapping/compare/band.ts',
    'src/lib/mapping/marks/markSet.ts',
    'src/lib/mapping/numbers/arch.ts',
    'src/lib/mapping/numbers/start.ts',
    'src/lib/mapping/placing/goldenShare.ts',
    'src/lib/mapping/uncertainty/budget.ts',
    'src/lib/mapping/uncertainty/familyWise.ts',
    'src/lib/quantities/interval.ts',
    'src/lib/quantities/normal.ts',
    'src/words/fetching.ts',
    'src/words/marks.ts',
    'src/words/number.ts',
  ],
  fields: [
    'components/calculator/fields/ChoiceBox.tsx',
    'components/calculator/fields/MarkPanel.tsx',
    'components/calculator/fields/MarkStage.tsx',
    'components/calculator/fields/NumberBox.tsx',
    'components/calculator/frame/Frame.tsx',
    'components/calculator/frame/Shell.tsx',
    'components/calculator/frame/useCalculator.ts',
    'components/calculator/lazy/useKept.ts',
    'components/site/Later.tsx',
    'src/calculators/fields.ts',
    'src/calculators/marks.ts',
    'src/calculators/startState.ts',
    'src/lib/geometry/direction.ts',
    'src/lib/geometry/distance.ts',
    'src/lib/geometry/line.ts',
  ],
  problem: [
    'components/practice/AnswerChoice.tsx',
    'components/practice/AnswerField.tsx',
    'components/practice/Beads.tsx',
    'components/practice/FeedbackPanel.tsx',
    'components/practice/GivenNumbers.tsx',
    'components/practice/Problem.tsx',
    'components/practice/SaveCopy.tsx',
    'components/practice/pictures/MmPaper.tsx',
    'components/practice/useProblem.ts',
    'src/lib/practice/itemSeed.ts',
    'src/lib/practice/ladder.ts',
    'src/lib/practice/marking.ts',
    'src/lib/quantities/closedRange.ts',
    'src/skills/mapping/areApart.ts',
    'src/words/practice.ts',
    'src/words/skills/say.ts',
  ],
  quantities: [
    'components/practice/putDown.ts',
    'components/practice/today.ts',
    'src/calculators/readWithin.ts',
    'src/lib/quantities/decimal.ts',
    'src/lib/quantities/isoDay.ts',
  ],
  small: [
    'components/site/answerIcons.ts',
    'src/lib/mapping/compare/howTaken.ts',
    'src/lib/quantities/seed.ts',
    'src/words/emergencySigns.ts',
  ],
  midline: [
    'components/calculator/midline/LaterTables.tsx',
    'components/calculator/midline/MidlineAndSides.tsx',
    'components/calculator/midline/midlineView.ts',
    'components/pictures/MidlineOverlay.tsx',
    'src/calculators/leaningNoseMarks.ts',
    'src/calculators/midlineAndSides.ts',
    'src/lib/geometry/eigen2.ts',
    'src/lib/mapping/compare/readFace.ts',
    'src/lib/mapping/compare/sides.ts',
    'src/lib/mapping/marks/browRecord.ts',
    'src/lib/mapping/marks/faceFrame.ts',
    'src/lib/mapping/marks/levelReference.ts',
    'src/lib/mapping/marks/mirrorMarks.ts',
    'src/lib/mapping/marks/roll.ts',
    'src/lib/mapping/midline/disagreement.ts',
    'src/lib/mapping/midline/midline.ts',
    'src/lib/mapping/midline/robustMidline.ts',
    'src/lib/mapping/uncertainty/markRow.ts',
    'src/lib/mapping/uncertainty/midlineInfluence.ts',
    'src/lib/mapping/uncertainty/propagate.ts',
    'src/words/midline.ts',
  ],
  colour: [
    'components/calculator/lazy/useLater.ts',
    'components/calculator/ownBottles/LaterOwnPanel.tsx',
    'components/calculator/ownBottles/useOwn.tsx',
    'src/lib/colour/spaces/lab.ts',
    'src/lib/colour/spaces/lch.ts',
    'src/lib/colour/spaces/srgb.ts',
  ],
  hues: [
    'components/practice/pictures/HuePlane.tsx',
    'components/calculator/mendedNotice.tsx',
    'components/site/BeingMended.tsx',
    'src/calculators/whichHue.ts',
    'src/lib/colour/old/oldHueCases.ts',
    'src/words/beingMended.ts',
    'src/words/whichHue.ts',
  ],
  readings: ['components/calculator/fields/SlideNumber.tsx', 'components/calculator/lazy/useAhead.ts'],
  skin: ['src/lib/colour/numbers/reading.ts', 'src/lib/colour/spaces/ita.ts'],
  drops: [
    'components/calculator/fields/SkinBoxes.tsx',
    'src/calculators/mixByDropsFields.ts',
    'src/calculators/skinFields.ts',
    'src/lib/colour/old/oldWorks.ts',
    'src/lib/colour/pigment/bottleIds.ts',
    'src/lib/colour/spectrum/lamps.ts',
    'src/words/mixByDrops.ts',
  ],
} as const;

/** What of other people's packages belongs to `base`. */
const packages =
  /node_modules\/preact\/(dist|hooks|jsx-runtime)|@astrojs\/preact\/dist\/(client|static-html)\.js/;
const root = fileURLToPath(new URL('../..', import.meta.url)).replaceAll('\\', '/');

/** A file that was renamed or taken away would leave its chunk without a word. */
const gone = Object.values(together)
  .flat()
  .filter((file) => !existsSync(root + file));
if (gone.length > 0) throw new Error(`sharedChunks.ts names files that are not there: ${gone.join(', ')}.`);

/** A chunk takes along what its files import, unless one of higher priority holds that. */
const priorities: Readonly<Record<string, number>> = { base: 3, quantities: 2, small: 2 };

export const sharedChunks = [
  { name: 'fetch', test: /vite\/preload-helper/, priority: 4 },
  ...Object.entries(together).map(([name, files]) => {
    const ours = new Set(files.map((file) => root + file));
    return {
      name,
      priority: priorities[name] ?? 1,
      test: (id: string) => ours.has(id.replaceAll('\\', '/')) || (name === 'base' && packages.test(id)),
    };
  }),
];
