/** Titles and one line for every calculator. */
export const calculatorWords = {
  'midline-and-sides': {
    title: 'Midline and sides',
    line: 'Find the true midline of a face that is not symmetric, see which marks to trust, and compare left with right.',
  },
  'level-line': {
    title: 'A level line and its tilt',
    line: 'See what a thread or a head that is off level does to two heights, and which tilt would explain a difference you read.',
  },
  'front-and-tail': {
    title: 'Front and tail placement',
    line: 'Compare three anchors for the front, start both fronts equally far, and check where each tail ends.',
  },
  'outline-and-cover': {
    title: 'Outline and cover',
    line: 'Draw both outlines from ten marks, read the thickness straight across at any station, and check both brows by the habits of the trade.',
  },
  'cover-the-old-shape': {
    title: 'Cover of the old shape',
    line: 'Lay a planned outline over old work, set the limits she approved, and see what fits, what stays outside, and how much the brow grows.',
  },
  pose: {
    title: 'Pose',
    line: 'Turn, nod and tilt a symmetric face before the camera, and see which numbers of a picture may be read.',
  },
  'after-the-first-pass': {
    title: 'After the first pass',
    line: 'Compare the approved outline with where the pigment sits: at each mark add here, stop, or read again.',
  },
  'measuring-error': {
    title: 'Measuring error',
    line: 'Type your own repeated readings. See how wrong one reading is, from where a difference counts as real, and how many readings it takes.',
  },
  'two-readings': {
    title: 'Two readings of one face',
    line: 'See which of two readings may be mapped, what each one shows, and whether the two may be compared at all.',
  },
  'usual-difference': {
    title: 'Usual difference',
    line: 'Set a height difference between two brows and see how many people have that much, and who would notice.',
  },
  'hair-and-bone': {
    title: 'What lies under the shape',
    line: 'Read where hair and bone lie under one planned brow, and see which part of it would sit on nothing.',
  },
  'arch-placement': {
    title: 'Ratio placement of the arch',
    line: 'Settle one front and one tail, then see where ten rules put one arch for both sides, and how far they disagree.',
  },
  'strokes-and-dots': {
    title: 'Strokes and dots',
    line: 'See how much of a brow’s skin strokes or dots colour, fresh and once they have spread, drawn to scale.',
  },
  'mix-by-drops': {
    title: 'Mix by drops',
    line: 'Count drops of invented bottles into one skin, and see the colour at six weeks, one year and two years, with how sure it is.',
  },
  'which-hue': {
    title: 'Which bottle takes the old hue away?',
    line: 'Old pigment in five skins, light to deep: where each bottle moves its hue, and what that costs in lightness.',
  },
  'find-a-recipe': {
    title: 'Find a recipe',
    line: 'Name the colour she wants to see. All recipes of whole drops are searched for one skin, at six weeks and two years.',
  },
  'why-it-healed-this-way': {
    title: 'Why did it heal this way?',
    line: 'Give the skin, the mix and the healed colour. See every depth, dose and loss of the model that would fit: many, or none.',
  },
  'skin-reading': {
    title: 'Skin reading',
    line: 'Find a skin on a grid of lightness and hue, or type its readings. See both angles, the class with its scheme, and how sure they are.',
  },
} as const;
