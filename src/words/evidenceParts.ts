import type { Subject } from '#lib/catalogue.ts';

/** The page that says what the grades mean and leads to the parts. */
export const evidencePath = '/evidence/';

type EvidencePart = Readonly<{ slug: string; title: string; line: string }>;

/** The evidence in parts, one for each subject of the library; `slug` is the part's own word in the address. */
export const evidenceParts = {
  mapping: {
    slug: 'mapping',
    title: 'Mapping',
    line: 'Faces and marks, midline and levels, front, arch, tail and outline, and how wrong a measurement is',
  },
  colour: {
    slug: 'colour',
    title: 'Colour',
    line: 'Skin, pigment and light as numbers, strokes and dots, old colour, and the labels of inks',
  },
  firstAid: {
    slug: 'first-aid',
    title: 'First aid',
    line: 'Faints, allergy, numbing cream, something in the eye, and needles that stuck someone',
  },
  practice: {
    slug: 'practice',
    title: 'Practice',
    line: 'What is known about learning by practice',
  },
} as const satisfies Readonly<Record<Subject, EvidencePart>>;

/** The address of a part. */
export const partPath = (subject: Subject): string => `${evidencePath}${evidenceParts[subject].slug}/`;
