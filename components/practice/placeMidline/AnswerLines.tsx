import type { PlaceMidlineGiven } from '#skills/mapping/placeMidline.ts';
import { FaceMarks } from './FaceMarks.tsx';
import type { Judged } from './judge.ts';
import { Thread } from './Thread.tsx';

/**
 * The true thread, the pairs with their middles, and the learner's thread where it can be told from the true
 * one.
 */
export function AnswerLines({
  given,
  judged: { yours, truth, notTrusted, marked },
}: Readonly<{ given: PlaceMidlineGiven; judged: Judged }>) {
  const yoursIsFurtherRight = yours.top > truth.top;
  const showsYours =
    !marked.right || Math.max(Math.abs(yours.top - truth.top), Math.abs(yours.foot - truth.foot)) > 0.4;
  return (
    <g class="answer-lines">
      <FaceMarks markSet={given.markSet} middles notTrusted={notTrusted} />
      <Thread across={truth} label="midline" labelOn={yoursIsFurtherRight && showsYours ? 'left' : 'right'} />
      {showsYours && (
        <Thread across={yours} as="yours" label="yours" labelOn={yoursIsFurtherRight ? 'right' : 'left'} />
      )}
    </g>
  );
}
