import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/**
 * How the browser's scripts are parted: files of ours that travel together, by their paths from the root. A
 * page takes at most twelve files until its first figure is awake (tests/site/weight.test.ts), so a part that
 * few pages share travels with one that they all take.
 *
 * `base`: every island. `fields`: every calculator. `marks`: marks that are moved in a picture. `problem`:
 * every problem; `draws`: chance from a
 * seed; `quantities`: typed numbers and days. `taken`: how a reading was taken; `measured`: how well marks can be read. `colour`: every swatch, and what a mended
 * page says. `hues`: old hues. `drops`: bottles and skins. The rest: one calculator each, with its own page
 * apart from what a lesson shows of it.
 *
 * Everything else parts as the bundler finds best.
 */
const together = {
  base: [
    'components/calculator/fields/ChoiceBox.tsx',
    'components/calculator/fields/NumberBox.tsx',
    'components/calculator/fields/StepBack.tsx',
    'components/calculator/fields/useSteps.ts',
    'components/site/Icon.tsx',
    'components/site/Later.tsx',
    'components/site/icons.ts',
    'components/site/onDemand.ts',
    'components/site/typedToday.ts',
    'src/lib/geometry/direction.ts',
    'src/lib/geometry/distance.ts',
    'src/lib/geometry/line.ts',
    'src/lib/mapping/compare/band.ts',
    'src/lib/mapping/compare/unlikeParts.ts',
    'src/lib/mapping/numbers/iris.ts',
    'src/lib/mapping/marks/markSet.ts',
    'src/lib/mapping/numbers/start.ts',
    'src/lib/mapping/uncertainty/budget.ts',
    'src/lib/mapping/uncertainty/familyWise.ts',
    'src/lib/quantities/interval.ts',
    'src/lib/quantities/normal.ts',
    'src/words/fetching.ts',
    'src/words/marks.ts',
    'src/words/number.ts',
    'src/words/pull.ts',
  ],
  fields: [
    'components/calculator/frame/Frame.tsx',
    'components/calculator/frame/useCalculator.ts',
    'components/calculator/lazy/useKept.ts',
    'components/calculator/lazy/useLater.ts',
    'src/calculators/fields.ts',
    'src/calculators/startState.ts',
  ],
  marks: [
    'components/calculator/fields/MarkPanel.tsx',
    'components/calculator/fields/MarkStage.tsx',
    'components/calculator/fields/moveMarks.ts',
    'components/calculator/fields/useGrip.ts',
    'components/calculator/frame/Shell.tsx',
    'components/calculator/frame/useSettled.ts',
    'components/calculator/lazy/useSums.tsx',
    'src/calculators/marks.ts',
    'src/words/facePairs.ts',
  ],
  problem: [
    'components/pictures/BrowShape.tsx',
    'components/practice/AnswerChoice.tsx',
    'components/practice/AnswerField.tsx',
    'components/practice/Beads.tsx',
    'components/practice/FeedbackPanel.tsx',
    'components/practice/GivenNumbers.tsx',
    'components/practice/Problem.tsx',
    'components/practice/SaveCopy.tsx',
    'components/practice/pictures/MmPaper.tsx',
    'components/practice/useProblem.ts',
    'components/site/answerIcons.ts',
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
    'src/words/practiceFaces.ts',
    'src/lib/quantities/decimal.ts',
    'src/lib/quantities/isoDay.ts',
  ],
  draws: ['src/lib/quantities/seed.ts'],
  coverage: [
    'components/practice/pictures/CoverBar.tsx',
    'components/practice/pictures/patches.ts',
    'src/lib/colour/coverage/coverage.ts',
  ],
  taken: [
    'src/lib/mapping/compare/unfitToMap.ts',
    'src/lib/mapping/numbers/arch.ts',
    'src/lib/mapping/placing/goldenShare.ts',
    'src/lib/mapping/level/fakedHeight.ts',
    'src/lib/mapping/level/tiltBehind.ts',
    'src/words/emergencySigns.ts',
  ],
  measured: [
    'src/lib/evidence/backing.ts',
    'src/lib/mapping/facts/measuring.ts',
    'src/lib/mapping/numbers/values.ts',
    'src/lib/mapping/uncertainty/technicalError.ts',
  ],
  midline: [
    'components/calculator/midline/LaterTables.tsx',
    'components/calculator/midline/MidlineAndSides.tsx',
    'components/calculator/midline/midlineView.ts',
    'components/pictures/MidlineOverlay.tsx',
    'src/calculators/leaningNoseMarks.ts',
    'src/calculators/midlineAndSidesFields.ts',
    'src/lib/mapping/marks/faceFrame.ts',
    'src/words/faceSingles.ts',
    'src/words/midline.ts',
  ],
  colour: [
    'components/calculator/mendedNotice.tsx',
    'components/calculator/ownBottles/LaterOwnPanel.tsx',
    'components/calculator/ownBottles/useOwn.tsx',
    'components/pictures/SwatchRow.tsx',
    'components/practice/isAsked.ts',
    'components/site/BeingMended.tsx',
    'src/lib/colour/numbers/reading.ts',
    'src/lib/colour/spaces/ita.ts',
    'src/lib/colour/spaces/lab.ts',
    'src/lib/colour/spaces/lch.ts',
    'src/lib/colour/spaces/srgb.ts',
    'src/words/beingMended.ts',
    'src/words/bottleWords.ts',
    'src/words/skills/skinClients.ts',
  ],
  hues: [
    'components/practice/pictures/HuePlane.tsx',
    'src/calculators/whichHue.ts',
    'src/lib/colour/old/oldHueCases.ts',
    'src/words/whichHue.ts',
  ],
  drops: [
    'components/calculator/fields/SkinBoxes.tsx',
    'src/calculators/mixByDropsFields.ts',
    'src/calculators/skinFields.ts',
    'src/lib/colour/old/oldWorks.ts',
    'src/lib/colour/pigment/bottleIds.ts',
    'src/lib/colour/spectrum/lamps.ts',
    'src/words/mixByDrops.ts',
  ],
  midlinePage: [
    'components/calculator/midline/MidlineAndSidesPage.tsx',
    'components/calculator/midline/MidlineTables.tsx',
  ],
  cover: ['components/calculator/cover/CoverTheOldShape.tsx'],
  coverPage: [
    'components/calculator/cover/CoverTables.tsx',
    'components/calculator/cover/CoverTheOldShapePage.tsx',
    'src/words/coverPlan.ts',
  ],
  outlining: [
    'src/calculators/browFields.ts',
    'src/calculators/levelFaceMarks.ts',
    'src/words/outlineAndCover.ts',
  ],
  placeMidline: [
    'components/practice/PlaceMidline.tsx',
    'components/practice/placeMidline/Thread.tsx',
    'components/practice/placeMidline/placeView.ts',
    'src/words/skills/placeMidline.ts',
  ],
  curves: [
    'src/lib/mapping/outline/halfEdge.ts',
    'src/lib/mapping/outline/outline.ts',
    'src/lib/mapping/outline/outlineCurves.ts',
    'src/lib/mapping/outline/station.ts',
  ],
  placing: [
    'src/lib/mapping/placing/limitVerdict.ts',
    'src/lib/mapping/placing/anchorDistances.ts',
    'src/lib/mapping/placing/drawnLengths.ts',
    'src/lib/mapping/placing/tailLine.ts',
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
const priorities: Readonly<Record<string, number>> = {
  base: 4,
  draws: 3,
  quantities: 3,
  taken: 3,
  marks: 2,
  fields: 2,
};

export const sharedChunks = [
  { name: 'fetch', test: /vite\/preload-helper/, priority: 5 },
  ...Object.entries(together).map(([name, files]) => {
    const ours = new Set(files.map((file) => root + file));
    return {
      name,
      priority: priorities[name] ?? 1,
      test: (id: string) => ours.has(id.replaceAll('\\', '/')) || (name === 'base' && packages.test(id)),
    };
  }),
];
