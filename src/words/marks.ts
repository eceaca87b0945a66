import type { BrowMark, Pose, Posture, Side, SkinState } from '#lib/mapping/marks/markSet.ts';

/** The trade's names for the marks of a brow. */
export const browMarkWords: Readonly<Record<BrowMark, string>> = {
  frontLower: 'front, lower',
  frontTop: 'front, top',
  archTop: 'arch, top',
  archLower: 'arch, lower',
  tail: 'tail',
};

export const sideWords: Readonly<Record<Side, string>> = { right: 'right', left: 'left' };

export const poseWords: Readonly<Record<Pose, string>> = {
  rest: 'at rest, eyes open',
  raised: 'brows raised',
  frown: 'frowning',
  'eyes-closed': 'at rest, eyes closed',
};

export const postureWords: Readonly<Record<Posture, string>> = { sitting: 'sitting', lying: 'lying' };

export const skinWords: Readonly<Record<SkinState, string>> = {
  normal: 'normal',
  numb: 'numb',
  swollen: 'swollen',
};

/** First letter large: the start of a label. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
