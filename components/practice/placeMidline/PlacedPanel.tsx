import { Icon } from '#components/site/Icon.tsx';
import { pencilIcon, tickIcon } from '#components/site/answerIcons.ts';
import { undoIcon } from '#components/site/icons.ts';
import type { PlaceMidlineGiven } from '#skills/mapping/placeMidline.ts';
import { creditWords, practiceWords, solvedWords } from '#words/practice.ts';
import { placeMidlineWords } from '#words/skills/placeMidline.ts';
import { AnswerPicture } from './AnswerPicture.tsx';
import type { Judged } from './judge.ts';

type Props = Readonly<{
  given: PlaceMidlineGiven;
  judged: Judged;
  tries: number;
  hints: number;
  id: string;
  onTryAgain: () => void;
  onAnother: () => void;
}>;

/**
 * The slip's name first, then the marks; both threads drawn; why; what a careful reading gives; what to do
 * next.
 */
export function PlacedPanel({ given, judged, tries, hints, id, onTryAgain, onAnother }: Props) {
  const {
    marked: { right, credit },
    feedback,
    library,
  } = judged;
  return (
    <div class={right ? 'fb fb-right placed' : 'fb placed'}>
      <div class="fb-head">
        <Icon of={right ? tickIcon : pencilIcon} />
        <div>
          <p class="fb-title">{feedback.title}</p>
          <p class="plain small">{right ? solvedWords(tries, hints) : creditWords(credit)}</p>
        </div>
      </div>
      <AnswerPicture given={given} judged={judged} id={id} />
      <p>{feedback.text}</p>
      <p class="placed-library">{library}</p>
      <div class="btns">
        {!right && (
          <button class="btn" type="button" onClick={onTryAgain}>
            <Icon of={undoIcon} /> {practiceWords.tryAgain}
          </button>
        )}
        <button class={right ? 'btn' : 'btn line'} type="button" onClick={onAnother}>
          {placeMidlineWords.another}
        </button>
      </div>
    </div>
  );
}
