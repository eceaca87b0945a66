import { archRules, habitArchRules, type ArchPlaces, type ArchRule } from '#lib/mapping/placing/archRules.ts';
import { archGradeWords, archRuleWords } from '#words/archPlacement.ts';
import { capital } from '#words/marks.ts';
import { fixed } from '#words/number.ts';

type Props = Readonly<{ places: ArchPlaces; chosen: ArchRule; frontMm: number; tailMm: number }>;

const gradeOf = (rule: ArchRule) =>
  rule === 'own-share' ? 'own' : habitArchRules.some((habit) => habit === rule) ? 'habit' : 'published';

/** Every rule with its number in the picture: place, share of the length, what stands behind it. */
export function ArchTable({ places, chosen, frontMm, tailMm }: Props) {
  return (
    <table class="meas arch-table">
      <caption>One arch for both sides, by ten rules</caption>
      <thead>
        <tr>
          <th scope="col">Rule</th>
          <th scope="col">mm</th>
          <th scope="col">Share</th>
          <th scope="col" class="verd">
            Behind it
          </th>
        </tr>
      </thead>
      <tbody>
        {archRules.map((rule, i) => (
          <tr key={rule} class={rule === chosen ? 'is-real' : undefined}>
            <th scope="row">
              {i + 1}. {capital(archRuleWords[rule])}
              {rule === chosen && ' (your rule)'}
            </th>
            <td>{fixed(places[rule])}</td>
            <td>
              {fixed((100 * (places[rule] - frontMm)) / (tailMm - frontMm))}
              {'\u00a0%'}
            </td>
            <td class="verd">{archGradeWords[gradeOf(rule)]}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
