import { sheetsWords } from '#words/sheets.ts';
import { useEffect, useRef, useState } from 'preact/hooks';

/**
 * A sheet's drawing is fetched when something changes. Until it has arrived, `drawn` stays what is really on
 * the sheet:
 * the foot must never name a face that is not above it. Without `Drawing`, the drawing made at build stands
 * there.
 */
export function useDrawing<W, D>(
  wanted: W,
  fetchDrawing: () => Promise<D>,
): Readonly<{ drawn: W; Drawing: D | undefined; notice: string }> {
  const [shown, setShown] = useState<Readonly<{ drawn: W; Drawing?: D }>>({ drawn: wanted });
  const [notice, setNotice] = useState('');
  const asked = useRef(wanted);
  const key = JSON.stringify(wanted);
  useEffect(() => {
    asked.current = wanted;
    if (key === JSON.stringify(shown.drawn)) return;
    fetchDrawing().then(
      (Drawing) => {
        setNotice('');
        setShown({ drawn: asked.current, Drawing });
      },
      () => setNotice(sheetsWords.loadFailed),
    );
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- `key` says all that is wanted.
  }, [key]);
  return { drawn: shown.drawn, Drawing: shown.Drawing, notice };
}
