import { itemSeed, readSeed } from '#lib/practice/itemSeed.ts';
import { rungs, stepsShown, type Rung } from '#lib/practice/ladder.ts';
import { mark, type Marked } from '#lib/practice/marking.ts';
import { daysBetween } from '#lib/quantities/isoDay.ts';
import { readDecimal } from '#lib/quantities/decimal.ts';
import { Icon } from '#components/site/Icon.tsx';
import { fixed } from '#words/number.ts';
import * as say from '#words/practice.ts';
import { tied } from '#words/skills/say.ts';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { AnswerChoice } from './AnswerChoice.tsx';
import { AnswerField } from './AnswerField.tsx';
import { Beads } from './Beads.tsx';
import type { Bound, ProblemSettings } from './bound.ts';
import { FeedbackPanel } from './FeedbackPanel.tsx';
import { GivenNumbers } from './GivenNumbers.tsx';

type Judged = Readonly<{ reply: number | string; inWords: string; marked: Marked }>;
const setLength = 6;
const words = say.practiceWords;

/**
 * One problem: question, givens, picture, answer, feedback, hints, worked answer. Everything follows from the seed.
 * The first render uses the default seed, on the server and in the browser alike; address and storage are read after it.
 */
export function Problem<G>({ skill, words: spoken, Picture, at, level, main = false, inSet }: Bound<G> & ProblemSettings) {
  const [index, setIndex] = useState(inSet?.index ?? 0);
  const [asked, setAsked] = useState<number | undefined>();
  const [rung, setRung] = useState<Rung>(inSet?.rung ?? (main ? 'last-blank' : 'bare'));
  const [text, setText] = useState('');
  const [error, setError] = useState<string | undefined>();
  const [judged, setJudged] = useState<Judged | undefined>();
  const [tries, setTries] = useState(0);
  const [firstCredit, setFirstCredit] = useState(0);
  const [slip, setSlip] = useState<string | undefined>();
  const [hints, setHints] = useState(0);
  const [isOpen, setIsOpen] = useState(false);
  const [isKept, setIsKept] = useState(false);
  const [beads, setBeads] = useState<readonly say.BeadState[]>([]);
  const [notice, setNotice] = useState('');
  const [review, setReview] = useState('');
  const heading = useRef<HTMLHeadingElement>(null);
  const field = useRef<HTMLInputElement>(null);
  const summary = useRef<HTMLElement>(null);
  const isTouched = useRef(false);

  const seed = asked ?? itemSeed(inSet ? 'mixed' : 'practice', '', skill.id, index);
  const { given, answer, slips, steps } = useMemo(() => {
    const dealt = skill.given(seed);
    return {
      given: dealt,
      answer: skill.answer(dealt),
      slips: skill.slips.map(({ id, value, credit }) => ({ id, credit, value: value(dealt) })),
      steps: skill.steps(dealt).map(({ id, values }) => ({ hint: spoken.steps[id]?.hint ?? '', done: tied(spoken.steps[id]?.done(values) ?? '') })),
    };
  }, [skill, spoken, seed]);
  const unit = answer.kind === 'number' ? answer.unit : '';
  const inWords = (reply: number | string) => (typeof reply === 'number' ? `${reply === Number(reply.toFixed(1)) ? fixed(reply, 1) : String(reply).replace('-', '−')} ${unit}` : spoken.option(reply, given));

  useEffect(() => {
    if (!main) return;
    const wanted = readSeed(new URLSearchParams(location.search).get('seed'));
    if (wanted !== undefined) setAsked(wanted);
    let stop: (() => void) | undefined;
    void Promise.all([import('./keep.ts'), import('#lib/practice/standing.ts')]).then(([{ onKept }, { standingIn }]) => {
      stop = onKept(({ progress, newer }) => {
        if (newer) setNotice(words.newer);
        if (isTouched.current) return;
        isTouched.current = true;
        const standing = standingIn(progress, skill.id);
        if (standing.done === 0) return;
        setRung(standing.rung);
        setIndex(standing.done);
      });
    });
    return () => stop?.();
  }, []);

  async function keep(isSolved: boolean, credit: number, triesNow: number, slipNow: string | undefined) {
    if (isKept) return;
    setIsKept(true);
    const bead = !isSolved ? 'none' : credit === 1 && hints === 0 ? 'full' : 'half';
    inSet?.onDone(bead);
    if (main) setBeads((before) => [...(before.length >= setLength ? [] : before), bead]);
    const [{ keepAnswer, today }, { standingIn }] = await Promise.all([import('./keep.ts'), import('#lib/practice/standing.ts')]);
    const day = today();
    const kept = await keepAnswer({ skill: skill.id, seed, day, atMs: Date.now(), rung, credit, tries: triesNow, hints, solved: isSolved, ...(slipNow ? { slip: slipNow } : {}) });
    const next = standingIn(kept.progress, skill.id).review;
    setReview(next ? say.reviewWords(daysBetween(day, next.due)) : '');
    setNotice(kept.newer ? words.newer : kept.kind === 'memory' ? words.notSaved : '');
  }

  function check() {
    isTouched.current = true;
    let reply: number | string = text;
    if (answer.kind === 'number') {
      const read = readDecimal(text, unit);
      if (!read.ok) {
        setError(say.refusedNumber(read.reason, unit));
        field.current?.focus();
        return;
      }
      reply = read.value;
    } else if (text === '') {
      setError(words.choose);
      field.current?.focus();
      return;
    }
    const marked = mark(answer, slips, reply);
    const credit = tries === 0 && !isKept ? marked.credit : firstCredit;
    const named = slip ?? (marked.right ? undefined : marked.slipId);
    setError(undefined);
    setJudged({ reply, inWords: inWords(reply), marked });
    setTries(tries + 1);
    setFirstCredit(credit);
    setSlip(named);
    if (marked.right) void keep(true, credit, tries + 1, named);
  }

  function tryAgain() {
    setJudged(undefined);
    field.current?.focus();
  }

  function openWorked(open: boolean) {
    setIsOpen(open);
    if (open && !judged?.marked.right && stepsShown(rung, steps.length) < steps.length) void keep(false, firstCredit, tries, slip);
  }

  async function newNumbers() {
    isTouched.current = true;
    if (tries > 0 && !isKept) await keep(false, firstCredit, tries, slip);
    if (main) {
      const [{ onKept }, { standingIn }] = await Promise.all([import('./keep.ts'), import('#lib/practice/standing.ts')]);
      if (rung === 'worked') setRung('last-blank');
      else onKept(({ progress }) => setRung(standingIn(progress, skill.id, rung).rung))();
    }
    if (inSet) {
      inSet.onNext();
      return;
    }
    setAsked(undefined);
    setIndex(index + 1);
    restart();
    heading.current?.focus();
  }

  function restart() {
    setText('');
    setError(undefined);
    setJudged(undefined);
    setTries(0);
    setFirstCredit(0);
    setSlip(undefined);
    setHints(0);
    setIsOpen(false);
    setIsKept(false);
    setReview('');
  }

  const Heading = `h${level}` as const;
  const shown = stepsShown(rung, steps.length);
  const isWorked = shown === steps.length;
  const isRight = judged?.marked.right === true;
  const slipId = judged && !judged.marked.right ? judged.marked.slipId : undefined;
  const feedback = !judged ? undefined
    : isRight ? { title: words.rightTitle, text: spoken.right(given, judged.inWords) }
    : (slipId === undefined ? undefined : spoken.slips[slipId]?.(given, judged.inWords)) ?? spoken.other(given, judged.inWords);
  const reveal = isRight || slipId !== undefined;
  const right = answer.kind === 'number' ? answer.exact : answer.correct;
  const rightBeads = beads.filter((bead) => bead === 'full' || bead === 'half').length;
  const isSetDone = beads.length === setLength;

  return (
    <div class="prac">
      {main && (
        <div class="prac-top">
          <p class="kicker">{say.questionOf(Math.min(setLength, beads.length + (isKept ? 0 : 1)), setLength)}</p>
          <Beads states={Array.from({ length: setLength }, (_, i) => beads[i] ?? (i === beads.length && !isKept ? 'here' : 'todo'))} />
        </div>
      )}
      <section class="problem" aria-labelledby={`${at}-q`}>
        <Heading id={`${at}-q`} ref={heading} tabIndex={-1}>{tied(spoken.question(given))}</Heading>
        {spoken.givens(given).map((sentence) => <p>{tied(sentence)}</p>)}
        {spoken.table && <GivenNumbers {...spoken.table(given)} />}
        <Picture given={given} at={`${at}-g`} />
        {shown > 0 && (
          <div class="so-far">
            <p class="plain"><b>{words.soFar}</b></p>
            <ol class="steps">{steps.slice(0, shown).map(({ done }) => <li>{done}</li>)}</ol>
            <p>{isWorked ? words.allWorked : words.yourTurn}</p>
            {isWorked && <button class="btn js-only" type="button" onClick={newNumbers}>{words.newNumbers}</button>}
          </div>
        )}
        {!isWorked && (
          <form class="js-only" onSubmit={(event) => { event.preventDefault(); check(); }}>
            {answer.kind === 'number' ? (
              <AnswerField id={`${at}-a`} label={spoken.label} unit={unit} range={answer.range} text={text} error={error} field={field}
                onText={(value) => { isTouched.current = true; setText(value); setError(undefined); }} />
            ) : (
              <AnswerChoice id={`${at}-a`} label={spoken.label} chosen={text} error={error} field={field}
                options={answer.options.map((code) => ({ code, said: tied(spoken.option(code, given)) }))}
                onChoose={(code) => { isTouched.current = true; setText(code); setError(undefined); }} />
            )}
          </form>
        )}
        <noscript><p class="plain small">{words.noScript}</p></noscript>
        <div role="status" aria-live="polite">
          {judged && feedback && (
            <FeedbackPanel isRight={isRight} title={feedback.title} text={tied(feedback.text)}
              marks={isRight ? say.solvedWords(tries, hints) : say.creditWords(judged.marked.credit)}
              picture={reveal && <Picture given={given} at={`${at}-f`} yours={judged.reply} right={right} />}>
              {!isRight && <button class="btn" type="button" onClick={tryAgain}><Icon name="undo" /> {words.tryAgain}</button>}
              {!isOpen && <button class="btn line" type="button" onClick={() => { openWorked(true); summary.current?.focus(); }}>{words.showWorked}</button>}
              <button class={isRight ? 'btn' : 'btn text'} type="button" onClick={newNumbers}>{inSet ? words.nextQuestion : words.newNumbers}</button>
            </FeedbackPanel>
          )}
          {isSetDone && isKept && <p class="set-done plain">{say.setDone(rightBeads, setLength)}</p>}
          {notice && <p class="notice plain">{notice}</p>}
        </div>
        {!isWorked && (
          <details class="worked-answer" open={isOpen} onToggle={({ currentTarget: { open } }) => { if (open !== isOpen) openWorked(open); }}>
            <summary ref={summary}>{words.worked}</summary>
            <ol class="steps">{steps.map(({ done }, i) => <li>{i === steps.length - 1 ? <span class="answer">{done}</span> : done}</li>)}</ol>
          </details>
        )}
      </section>
      <aside class="hintbox" aria-label={words.hints}>
        {!isWorked && (
          <div class="js-only no-print">
            <p class="hint-head">{words.hints}</p>
            <ol aria-live="polite">{steps.slice(shown, shown + hints).map(({ hint }, i) => <li><b>{i + 1}</b> {hint}</li>)}</ol>
            {shown + hints < steps.length && !isRight && (
              <button class="btn text" type="button" onClick={() => { isTouched.current = true; setHints(hints + 1); }}>{say.showHintWords(hints + 1)}</button>
            )}
          </div>
        )}
        {main && (
          <label class="field js-only no-print">
            <span>{words.howMuch}</span>
            <select class="in" value={rung} onChange={({ currentTarget: { value } }) => { isTouched.current = true; setRung(rungs.find((name) => name === value) ?? rung); }}>
              {rungs.filter((name) => name === rung || !['mixed', 'review'].includes(name)).map((name) => <option value={name} selected={name === rung}>{say.rungWords[name]}</option>)}
            </select>
          </label>
        )}
        <p class="tiny quiet plain">{say.seedWords(seed)} {review}</p>
      </aside>
    </div>
  );
}
