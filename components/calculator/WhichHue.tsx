import { whichHue } from '#calculators/whichHue.ts';
import { HuePlane } from '#components/practice/pictures/HuePlane.tsx';
import { fixed } from '#words/number.ts';
import { changeWords, hueBottleWords, whichHueLabels, whichHueOnPaper, whichHueSays, whichOldWords, whichSkinWords } from '#words/whichHue.ts';
import { ChoiceBox } from './ChoiceBox.tsx';
import { Frame } from './Frame.tsx';
import { useCalculator } from './useCalculator.ts';

const nameOf = (key: string) => (key === 'skin' ? whichHueLabels.skin : whichHueLabels.old);
const optionsOf = (words: Readonly<Record<string, string>>) => Object.entries(words).map(([value, label]) => ({ value, label }));

/** Which bottle takes the old hue away: the island. */
export function WhichHue({ id = 'hue' }: Readonly<{ id?: string }>) {
  const desk = useCalculator(whichHue, nameOf);
  const result = whichHue.solve(desk.state);
  const { shown, rows } = result;
  return (
    <Frame
      tall
      desk={desk}
      id={id}
      address="/calculators/which-hue/"
      says={whichHueSays(result)}
      given={whichHueOnPaper(desk.state, shown.today)}
      picture={<HuePlane given={{ skin: shown.skin, today: shown.today, bottles: rows }} at={id} right={1} />}
      side={
        <>
          <ChoiceBox id={`${id}-skin`} label={whichHueLabels.skin} value={desk.state.skin} options={optionsOf(whichSkinWords)} onType={(text) => desk.type('skin', text)} />
          <ChoiceBox id={`${id}-old`} label={whichHueLabels.old} value={desk.state.old} options={optionsOf(whichOldWords)} onType={(text) => desk.type('old', text)} />
        </>
      }
    >
      <div class="tables">
        <table class="meas trust">
          <caption>One small dose of each bottle, at six weeks</caption>
          <thead><tr><th scope="col">Bottle</th><th scope="col">Cosine</th><th scope="col">a*</th><th scope="col">b*</th><th scope="col">L*</th></tr></thead>
          <tbody>
            {rows.map(({ id: bottle, cosine, move: [l, a, b] }) => (
              <tr key={bottle}><th scope="row">{hueBottleWords[bottle]}</th><td>{fixed(cosine, 2)}</td><td>{changeWords(a)}</td><td>{changeWords(b)}</td><td>{changeWords(l)}</td></tr>
            ))}
          </tbody>
        </table>
      </div>
    </Frame>
  );
}
