import { sheetsWords as words } from '#words/sheets.ts';

/** The sentence that stands by the bars on paper, with two lines to write on. */
export function BarCheck() {
  const [reads, across, up] = words.itMeasures;
  return (
    <p class="bar-check">
      {words.actualSize} {reads} <span class="blank" /> {across} <span class="blank" /> {up}
    </p>
  );
}
