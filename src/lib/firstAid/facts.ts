import { allergyFacts } from './facts/allergy.ts';
import { exposureFacts } from './facts/exposure.ts';
import { eyeFacts } from './facts/eye.ts';
import { faintFacts } from './facts/faint.ts';
import { numbingFacts } from './facts/numbing.ts';
import { wakingFacts } from './facts/waking.ts';

/** What first-aid bodies say, for the urgent cards. */
export const firstAidFacts = {
  ...wakingFacts,
  ...faintFacts,
  ...allergyFacts,
  ...numbingFacts,
  ...eyeFacts,
  ...exposureFacts,
} as const;
