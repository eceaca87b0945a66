import type { Method } from '../evidence/method.ts';

/** The mathematics of colour, for the Evidence pages. */
export const colourMethods = {
  'colour-difference': { sources: ['sharma-2005'], file: 'src/lib/colour/spaces/ciede2000.ts' },
  'reflectance-to-colour': { sources: ['cie-015-2018'], file: 'src/lib/colour/spectrum/foldWeights.ts' },
  'skin-from-three-numbers': { sources: ['cooksey-2017'], file: 'src/lib/colour/layers/skinSpectrum.ts' },
  'smooth-spectrum': { sources: ['burns-2015'], file: 'src/lib/colour/spectrum/smoothSpectrum.ts' },
  'typology-angle': { sources: ['skinoptics-ita'], file: 'src/lib/colour/spaces/ita.ts' },
  'share-covered': {
    sources: ['boolean-model-tests', 'disc-percolation'],
    file: 'src/lib/colour/coverage/coverage.ts',
  },
} as const satisfies Readonly<Record<string, Method>>;
