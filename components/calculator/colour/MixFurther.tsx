import type { MixFurther as Further } from '#calculators/mixFurther.ts';
import { DriftPlot } from '#components/pictures/DriftPlot.tsx';
import { SpectrumPlot } from '#components/pictures/SpectrumPlot.tsx';
import { bandsNm } from '#lib/colour/spectrum/bands.ts';
import { causeWords, mattersSay, weeksWords } from '#words/mixFurther.ts';
import { fixed } from '#words/number.ts';

const span = ([lo, hi]: readonly [number, number]) => `${fixed(lo)} to ${fixed(hi)}`;

/** What matters most, the spectra, the way over two years: each drawn, and each as numbers. */
export function MixFurther({ id, further }: Readonly<{ id: string; further: Further | undefined }>) {
  if (!further) return null;
  const { matters, spectra, points } = further;
  const most = Math.max(1e-9, ...matters.map(({ change }) => change));
  const read = bandsNm.flatMap((nm, band) => (nm % 50 === 0 ? [{ nm, band }] : []));
  const share = (value: number | undefined) => fixed(100 * (value ?? 0));
  return (
    <div class="tables">
      <div>
        <table class="meas matters">
          <caption>What matters most: how far the colour at six weeks moves</caption>
          <thead>
            <tr>
              <th scope="col">One thing changed, all else kept</th>
              <th scope="col">Moves</th>
              <th scope="col" class="bar" aria-hidden="true"></th>
            </tr>
          </thead>
          <tbody>
            {matters.map(({ cause, change }) => (
              <tr key={cause}>
                <th scope="row">{causeWords[cause]}</th>
                <td>{fixed(change)}</td>
                <td class="bar" aria-hidden="true">
                  <svg class="matter-bar" viewBox="0 0 60 6">
                    <rect y="1" width={(60 * change) / most} height="4" />
                  </svg>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
        <p class="plain small">
          {mattersSay(matters)} “Moves” is the colour difference CIEDE2000 between two predictions.
        </p>
      </div>
      <div class="diffs">
        <figure class="plot-figure">
          <SpectrumPlot
            id={`${id}-spectrum`}
            curves={[
              { name: 'today', line: 'plain', spectrum: spectra.today },
              { name: 'six weeks', line: 'dash', spectrum: spectra.healed },
              { name: 'fresh', line: 'dots', spectrum: spectra.fresh },
            ]}
          />
          <figcaption class="plain small">
            How much of each wavelength comes back. Where two curves run together, that light cannot tell them
            apart.
          </figcaption>
        </figure>
        <table class="meas">
          <caption>Light thrown back, of 100 parts</caption>
          <thead>
            <tr>
              <th scope="col">nm</th>
              <th scope="col">Today</th>
              <th scope="col">Fresh</th>
              <th scope="col">Six weeks</th>
            </tr>
          </thead>
          <tbody>
            {read.map(({ nm, band }) => (
              <tr key={nm}>
                <th scope="row">{nm}</th>
                <td>{share(spectra.today[band])}</td>
                <td>{share(spectra.fresh[band])}</td>
                <td>{share(spectra.healed[band])}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <div class="diffs">
        <figure class="plot-figure">
          <DriftPlot id={`${id}-drift`} points={points} />
          <figcaption class="plain small">
            “Fresh” is pigment in calm skin. Swelling, redness and crust are not in it.
          </figcaption>
        </figure>
        <table class="meas two-years">
          <caption>From fresh to two years; small: where 9 in 10 lie</caption>
          <thead>
            <tr>
              <th scope="col">When</th>
              <th scope="col">L*</th>
              <th scope="col">a*</th>
              <th scope="col">b*</th>
            </tr>
          </thead>
          <tbody>
            {points.map(({ weeks, plain, l, a, b }) => (
              <tr key={weeks}>
                <th scope="row">{weeksWords(weeks)}</th>
                {(
                  [
                    [plain.l, l],
                    [plain.a, a],
                    [plain.b, b],
                  ] as const
                ).map(([middle, ends], i) => (
                  <td key={i}>
                    {fixed(middle)} <span class="quiet small">{span(ends)}</span>
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </div>
  );
}
