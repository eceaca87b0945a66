import type { Source } from '../source.ts';

const readOn = '2026-11-25';

/** Standards, papers and printed worked examples for the mathematics of measuring. */
export const measuringSources = {
  'sine-table': {
    kind: 'data', short: 'Table of sines', authors: 'Rockler Woodworking and Hardware',
    title: 'Right triangle formulas, calculator and table of trigonometric function values',
    where: 'table, degrees 1 to 45', address: 'http://www.rockler.com/how-to/calculator-table-trigonometric-function-values', read: 'part', readOn,
  },
  'oeis-a019812': {
    kind: 'data', short: 'OEIS A019812', authors: 'The On-Line Encyclopedia of Integer Sequences',
    title: 'Decimal expansion of sine of 3 degrees', where: 'A019812', address: 'https://oeis.org/A019812', read: 'copy', readOn,
  },
  'jcgm-100-2008': {
    kind: 'standard', short: 'GUM 2008', authors: 'Joint Committee for Guides in Metrology', year: 2008,
    title: 'Evaluation of measurement data – Guide to the expression of uncertainty in measurement (GUM)',
    where: 'JCGM 100:2008', address: 'https://www.iso.org/sites/JCGM/GUM/JCGM100/C045315e-html/C045315e_FILES/MAIN_C045315e/04_e.html',
    read: 'part', readOn,
  },
  'nist-tn-1297': {
    kind: 'standard', short: 'NIST TN 1297', authors: 'Taylor BN, Kuyatt CE', year: 1994,
    title: 'Guidelines for evaluating and expressing the uncertainty of NIST measurement results',
    where: 'NIST Technical Note 1297, section 4', address: 'https://www.nist.gov/pml/nist-technical-note-1297/nist-tn-1297-4-type-b-evaluation-standard-uncertainty',
    read: 'part', readOn,
  },
  'quam-2012': {
    kind: 'standard', short: 'EURACHEM/CITAC 2012', authors: 'EURACHEM / CITAC', year: 2012,
    title: 'Quantifying uncertainty in analytical measurement', where: 'Appendix E.1, copied page', read: 'copy', readOn,
  },
  'gtc-h1': {
    kind: 'data', short: 'GTC, gauge block', authors: 'Measurement Standards Laboratory of New Zealand',
    title: 'GUM Tree Calculator, gauge block example (GUM H.1) with printed output',
    where: 'GTC documentation, docs/API/GUM_H1.rst', address: 'https://github.com/MSLNZ/GTC', read: 'whole', readOn,
  },
  'gtc-a1': {
    kind: 'data', short: 'GTC, flask', authors: 'Measurement Standards Laboratory of New Zealand',
    title: 'GUM Tree Calculator, calibration standard example (CITAC A1) with printed output',
    where: 'GTC documentation, docs/API/CITAC_A1.rst', address: 'https://github.com/MSLNZ/GTC', read: 'whole', readOn,
  },
  'bland-repeatability': {
    kind: 'review', short: 'Bland 2005', authors: 'Bland M', year: 2005,
    title: 'What is the origin of the formula for repeatability?',
    where: 'University of York, frequently asked questions', address: 'http://www-users.york.ac.uk/~mb55/meas/repeat.htm', read: 'whole', readOn,
  },
  'bland-altman-1999': {
    kind: 'study', authors: 'Bland JM, Altman DG', year: 1999,
    title: 'Measuring agreement in method comparison studies',
    where: 'Statistical Methods in Medical Research 8:135–160', read: 'abstract', readOn,
  },
  'nicholls-repeatability': {
    kind: 'data', authors: 'Nicholls R',
    title: 'Repeatability coefficient', where: 'Statistics notes, section 1',
    address: 'https://rowannicholls.github.io/R/statistics/agreement/repeatability_coefficient.html', read: 'part', readOn,
  },
  'galvao-2012': {
    kind: 'study', authors: 'Galvão MCS, Sato JR, Coelho EC', year: 2012,
    title: 'Dahlberg formula – a novel approach for its evaluation',
    where: 'Dental Press Journal of Orthodontics 17', read: 'abstract', readOn,
  },
  'dahlberg-1940': {
    kind: 'study', authors: 'Dahlberg G', year: 1940,
    title: 'Statistical methods for medical and biological students', where: 'Allen and Unwin', read: 'none', readOn,
  },
  'perini-2005': {
    kind: 'study', authors: 'Perini TA, Oliveira GL, Ornellas JS, Oliveira FP', year: 2005,
    title: 'Technical error of measurement in anthropometry',
    where: 'Revista Brasileira de Medicina do Esporte 11:81–85', doi: '10.1590/S1517-86922005000100009', read: 'abstract', readOn,
  },
  anthrocheckr: {
    kind: 'data', short: 'anthrocheckr', authors: 'Nutriverse',
    title: 'anthrocheckr: technical error of measurement, example with data and printed output',
    where: 'calculate_tem and data-raw/standardisation.csv', address: 'https://github.com/nutriverse/anthrocheckr', read: 'whole', readOn,
  },
  'r-mad': {
    kind: 'data', short: 'R, mad', authors: 'R Core Team',
    title: 'mad: median absolute deviation', where: 'R documentation, stats',
    address: 'https://search.r-project.org/R/refmans/stats/html/mad.html', read: 'whole', readOn,
  },
  'sidak-article': {
    kind: 'review', short: 'Šidák correction, article', authors: 'encyclopaedia article',
    title: 'Šidák correction', where: 'copy of the article', address: 'https://alchetron.com/%C5%A0id%C3%A1k-correction', read: 'copy', readOn,
  },
  'sidak-1967': {
    kind: 'study', authors: 'Šidák Z', year: 1967,
    title: 'Rectangular confidence regions for the means of multivariate normal distributions',
    where: 'Journal of the American Statistical Association 62:626–633', read: 'none', readOn,
  },
  'sidak-adjusted': {
    kind: 'data', short: 'MHTdiscrete', authors: 'Zhu Y',
    title: 'Sidak.p.adjust: adjusted p-values, example with printed output', where: 'R package MHTdiscrete',
    address: 'https://rdrr.io/cran/MHTdiscrete/man/Sidak.p.adjust.html', read: 'whole', readOn,
  },
  'multiplicity-note': {
    kind: 'data', short: 'Note on multiplicity', authors: 'author not in the copy read',
    title: 'Multiplicity: error rate of one to fifty tests, printed by R', where: 'a worked note',
    address: 'https://rstudio-pubs-static.s3.amazonaws.com/500554_29b187807d0d4997855d5bdbc955bd8d.html', read: 'part', readOn,
  },
  'nist-t-table': {
    kind: 'data', short: 'NIST t table', authors: 'NIST/SEMATECH',
    title: 'e-Handbook of Statistical Methods: upper critical values of Student’s t distribution',
    where: 'reprinted as Table 8', read: 'copy', readOn,
  },
  'normal-table': {
    kind: 'data', short: 'Normal table', authors: 'math.com',
    title: 'z-distribution: standard normal probabilities', where: 'table',
    address: 'http://www.math.com/tables/stat/distributions/z-dist.htm', read: 'part', readOn,
  },
  'python-statistics': {
    kind: 'data', short: 'Python statistics', authors: 'Python Software Foundation', year: 2019,
    title: 'statistics: mathematical statistics functions, NormalDist examples with printed output',
    where: 'Doc/library/statistics.rst', address: 'https://docs.python.org/3/library/statistics.html', read: 'part', readOn,
  },
  'keller-normal': {
    kind: 'data', short: 'Keller, example 8.4', authors: 'Keller G, worked in R by FOSSEE',
    title: 'Statistics for management and economics, example 8.4: the value that 5 % lie above',
    where: 'CH8/EX8.4/Ex8_4.R', address: 'https://github.com/FOSSEE/R_TBC_Uploads_old', read: 'whole', readOn,
  },
  'statsmodels-biweight': {
    kind: 'data', short: 'statsmodels', authors: 'statsmodels developers', year: 2025,
    title: 'Tukey’s biweight function for M-estimation', where: 'statsmodels.robust.norms.TukeyBiweight',
    address: 'https://www.statsmodels.org/devel/generated/statsmodels.robust.norms.TukeyBiweight.html', read: 'whole', readOn,
  },
  'dataplot-biweight': {
    kind: 'data', short: 'Dataplot manual', authors: 'National Institute of Standards and Technology',
    title: 'Dataplot: difference of biweight locations, Iris data with printed output',
    where: 'reference manual, volume 2', address: 'https://www.itl.nist.gov/div898/software/dataplot/refman2/auxillar/diffbilo.htm', read: 'whole', readOn,
  },
  'beaton-tukey-1974': {
    kind: 'study', authors: 'Beaton AE, Tukey JW', year: 1974,
    title: 'The fitting of power series, meaning polynomials, illustrated on band-spectroscopic data',
    where: 'Technometrics 16:147–185', read: 'none', readOn,
  },
  'pearson-1901': {
    kind: 'study', authors: 'Pearson K', year: 1901,
    title: 'On lines and planes of closest fit to systems of points in space',
    where: 'Philosophical Magazine 2:559–572; data and answer as reprinted in the Kapteyn Package tutorial',
    address: 'https://github.com/kapteyn-astro/kapteyn', read: 'copy', readOn,
  },
  'numpy-eigvalsh': {
    kind: 'data', short: 'NumPy', authors: 'NumPy developers',
    title: 'numpy.linalg.eigvalsh: example with printed output', where: 'reference',
    address: 'https://numpy.org/devdocs/reference/generated/numpy.linalg.eigvalsh.html', read: 'whole', readOn,
  },
  'eigen-worked': {
    kind: 'data', short: 'Eigenvalues, worked', authors: 'worked example',
    title: 'Eigenvalues of the matrix 2, 1; 1, 2', where: 'steps 1 to 7', read: 'whole', readOn,
  },
  'scipy-procrustes': {
    kind: 'data', short: 'SciPy', authors: 'SciPy community',
    title: 'scipy.spatial.procrustes: example (a larger, shifted, mirrored L)', where: 'reference',
    address: 'https://docs.scipy.org/doc/scipy/reference/generated/scipy.spatial.procrustes.html', read: 'part', readOn,
  },
  'matlab-procrustes': {
    kind: 'data', short: 'MATLAB, two threes', authors: 'The MathWorks',
    title: 'Compare handwritten shapes using Procrustes analysis', where: 'example; data read in the manual, results in a copy of its text',
    address: 'https://www.mathworks.com/help/stats/compare-handwritten-shapes.html', read: 'copy', readOn,
  },
  'mardia-2000': {
    kind: 'study', authors: 'Mardia KV, Bookstein FL, Moreton IJ', year: 2000,
    title: 'Statistical assessment of bilateral symmetry of shapes',
    where: 'Biometrika 87:285–300; method as told by Bookstein in a 2005 mailing-list answer', read: 'copy', readOn,
  },
  'klingenberg-2002': {
    kind: 'study', authors: 'Klingenberg CP, Barluenga M, Meyer A', year: 2002,
    title: 'Shape analysis of symmetric structures: quantifying variation among individuals and asymmetry',
    where: 'Evolution 56; abstract on a research index', read: 'abstract', readOn,
  },
  'fnv-vectors': {
    kind: 'data', short: 'FNV vectors', authors: 'Noll LC',
    title: 'FNV hash test vectors, 32-bit FNV-1a', where: 'fnv_test_str with and without a closing zero byte', read: 'copy', readOn,
  },
  'go-fnv': {
    kind: 'data', short: 'Go, hash/fnv', authors: 'The Go Authors', year: 2011,
    title: 'hash/fnv: golden values', where: 'src/hash/fnv/fnv_test.go', address: 'https://github.com/golang/go', read: 'whole', readOn,
  },
  'murmur-vectors': {
    kind: 'data', short: 'MurmurHash3 vectors', authors: 'Bitcoin developers',
    title: 'MurmurHash3 test vectors', where: 'T(0x81f16f39, 0xffffffff, "")', read: 'copy', readOn,
  },
  'box-muller-article': {
    kind: 'review', short: 'Box–Muller, article', authors: 'encyclopaedia article',
    title: 'Box–Muller transform', where: 'zero expectation, unit variance', read: 'copy', readOn,
  },
  'trig-table': {
    kind: 'data', short: 'Table of tangents', authors: 'calculator page',
    title: 'Table of common trigonometric values', where: 'row of 1 degree', read: 'whole', readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
