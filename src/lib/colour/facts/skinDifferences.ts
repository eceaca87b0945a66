import { published } from '../../evidence/backing.ts';
import type { Fact, Practice } from '../../evidence/fact.ts';

const reviewed = '2026-11-25';

/** The smallest differences seen on materials coloured like skin. */
export const skinDifferenceFacts = {
  'seen-on-light-silicone': {
    value: 0.59,
    unit: '1',
    backing: published(
      'silicone-thresholds-2024',
      'abstract',
      'The perceptibility thresholds (ΔE*/ΔE) were 0.8/0.59 and 2.63/1.75 for light and dark colors',
    ),
    reviewed,
    caveat: 'Silicone coloured like skin, CIEDE2000.',
  },
  'seen-on-dark-silicone': {
    value: 1.75,
    unit: '1',
    backing: published(
      'silicone-thresholds-2024',
      'abstract',
      'The perceptibility thresholds (ΔE*/ΔE) were 0.8/0.59 and 2.63/1.75 for light and dark colors',
    ),
    reviewed,
    caveat: 'Silicone coloured like skin, CIEDE2000.',
  },
  'seen-on-fair-prosthesis': {
    value: 0.8,
    unit: '1',
    backing: published(
      'leow-2006',
      'abstract',
      'ΔE = 0.8 and ΔE = 1.8 for the fair series and ΔE = 1.3 and ΔE = 2.6 for the dark series',
    ),
    reviewed,
    caveat: 'The older colour difference.',
  },
  'seen-on-dark-prosthesis': {
    value: 1.3,
    unit: '1',
    backing: published(
      'leow-2006',
      'abstract',
      'ΔE = 0.8 and ΔE = 1.8 for the fair series and ΔE = 1.3 and ΔE = 2.6 for the dark series',
    ),
    reviewed,
    caveat: 'The older colour difference.',
  },
} as const satisfies Readonly<Record<string, Fact | Practice>>;
