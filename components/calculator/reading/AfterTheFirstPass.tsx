import {
  afterTheFirstPass,
  type AfterTheFirstPassState,
  type AgainMark,
  againMarks,
} from '#calculators/afterTheFirstPass.ts';
import { PigmentInOutline } from '#components/pictures/PigmentInOutline.tsx';
import { afterTheFirstPassSays, skinCaution, stepWords } from '#words/afterTheFirstPass.ts';
import { browMarkWords, capital, poseWords, postureWords, sideWords, skinWords } from '#words/marks.ts';
import { fixed } from '#words/number.ts';
import { ChoiceBox } from '../fields/ChoiceBox.tsx';
import { Frame } from '../frame/Frame.tsx';
import { NumberBox } from '../fields/NumberBox.tsx';
import { SmallNumber } from '../fields/SmallNumber.tsx';
import { useCalculator } from '../frame/useCalculator.ts';

type ChoiceName = 'side' | 'skin' | 'pose' | 'posture';
const choices = { side: sideWords, skin: skinWords, pose: poseWords, posture: postureWords } as const;
const labels = {
  side: 'Brow, the client’s',
  skin: 'Skin now',
  pose: 'Face now',
  posture: 'Position now',
  error: 'Your reading error',
  readings: 'Readings of each mark',
} as const;
const isLabelled = (key: string): key is keyof typeof labels => Object.hasOwn(labels, key);
const markOf = (key: string) => againMarks.find((mark) => key === mark || key === `${mark}Now`);
const markLabel = (mark: AgainMark, isNow: boolean) =>
  `${capital(browMarkWords[mark])}, ${isNow ? 'pigment now' : 'approved'}`;

function nameOf(key: string): string {
  const mark = markOf(key);
  if (mark) return markLabel(mark, key !== mark);
  return isLabelled(key) ? labels[key] : key;
}

/** The approved outline against where the pigment sits: the island. */
export function AfterTheFirstPass({ id = 'again' }: Readonly<{ id?: string }>) {
  const desk = useCalculator(afterTheFirstPass, nameOf);
  const { state, result } = desk;
  const { again } = result;
  const choose = (name: ChoiceName) => (
    <ChoiceBox
      id={`${id}-${name}`}
      label={labels[name]}
      value={state[name]}
      options={Object.entries(choices[name]).map(([value, label]) => ({ value, label }))}
      onType={(text) => desk.type(name, text)}
    />
  );
  const number = (mark: AgainMark, name: keyof AfterTheFirstPassState & string) => (
    <SmallNumber
      id={`${id}-${name}`}
      label={`${markLabel(mark, name !== mark)}, millimetres`}
      shown={fixed(Number(state[name]))}
      refused={desk.draft(name)}
      onType={(text) => desk.type(name, text)}
    />
  );
  return (
    <Frame
      tall
      desk={desk}
      id={id}
      address="/calculators/after-the-first-pass/"
      says={afterTheFirstPassSays(again)}
      caution={skinCaution(state.skin)}
      picture={
        <>
          <PigmentInOutline id={id} side={state.side} marks={againMarks} result={result} />
          <div class="legend">
            <span>
              <svg class="again-plot" viewBox="0 0 12 5.6" aria-hidden="true">
                <path class="d-plan" d="M0,3H12" />
              </svg>{' '}
              approved outline
            </span>
            <span>
              <svg class="again-plot" viewBox="0 0 12 5.6" aria-hidden="true">
                <path class="pigment" d="M1,1H11V5H1Z" />
              </svg>{' '}
              pigment now
            </span>
          </div>
        </>
      }
      side={
        <>
          <table class="meas again">
            <caption>Heights above the pupils; the tail from the midline, mm</caption>
            <thead>
              <tr>
                <th scope="col">Mark</th>
                <th scope="col">Approved</th>
                <th scope="col">Now</th>
                <th scope="col" class="verd">
                  Next step
                </th>
              </tr>
            </thead>
            <tbody>
              {againMarks.map((mark) => {
                const now = `${mark}Now` as const;
                const refused = [mark, now].filter((name) => desk.draft(name));
                return (
                  <>
                    <tr
                      key={mark}
                      class={again.ok && again.marks[mark].step.do === 'add-here' ? 'is-real' : undefined}
                    >
                      <th scope="row">{capital(browMarkWords[mark])}</th>
                      <td>{number(mark, mark)}</td>
                      <td>{number(mark, now)}</td>
                      <td class="verd">{again.ok ? stepWords(again.marks[mark]) : 'Not compared'}</td>
                    </tr>
                    {refused.length > 0 && (
                      <tr key={`${mark}-error`}>
                        <td colSpan={4} class="verd">
                          {refused.map((name) => (
                            <p key={name} class="field-error" id={`${id}-${name}-error`} role="alert">
                              {desk.draft(name)?.sentence}
                            </p>
                          ))}
                        </td>
                      </tr>
                    )}
                  </>
                );
              })}
            </tbody>
          </table>
          <div class="two">
            {choose('side')}
            {choose('skin')}
          </div>
          <details class="fold">
            <summary>How they were read</summary>
            <div class="fold-in">
              {choose('pose')}
              {choose('posture')}
              <NumberBox
                id={`${id}-error`}
                label={labels.error}
                unit="mm"
                shown={String(state.error)}
                refused={desk.draft('error')}
                onType={(text) => desk.type('error', text)}
              />
              <NumberBox
                id={`${id}-readings`}
                label={labels.readings}
                unit=""
                shown={String(state.readings)}
                refused={desk.draft('readings')}
                onType={(text) => desk.type('readings', text)}
              />
            </div>
          </details>
        </>
      }
    />
  );
}
