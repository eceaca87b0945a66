import { ChoiceBox } from '#components/calculator/fields/ChoiceBox.tsx';
import { MarkStage } from '#components/calculator/fields/MarkStage.tsx';
import { StepBack } from '#components/calculator/fields/StepBack.tsx';
import { fixed } from '#words/number.ts';
import { pullWords } from '#words/pull.ts';
import { pinWords, placeMidlineWords as words } from '#words/skills/placeMidline.ts';
import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { PinRow } from './placeMidline/PinRow.tsx';
import { pinHeightsMm, placeView } from './placeMidline/placeView.ts';
import { Thread } from './placeMidline/Thread.tsx';
import { usePlaceMidline, type ExerciseVersion } from './placeMidline/usePlaceMidline.ts';

const pins = ['top', 'foot'] as const;
const levelOptions = words.levels.map((label, i) => ({ value: String(i), label }));
const pinOf = (key: string) => (key === 'foot' ? 'foot' : 'top');

/** Place the midline on a drawn face. The first face comes in as children, drawn at build. */
export default function PlaceMidline({
  at = 'place',
  task,
  version,
  inLink,
  children,
}: ExerciseVersion & Readonly<{ at?: string; task: string; children?: ComponentChildren }>) {
  const { shown, seedText, faults, active, attempt, desk, given, notice, linkNote, ...act } = usePlaceMidline(
    { version, inLink },
  );
  const { across, drafts, judged, hasMarks, tries, hints, review } = attempt;
  const heading = useRef<HTMLHeadingElement>(null);
  const figure = useRef<HTMLDivElement>(null);

  // What was typed before the script arrived is on the page but not in the state.
  useEffect(() => {
    for (const pin of pins) {
      const box = document.getElementById(`${at}-${pin}`);
      if (box instanceof HTMLInputElement && box.value !== fixed(across[pin])) act.type(pin, box.value);
    }
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- once, on arrival.
  }, []);

  const check = async () => {
    const bad = pins.find((pin) => drafts[pin]);
    if (bad) document.getElementById(`${at}-${bad}`)?.focus();
    else await act.check();
  };
  const tryAgain = () => {
    act.tryAgain();
    figure.current?.querySelector<SVGElement>('.handle')?.focus();
  };
  const another = async () => {
    await act.another();
    heading.current?.focus();
  };

  return (
    <div class="place">
      <h1 ref={heading} tabIndex={-1}>
        {words.question}
      </h1>
      <p class="stand">{task}</p>
      {linkNote && (
        <p class="notice plain" role="status">
          {linkNote}
        </p>
      )}
      <div class="fig" ref={figure}>
        <div class="pic">
          <div class="stack">
            <div class="still" aria-hidden="true">
              {desk && given ? <desk.PracticeStill given={given} id={`${at}-face`} /> : children}
            </div>
            <MarkStage
              view={placeView}
              label={words.pictureLabel}
              marks={pins.map((pin) => ({ key: pin, point: { xMm: across[pin], yMm: pinHeightsMm[pin] } }))}
              active={active}
              activeLabel={pinWords(active, across[active])}
              hold={act.hold}
              onPick={(key) => act.setActive(pinOf(key))}
              onMove={(key, { xMm }) => act.moveTo(pinOf(key), xMm)}
              onStep={(key, { xMm }) => xMm !== 0 && act.moveBy(pinOf(key), xMm)}
            >
              {desk && given && judged && <desk.AnswerLines given={given} judged={judged} />}
              {desk && given && !judged && hasMarks && <desk.FaceMarks markSet={given.markSet} />}
              {!judged && <Thread across={across} />}
            </MarkStage>
          </div>
          <div class="calc-tools pull no-print">
            <p class="hint plain" role="status">
              {act.stop || pullWords}
            </p>
            <StepBack {...act} all="pins" />
          </div>
        </div>
        <div class="side" onFocusOut={act.hold.letGo}>
          <form
            class="place-fields js-only no-print"
            method="dialog"
            autocomplete="off"
            onSubmit={(event) => {
              event.preventDefault();
              void check();
            }}
          >
            {pins.map((pin) => (
              <PinRow
                key={`${pin} ${shown.seed}`}
                id={`${at}-${pin}`}
                pin={pin}
                xMm={across[pin]}
                draft={drafts[pin]}
                onType={(text) => act.type(pin, text)}
                onStep={(by) => {
                  act.setActive(pin);
                  act.moveBy(pin, by);
                }}
              />
            ))}
            <fieldset class="field">
              <legend>{words.arrows}</legend>
              <div class="pick">
                {pins.map((pin) => (
                  <label key={pin}>
                    <input
                      type="radio"
                      name={`${at}-pin`}
                      value={pin}
                      checked={active === pin}
                      onChange={() => act.setActive(pin)}
                    />
                    {words.pins[pin]}
                  </label>
                ))}
              </div>
            </fieldset>
            <label class="tickbox">
              <input
                type="checkbox"
                checked={hasMarks}
                onChange={({ currentTarget }) => void act.showMarks(currentTarget.checked)}
              />{' '}
              <span>{words.marks}</span>
            </label>
            <button class="btn" type="submit">
              {words.check}
            </button>
          </form>
          <div role="status" aria-live="polite">
            {judged && desk && given && (
              <desk.PlacedPanel
                given={given}
                judged={judged}
                tries={tries}
                hints={hints}
                id={`${at}-answer`}
                onTryAgain={tryAgain}
                onAnother={another}
              />
            )}
            {notice && <p class="notice plain">{notice}</p>}
            {review && <p class="tiny quiet plain">{review}</p>}
          </div>
        </div>
      </div>
      <form
        class="place-which js-only no-print"
        method="dialog"
        autocomplete="off"
        onSubmit={(event) => {
          event.preventDefault();
          void act.showTyped();
        }}
      >
        <div>
          <ChoiceBox
            id={`${at}-level`}
            label={words.level}
            value={String(shown.level)}
            options={levelOptions}
            onType={(text) => void act.chooseLevel(text)}
          />
          {faults.level && (
            <p class="field-error" role="alert">
              {faults.level}
            </p>
          )}
        </div>
        <div class="field">
          <label for={`${at}-seed`}>{words.face}</label>
          <div class="unit">
            <input
              class="in"
              id={`${at}-seed`}
              type="text"
              inputMode="numeric"
              autocomplete="off"
              spellcheck={false}
              value={seedText}
              aria-invalid={faults.seed ? true : undefined}
              aria-describedby={faults.seed ? `${at}-seed-error ${at}-seed-hint` : `${at}-seed-hint`}
              onInput={({ currentTarget }) => act.setSeedText(currentTarget.value)}
            />
            <button class="btn line" type="submit">
              {words.show}
            </button>
          </div>
          <p class="hint" id={`${at}-seed-hint`}>
            {words.faceHint}
          </p>
          {faults.seed && (
            <p class="field-error" id={`${at}-seed-error`} role="alert">
              {faults.seed}
            </p>
          )}
        </div>
        <button class="btn text" type="button" onClick={another}>
          {words.another}
        </button>
      </form>
      <details class="worked-answer">
        <summary>{words.how}</summary>
        <ol class="steps">
          {words.steps.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
      </details>
    </div>
  );
}
