/**
 * The six of the twenty-four invented people that the strip shows, by their files' names: they differ in
 * bones, lids, hair and age.
 */
export const stripFaces = ['02', '05', '09', '14', '18', '23'] as const;

/** Practice faces on the home page. */
export const faceStripWords = {
  title: 'Practice faces',
  line: 'Every face is drawn from numbers, so each one has a known answer. Sometimes the answer is: leave it alone.',
  alt: (face: (typeof stripFaces)[number]) => `Practice face ${Number(face)}, line drawing`,
  door: 'Place the midline on one',
} as const;
