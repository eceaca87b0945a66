import { placeMidline, type PlaceMidlineGiven } from '#skills/mapping/placeMidline.ts';
import { answerPictureWords } from '#words/skills/placedFeedback.ts';
import { AnswerLines } from './AnswerLines.tsx';
import type { Judged } from './judge.ts';
import { PracticeStill } from './PracticeStill.tsx';

type Props = Readonly<{ given: PlaceMidlineGiven; judged: Judged; id: string }>;

/**
 * The face again with its answer, for narrow screens: there the working picture is out of sight when the
 * feedback comes.
 */
export function AnswerPicture({ given, judged, id }: Props) {
  return (
    <PracticeStill given={given} id={id} label={answerPictureWords(placeMidline.answer(given).exact)}>
      <AnswerLines given={given} judged={judged} />
    </PracticeStill>
  );
}
