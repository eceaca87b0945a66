import type { Source } from '../source.ts';

const readOn = '2026-11-25';

/** Papers and printed examples for axes, and for laying one shape on another. */
export const axesSources = {
  'pearson-1901': {
    kind: 'study',
    authors: 'Pearson K',
    year: 1901,
    title: 'On lines and planes of closest fit to systems of points in space',
    where: 'Philosophical Magazine 2:559–572; data and answer as reprinted in the Kapteyn Package tutorial',
    address: 'https://github.com/kapteyn-astro/kapteyn',
    read: 'copy',
    readOn,
  },
  'numpy-eigvalsh': {
    kind: 'data',
    short: 'NumPy',
    authors: 'NumPy developers',
    title: 'numpy.linalg.eigvalsh: example with printed output',
    where: 'reference',
    address: 'https://numpy.org/devdocs/reference/generated/numpy.linalg.eigvalsh.html',
    read: 'whole',
    readOn,
  },
  'eigen-worked': {
    kind: 'data',
    short: 'Eigenvalues, worked',
    authors: 'worked example',
    title: 'Eigenvalues of the matrix 2, 1; 1, 2',
    where: 'steps 1 to 7',
    read: 'whole',
    readOn,
  },
  'scipy-procrustes': {
    kind: 'data',
    short: 'SciPy',
    authors: 'SciPy community',
    title: 'scipy.spatial.procrustes: example (a larger, shifted, mirrored L)',
    where: 'reference',
    address: 'https://docs.scipy.org/doc/scipy/reference/generated/scipy.spatial.procrustes.html',
    read: 'part',
    readOn,
  },
  'matlab-procrustes': {
    kind: 'data',
    short: 'MATLAB, two threes',
    authors: 'The MathWorks',
    title: 'Compare handwritten shapes using Procrustes analysis',
    where: 'example; data read in the manual, results in a copy of its text',
    address: 'https://www.mathworks.com/help/stats/compare-handwritten-shapes.html',
    read: 'copy',
    readOn,
  },
  'mardia-2000': {
    kind: 'study',
    authors: 'Mardia KV, Bookstein FL, Moreton IJ',
    year: 2000,
    title: 'Statistical assessment of bilateral symmetry of shapes',
    where: 'Biometrika 87:285–300; method as told by Bookstein in a 2005 mailing-list answer',
    read: 'copy',
    readOn,
  },
  'klingenberg-2002': {
    kind: 'study',
    authors: 'Klingenberg CP, Barluenga M, Meyer A',
    year: 2002,
    title: 'Shape analysis of symmetric structures: quantifying variation among individuals and asymmetry',
    where: 'Evolution 56; abstract on a research index',
    read: 'abstract',
    readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
