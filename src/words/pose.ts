import { straightBrow as straight } from '#lib/mapping/pose/modelHead.ts';
import { fixed, signed } from './number.ts';

type AtBrow = Readonly<{ front: number; arch: number; tail: number }>;
type Seen = Readonly<{
  ok: true;
  outwardMm: AtBrow;
  upMm: AtBrow;
  upInPictureMm: AtBrow;
  lengthMm: Readonly<{ right: number; left: number }>;
  archShare: Readonly<{ right: number; left: number }>;
  tailOverFrontMm: number;
}>;
type Result = Seen | Readonly<{ ok: false; reason: string }>;
type State = Readonly<{ nod: number; tilt: number; distance: number; flip: string }>;
type Says = Readonly<{ answer: string; doubt: string }>;

export const poseLabels = {
  turn: 'Turn',
  nod: 'Nod',
  tilt: 'Tilt',
  distance: 'Camera distance',
  flip: 'The picture',
} as const;
export const poseEnds = {
  turn: ['to her right', 'to her left'],
  nod: ['chin down', 'chin up'],
  tilt: ['her right side up', 'her left side up'],
  distance: ['20 cm', '3 m or more'],
} as const;
export const flipWords = { 'as-seen': 'as others see her', mirrored: 'mirrored' } as const;

/** Under this a false difference is not worth a word, mm. */
const littleMm = 0.25;
/** From here on even heights are faked too much to be used, mm. */
const muchMm = 0.5;
const places = ['front', 'arch', 'tail'] as const;

function largest(at: AtBrow): (typeof places)[number] {
  return [...places].sort((a, b) => Math.abs(at[b]) - Math.abs(at[a]))[0] ?? 'tail';
}

function widthWords(at: AtBrow): string {
  const first = largest(at);
  const said = (place: (typeof places)[number]) =>
    `the left ${place} seems ${fixed(Math.abs(at[place]))} mm ${at[place] < 0 ? 'nearer the midline' : 'further out'}`;
  const other = first === 'tail' ? 'front' : 'tail';
  if (Math.abs(at[first]) < littleMm)
    return 'In this picture the two sides seem equally wide. It need not be so in the next: do not judge widths from it.';
  const both =
    Math.abs(at[other]) >= littleMm ? `${said(first)} and ${said(other).replace('seems ', '')}` : said(first);
  return `In this picture ${both}: do not judge widths.`;
}

/** What the figure of pose says. Left is the client’s, whichever way the picture is shown. */
export function poseSays(seen: Result, { nod, tilt, distance, flip }: State): Says {
  if (!seen.ok)
    return { answer: 'This picture cannot be read.', doubt: 'Turn the head back, or move the camera away.' };
  const up = seen.upMm[largest(seen.upMm)];
  const edge = seen.upInPictureMm[largest(seen.upInPictureMm)];
  const lengthMm = (seen.lengthMm.right + seen.lengthMm.left) / 2;
  const doubts = [
    `Heights, read along the face, differ by ${fixed(Math.abs(up))} mm at most${Math.abs(up) >= muchMm ? ': too much to use' : ''}.`,
    Math.abs(tilt) >= 0.5
      ? `Along the picture’s edge the left ${largest(seen.upInPictureMm)} seems ${fixed(Math.abs(edge))} mm ${edge > 0 ? 'higher' : 'lower'}: that is the tilt.`
      : '',
    Math.abs(nod) >= 0.5
      ? `The tail stands ${fixed(Math.abs(seen.tailOverFrontMm))} mm ${seen.tailOverFrontMm < 0 ? 'below' : 'above'} the front; straight, it stands ${fixed(-straight.tailOverFrontMm)} mm below.`
      : '',
    distance < 100
      ? `From ${fixed(distance, 0)} cm the brow looks ${fixed(lengthMm)} mm long, not ${fixed(straight.lengthMm)}.`
      : '',
  ];
  return {
    answer: `This face is exactly symmetric. ${widthWords(seen.outwardMm)}`,
    doubt: [...doubts, flip === 'mirrored' ? 'Her left is on the picture’s left.' : '']
      .filter(Boolean)
      .join(' '),
  };
}

/** What to beware of before a number is read. */
export function poseCaution({ flip }: Pick<State, 'flip'>): string | undefined {
  return flip === 'mirrored'
    ? 'Mirrored, as in a selfie: whoever reads this picture as usual names the wrong side.'
    : undefined;
}

/** One number of a picture: what this pose fakes in it, and whether a picture may be asked for it at all. */
export type PoseRow = Readonly<{
  name: string;
  fakes: string;
  verdict: 'Use' | 'Check first' | 'Refuse';
  why: string;
}>;

/** The table of what may be read. */
export function poseRows(seen: Seen): readonly PoseRow[] {
  const most = (at: AtBrow) => `${signed(at[largest(at)])} mm`;
  const share = (seen.archShare.right + seen.archShare.left) / 2;
  const lengthMm = (seen.lengthMm.right + seen.lengthMm.left) / 2;
  return [
    Math.abs(seen.upMm[largest(seen.upMm)]) < muchMm
      ? {
          name: 'Height, left against right, level from the face',
          fakes: most(seen.upMm),
          verdict: 'Use',
          why: 'at rest, level known',
        }
      : {
          name: 'Height, left against right, level from the face',
          fakes: most(seen.upMm),
          verdict: 'Refuse',
          why: 'turned and near at once',
        },
    {
      name: 'Height, left against right, along the picture’s edge',
      fakes: most(seen.upInPictureMm),
      verdict: 'Refuse',
      why: 'a tilt lies',
    },
    {
      name: 'Distance from the midline, left against right',
      fakes: most(seen.outwardMm),
      verdict: 'Refuse',
      why: 'a turn lies',
    },
    {
      name: 'Tail’s height against the front’s',
      fakes: `${signed(seen.tailOverFrontMm - straight.tailOverFrontMm)} mm`,
      verdict: 'Check first',
      why: 'a nod lies',
    },
    {
      name: 'Length of the brow',
      fakes: `${signed(lengthMm - straight.lengthMm)} mm`,
      verdict: 'Check first',
      why: 'nearness lies; a ruler in the brow’s plane',
    },
    {
      name: 'Arch, share of the length',
      fakes: `${signed(100 * (share - straight.archShare))} %`,
      verdict: 'Check first',
      why: 'nearness lies',
    },
  ];
}
