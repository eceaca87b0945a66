import { Icon } from '#components/site/Icon.tsx';
import { pencilIcon, tickIcon } from '#components/site/answerIcons.ts';
import type { ComponentChildren } from 'preact';

type Props = Readonly<{
  isRight: boolean;
  title: string;
  marks: string;
  text: string;
  picture?: ComponentChildren;
  children: ComponentChildren;
}>;

/** The slip's name first, then the marks, yours beside the right one, why, and what to do next. */
export function FeedbackPanel({ isRight, title, marks, text, picture, children }: Props) {
  return (
    <div class={isRight ? 'fb fb-right' : 'fb'}>
      <div class="fb-head">
        <Icon of={isRight ? tickIcon : pencilIcon} />
        <div>
          <p class="fb-title">{title}</p>
          <p class="plain small">{marks}</p>
        </div>
      </div>
      {picture}
      <p>{text}</p>
      <div class="btns">{children}</div>
    </div>
  );
}
