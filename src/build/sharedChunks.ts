/**
 * How the browser's scripts are parted. `base` is what every island needs; `fields` is what every calculator
 * and every movable picture needs; `midline` is the midline's figure with its library; `colour` is what every
 * swatch needs, `drops` what bottles and skins are chosen with. Everything else parts as the bundler finds
 * best.
 */
export const sharedChunks = [
  { name: 'fetch', test: /vite\/preload-helper/, priority: 3 },
  {
    name: 'base',
    priority: 2,
    test: /node_modules\/preact\/(dist|hooks|jsx-runtime)|@astrojs\/preact\/dist\/(client|static-html)\.js|src\/words\/(number|marks|fetching)\.ts|components\/site\/(Icon\.tsx|icons\.ts|onDemand\.ts)|src\/lib\/mapping\/(startValues|budget|band|familyWise|markSet|placing\/(archValues|goldenShare))\.ts|src\/lib\/quantities\/(normal|interval)\.ts/,
  },
  {
    name: 'fields',
    test: /components\/calculator\/(useCalculator|MarkStage|NumberBox|ChoiceBox|Frame|Shell|MarkPanel|useKept)\.tsx?|components\/site\/Later\.tsx|src\/calculators\/(fields|startState|marks)\.ts|src\/lib\/geometry\/(line|direction|distance)\.ts/,
  },
  {
    name: 'midline',
    test: /components\/calculator\/(MidlineAndSides|LaterTables|midlineView)\.tsx?|components\/pictures\/MidlineOverlay|src\/calculators\/(midlineAndSides|leaningNoseMarks)\.ts|src\/words\/midline\.ts|src\/lib\/geometry\/eigen2\.ts|src\/lib\/mapping\/(propagate|readFace|midlineInfluence|midline|robustMidline|sides|markRow|faceFrame|mirrorMarks|levelReference|disagreement|roll|browRecord)\.ts/,
  },
  {
    name: 'colour',
    test: /src\/lib\/colour\/(ita|lch|srgb|lab)\.ts|components\/calculator\/(useLater|useOwn|LaterOwnPanel)\.tsx?/,
  },
  {
    name: 'drops',
    test: /src\/lib\/colour\/(bottleIds|lamps)\.ts|components\/calculator\/SkinBoxes\.tsx|src\/calculators\/(skinFields|mixByDropsFields)\.ts|src\/words\/mixByDrops\.ts/,
  },
];
