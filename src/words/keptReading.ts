import type { SetComparison } from '#lib/mapping/compare/compareSets.ts';
import { browMarks, type Taken } from '#lib/mapping/marks/markSet.ts';
import { includesZero } from '#lib/quantities/interval.ts';
import { poseWords, postureWords, skinWords } from './marks.ts';

/** How a reading was taken: "at rest, eyes open; sitting; normal skin". */
export function takenWords({ pose, posture, skin }: Taken): string {
  return `${poseWords[pose]}; ${postureWords[posture]}; ${skinWords[skin]} skin`;
}

const refusals = {
  'pose-differs':
    'Not compared: the face was held differently. A lifted or frowning brow sits elsewhere. Read both at rest, both with the eyes open or both closed.',
  'posture-differs':
    'Not compared: one reading was taken lying down. Brows move when a client lies down. Read both in the same position.',
  'skin-differs':
    'Not compared: the skin was not in the same state. Numb or swollen skin has moved. Wait, and read again when it is normal.',
  'mark-not-a-number': 'Not compared: one mark has no place.',
  'marks-do-not-fix-a-midline': 'Not compared: one of the readings does not fix a midline.',
  'face-not-upright': 'Not compared: one of the readings lies on its side.',
} as const;

/** What a comparison of two readings says in one sentence. */
export function keptSays(comparison: SetComparison): string {
  if (!comparison.ok) return refusals[comparison.reason];
  const moved = browMarks.flatMap((mark) => {
    const { right, left } = comparison.changes[mark];
    return [right.up, right.outward, left.up, left.outward].filter((change) => !includesZero(change));
  }).length;
  if (moved === 0)
    return 'Nothing is shown to have moved. The two readings agree as well as your readings can.';
  return `${moved} ${moved === 1 ? 'number has' : 'numbers have'} moved by more than reading error can explain.`;
}
