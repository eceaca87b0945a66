import { lightnessTooHigh, lightSlope } from '#lib/colour/reading/lightSlope.ts';
import { patchOf } from '#lib/colour/reading/patchOf.ts';
import { photoSkin } from '#lib/colour/reading/photoSkin.ts';
import { photoCannotSay, photoRefusals, photoSays, unevenSays } from '#words/photoReading.ts';
import { cannotSay, skinReadingRows, skinReadingSays } from '#words/skinReading.ts';
import type { Square } from './dotsOf.ts';

/** What is asked: both squares, where they were pointed at, and what the card throws back, per cent. */
export type Asked = Readonly<{ card?: Square | undefined; skin?: Square | undefined; reflects: number }>;
/** What is said: a sentence and its doubt; the rest only where a colour was read. */
export type Told = Readonly<{
  answer: string;
  doubt: string;
  angles?: string;
  uneven?: string | undefined;
  rows: readonly Readonly<{ name: string; value: string; between: string }>[];
  cannot: readonly string[];
}>;

const refused = (reason: keyof typeof photoRefusals): Told => ({
  ...photoRefusals[reason],
  rows: [],
  cannot: [],
});

/** Reads the skin by the card and puts it into words. */
export function tellPhoto({ card, skin, reflects }: Asked): Told {
  const cardPatch = card && patchOf(card.dots);
  if (!card || !cardPatch) return refused('no-card');
  const skinPatch = skin && patchOf(skin.dots);
  if (!skin || !skinPatch) return refused('no-skin');
  const read = photoSkin(skinPatch, cardPatch, reflects / 100);
  if (!read.ok) return refused(read.reason);
  const slope = lightSlope(card.dots, card.side);
  const toSkin = {
    across: (skin.middle.x - card.middle.x) / card.step,
    down: (skin.middle.y - card.middle.y) / card.step,
  };
  const { answer, doubt } = skinReadingSays({ reading: read });
  return {
    ...photoSays(read.box),
    angles: `${answer} ${doubt}`,
    uneven: slope && unevenSays(lightnessTooHigh(read.box.l.value, slope, toSkin)),
    rows: skinReadingRows(read),
    cannot: [...photoCannotSay, ...cannotSay],
  };
}
