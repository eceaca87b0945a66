import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/**
 * How the browser's scripts are parted: files of ours that travel together, by their paths from the root.
 * `base` is what every island needs; `fields` what every calculator and every movable picture needs;
 * `midline` is the midline's figure with its library; `colour` is what every swatch needs, `drops` what
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
    'src/lib/colour/spaces/ita.ts',
    'src/lib/colour/spaces/lab.ts',
    'src/lib/colour/spaces/lch.ts',
    'src/lib/colour/spaces/srgb.ts',
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

export const sharedChunks = [
  { name: 'fetch', test: /vite\/preload-helper/, priority: 3 },
  ...Object.entries(together).map(([name, files]) => {
    const ours = new Set(files.map((file) => root + file));
    return {
      name,
      priority: name === 'base' ? 2 : 1,
      test: (id: string) => ours.has(id.replaceAll('\\', '/')) || (name === 'base' && packages.test(id)),
    };
  }),
];
