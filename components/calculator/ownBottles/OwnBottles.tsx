import { readBottleFile, writeBottleFile } from '#calculators/bottleFile.ts';
import { joinBottles } from '#calculators/joinBottles.ts';
import { mostBytes } from '#calculators/openOurs.ts';
import { Icon } from '#components/site/Icon.tsx';
import { downIcon, undoIcon } from '#components/site/icons.ts';
import { masstone } from '#lib/colour/layers/masstone.ts';
import { type OwnBottle, readyBottle } from '#lib/colour/own/ownBottle.ts';
import { ownSlots, type OwnSlot } from '#lib/colour/own/ownSlots.ts';
import { labToSrgb, srgbToHex } from '#lib/colour/spaces/srgb.ts';
import { labWords } from '#words/mixByDrops.ts';
import { bottleFileRefusal, joinedWords, ownWords, readyWords } from '#words/ownBottles.ts';
import { useState } from 'preact/hooks';
import { handOut } from '../markFiles/handOut.ts';
import { OwnBottleForm } from './OwnBottleForm.tsx';

type Props = Readonly<{
  id: string;
  shelf: readonly OwnBottle[];
  note: string;
  onShelf: (shelf: readonly OwnBottle[]) => void;
  onTaken: (slot: OwnSlot) => void;
}>;

/** One bottle of one's own: its colour when thick, its name, what is known of it. */
function Row({ own, onTake }: Readonly<{ own: OwnBottle; onTake: () => void }>) {
  const ready = readyBottle(own);
  if (!ready.ok) return null;
  const thick = masstone(ready.bottle.shares);
  return (
    <li>
      <svg class="own-swatch" viewBox="0 0 10 10" role="img" aria-label={`In the bottle: ${labWords(thick)}`}>
        <rect width="10" height="10" fill={srgbToHex(labToSrgb(thick))} />
      </svg>
      <div>
        <b>{own.name}</b>
        <p>
          {readyWords(own.content, ready.isTested, ready.calibrated)} In the bottle: {labWords(thick)}.
        </p>
      </div>
      <button class="btn text" type="button" aria-label={`${ownWords.remove}: ${own.name}`} onClick={onTake}>
        {ownWords.remove}
      </button>
    </li>
  );
}

/** The bottles of one's own: the list, a form for one more, and their file. */
export function OwnBottles({ id, shelf, note, onShelf, onTaken }: Props) {
  const [said, setSaid] = useState('');
  const [taken, setTaken] = useState<OwnBottle | undefined>();
  const free = ownSlots.find((slot) => shelf.every((one) => one.slot !== slot));

  const join = (given: readonly OwnBottle[]) => {
    const joined = joinBottles(shelf, given);
    if (joined.ok) onShelf(joined.bottles);
    setSaid(joinedWords(joined));
    setTaken(undefined);
  };
  const open = async (file: File | undefined) => {
    if (!file) return;
    try {
      const read =
        file.size > mostBytes
          ? ({ ok: false, reason: 'too-large' } as const)
          : readBottleFile(await file.text());
      if (read.ok) join(read.bottles);
      else setSaid(bottleFileRefusal(read));
    } catch {
      setSaid(ownWords.failed);
    }
  };

  return (
    <div class="fold-in plain">
      <p>{ownWords.opens}</p>
      {shelf.length === 0 ? (
        <p>{ownWords.none}</p>
      ) : (
        <ul class="own-list">
          {shelf.map((own) => (
            <Row
              key={own.slot}
              own={own}
              onTake={() => {
                onShelf(shelf.filter((one) => one !== own));
                onTaken(own.slot);
                setTaken(own);
                setSaid('');
              }}
            />
          ))}
        </ul>
      )}
      <div role="status">
        {note && <p class="notice">{note}</p>}
        {said && <p class="notice">{said}</p>}
        {taken && (
          <p class="notice">
            “{taken.name}” was taken away.{' '}
            <button class="btn text" type="button" onClick={() => join([taken])}>
              <Icon of={undoIcon} /> {ownWords.bring}
            </button>
          </p>
        )}
      </div>
      {free ? <OwnBottleForm id={id} slot={free} onAdd={(own) => join([own])} /> : <p>{ownWords.full}</p>}
      <div class="btns">
        {shelf.length > 0 && (
          <button
            class="btn line"
            type="button"
            onClick={() => {
              handOut('tautline-bottles.json', writeBottleFile(shelf));
              setSaid(ownWords.saved);
            }}
          >
            <Icon of={downIcon} /> {ownWords.save}
          </button>
        )}
        <label class="btn line file">
          {ownWords.open}
          <input
            class="vh"
            type="file"
            accept=".json,application/json"
            onChange={({ currentTarget }) => {
              void open(currentTarget.files?.[0]);
              currentTarget.value = '';
            }}
          />
        </label>
      </div>
    </div>
  );
}
