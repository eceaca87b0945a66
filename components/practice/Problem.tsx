import { rungs } from '#lib/practice/ladder.ts';
import { Icon } from '#components/site/Icon.tsx';
import { undoIcon } from '#components/site/icons.ts';
import * as say from '#words/practice.ts';
import { tied } from '#words/skills/say.ts';
import { useRef } from 'preact/hooks';
import { AnswerChoice } from './AnswerChoice.tsx';
import { AnswerField } from './AnswerField.tsx';
import { Beads } from './Beads.tsx';
import type { Bound, ProblemSettings } from './bound.ts';
import { FeedbackPanel } from './FeedbackPanel.tsx';
import { GivenNumbers } from './GivenNumbers.tsx';
import { SaveCopy } from './SaveCopy.tsx';
import { setLength, useProblem } from './useProblem.ts';

const words = say.practiceWords;

/**
 * One problem: question, givens, picture, answer, feedback, hints, worked answer. Everything follows from the
 * seed.
 */
export function Problem<G>(props: Bound<G> & ProblemSettings) {
  const { skill, Picture, at, level, main = false, inSet } = props;
  const { words: spoken } = skill;
  const {
    given,
    answer,
    steps,
    seed,
    unit,
    rung,
    shown,
    attempt,
    beads,
    notice,
    versionNote,
    heading,
    field,
    ...act
  } = useProblem(props);
  const { text, error, judged, tries, hints, isOpen, isKept, review } = attempt;
  const summary = useRef<HTMLElement>(null);

  const Heading = `h${level}` as const;
  const isWorked = shown === steps.length;
  const isRight = judged?.marked.right === true;
  const slipId = judged && !judged.marked.right ? judged.marked.slipId : undefined;
  const named = judged && slipId !== undefined ? spoken.slips[slipId]?.(given, judged.inWords) : undefined;
  const feedback =
    judged &&
    (isRight
      ? { title: words.rightTitle, text: spoken.right(given, judged.inWords) }
      : (named ?? spoken.other(given, judged.inWords)));
  const right = answer.kind === 'number' ? answer.exact : answer.correct;
  const answerId = `${at}-a`;

  return (
    <div class="prac" onFocusIn={act.getReady}>
      {main && (
        <div class="prac-top">
          <p class="kicker">
            {say.questionOf(Math.min(setLength, beads.length + (isKept ? 0 : 1)), setLength)}
          </p>
          <Beads
            states={Array.from(
              { length: setLength },
              (_, i) => beads[i] ?? (i === beads.length && !isKept ? 'here' : 'todo'),
            )}
          />
          <div role="status">{versionNote && <p class="notice plain">{versionNote}</p>}</div>
        </div>
      )}
      <section class="problem" aria-labelledby={`${at}-q`}>
        <Heading id={`${at}-q`} ref={heading} tabIndex={-1}>
          {tied(spoken.question(given))}
        </Heading>
        {spoken.givens(given).map((sentence) => (
          <p>{tied(sentence)}</p>
        ))}
        {spoken.table && <GivenNumbers {...spoken.table(given)} />}
        <Picture given={given} at={`${at}-g`} />
        {shown > 0 && (
          <div class="so-far">
            <p class="plain">
              <b>{words.soFar}</b>
            </p>
            <ol class="steps">
              {steps.slice(0, shown).map(({ done }) => (
                <li>{done}</li>
              ))}
            </ol>
            <p>{isWorked ? words.allWorked : words.yourTurn}</p>
            {isWorked && (
              <button class="btn js-only" type="button" onClick={act.newNumbers}>
                {words.newNumbers}
              </button>
            )}
          </div>
        )}
        {!isWorked && (
          <form
            class="js-only"
            method="dialog"
            data-early={!inSet || undefined}
            onSubmit={(event) => {
              event.preventDefault();
              act.check();
            }}
          >
            {answer.kind === 'number' ? (
              <AnswerField
                id={answerId}
                label={spoken.label}
                unit={unit}
                range={answer.range}
                text={text}
                error={error}
                field={field}
                onText={act.setText}
              />
            ) : (
              <AnswerChoice
                id={answerId}
                label={spoken.label}
                chosen={text}
                error={error}
                field={field}
                onChoose={act.setText}
                options={answer.options.map((code) => ({ code, said: tied(spoken.option(code, given)) }))}
              />
            )}
          </form>
        )}
        <noscript>
          <p class="plain small">{words.noScript}</p>
        </noscript>
        <div role="status" aria-live="polite">
          {judged && feedback && (
            <FeedbackPanel
              isRight={isRight}
              title={feedback.title}
              text={tied(feedback.text)}
              marks={isRight ? say.solvedWords(tries, hints) : say.creditWords(judged.marked.credit)}
              picture={
                (isRight || named) && (
                  <Picture given={given} at={`${at}-f`} yours={judged.reply} right={right} />
                )
              }
            >
              {!isRight && (
                <button class="btn" type="button" onClick={act.tryAgain}>
                  <Icon of={undoIcon} /> {words.tryAgain}
                </button>
              )}
              {!isOpen && (
                <button
                  class="btn line"
                  type="button"
                  onClick={() => {
                    act.openWorked(true);
                    summary.current?.focus();
                  }}
                >
                  {words.showWorked}
                </button>
              )}
              <button class={isRight ? 'btn' : 'btn text'} type="button" onClick={act.newNumbers}>
                {inSet ? words.nextQuestion : words.newNumbers}
              </button>
            </FeedbackPanel>
          )}
          {beads.length === setLength && isKept && (
            <p class="set-done plain">
              {say.setDone(beads.filter((bead) => bead !== 'none').length, setLength)}
            </p>
          )}
          {notice && <p class="notice plain">{notice}</p>}
          {notice === words.notSaved && <SaveCopy />}
        </div>
        {!isWorked && (
          <details
            class="worked-answer"
            open={isOpen}
            onToggle={({ currentTarget: { open } }) => act.openWorked(open)}
          >
            <summary ref={summary}>{words.worked}</summary>
            <ol class="steps">
              {steps.map(({ done }, i) => (
                <li>{i === steps.length - 1 ? <span class="answer">{done}</span> : done}</li>
              ))}
            </ol>
          </details>
        )}
      </section>
      <div class="hintbox" role="group" aria-label={words.hints}>
        {!isWorked && (
          <div class="js-only no-print">
            <p class="hint-head">{words.hints}</p>
            <ol aria-live="polite">
              {steps.slice(shown, shown + hints).map(({ hint }, i) => (
                <li>
                  <b>{i + 1}</b> {hint}
                </li>
              ))}
            </ol>
            {shown + hints < steps.length && !isRight && (
              <button class="btn text" type="button" onClick={() => act.change({ hints: hints + 1 })}>
                {say.showHintWords(hints + 1)}
              </button>
            )}
          </div>
        )}
        {main && (
          <label class="field js-only no-print">
            <span>{words.howMuch}</span>
            <select
              class="in"
              value={rung}
              onChange={({ currentTarget: { value } }) => {
                act.change({});
                act.setRung(rungs.find((name) => name === value) ?? rung);
              }}
            >
              {rungs
                .filter((name) => name === rung || !['mixed', 'review'].includes(name))
                .map((name) => (
                  <option value={name} selected={name === rung}>
                    {say.rungWords[name]}
                  </option>
                ))}
            </select>
          </label>
        )}
        <p class="tiny quiet plain">
          {say.seedWords(seed, skill.version)} {review}
        </p>
      </div>
    </div>
  );
}
