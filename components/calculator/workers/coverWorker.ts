import type { CoverState } from '#calculators/coverFields.ts';
import { tellCover } from '../cover/coverTold.ts';

/** Plans beside the page, so that marks move freely: states come in, what is told of them goes out in the same order. */
addEventListener('message', ({ data }: MessageEvent<CoverState>) => postMessage(tellCover(data)));
