import { whyItHealed } from '#calculators/whyItHealed.ts';
import type { WhyItHealedState } from '#calculators/whyItHealedFields.ts';

/** Works the map out beside the page, so that nothing on it stands still: states come in, results go out in the same order. */
addEventListener('message', ({ data }: MessageEvent<WhyItHealedState>) => postMessage(whyItHealed.solve(data)));
