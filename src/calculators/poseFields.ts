import { choiceField, numberField } from './fields.ts';

/** Whether the picture shows the client as others see her, or as a mirror does. */
export type Flip = 'as-seen' | 'mirrored';
export type PoseState = Readonly<{ turn: number; nod: number; tilt: number; distance: number; flip: Flip }>;

/**
 * From here on the camera counts as far, cm: the brow then looks less than a hundredth shorter than it is.
 */
export const countsAsFarCm = 300;

const angle = { unit: '°', lo: -20, hi: 20, step: 0.5, decimals: 1 } as const;

/** The inputs alone: a page shows and moves them before the sum is fetched. */
export const poseFields = {
  turn: numberField('turn', 3, angle),
  nod: numberField('nod', 0, angle),
  tilt: numberField('tilt', 0, angle),
  distance: numberField('distance', countsAsFarCm, {
    unit: 'cm',
    lo: 20,
    hi: countsAsFarCm,
    step: 5,
    decimals: 0,
  }),
  flip: choiceField<Flip>('flip', 'as-seen', ['as-seen', 'mirrored']),
} as const;
