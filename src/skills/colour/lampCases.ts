import type { bottleIds } from '#lib/colour/pigment/bottleIds.ts';

type Three = readonly [number, number, number];
export type LampMix = Readonly<{ id: (typeof bottleIds)[number]; D65: Three; A: Three }>;

/** Eight bottles, each alone at dose 0.3, at six weeks in five skins: L*, a*, b* in daylight and under tungsten. */
export type LampCase = Readonly<{ skin: Three; mixes: readonly [LampMix, ...LampMix[]] }>;

/** Worked out by the model beforehand, to a tenth, so that a problem needs no model; a test works them out again. */
export const lampCases: readonly [LampCase, ...LampCase[]] = [
  { skin: [72, 8, 16], mixes: [
    { id: 'mostly-yellow-some-red', D65: [58.6, 14.2, 15.4], A: [60.8, 19.1, 18.2] },
    { id: 'orange', D65: [58.5, 15.1, 15.2], A: [60.9, 20.1, 18.2] },
    { id: 'red-oxide-some-yellow', D65: [57.3, 14.7, 13.5], A: [59.5, 19.9, 16.3] },
    { id: 'light-brown-yellow-heavy', D65: [58.2, 11.3, 14.4], A: [60.1, 16, 16.7] },
    { id: 'brown-yellow-heavy', D65: [56.4, 8, 11.7], A: [57.9, 12.3, 13.1] },
    { id: 'brown-even', D65: [56.2, 8.3, 11.4], A: [57.7, 12.6, 12.9] },
    { id: 'brown-red-heavy', D65: [55.9, 8.6, 11], A: [57.4, 12.9, 12.5] },
    { id: 'dark-brown-iron', D65: [55.6, 6.5, 10.4], A: [56.9, 10.6, 11.5] },
  ] },
  { skin: [63, 10, 19], mixes: [
    { id: 'mostly-yellow-some-red', D65: [52.3, 14.6, 16.7], A: [54.7, 19.5, 19.7] },
    { id: 'orange', D65: [52.3, 15.4, 16.6], A: [54.7, 20.4, 19.8] },
    { id: 'red-oxide-some-yellow', D65: [51.2, 15.1, 15.1], A: [53.6, 20.3, 18.1] },
    { id: 'light-brown-yellow-heavy', D65: [52, 12, 15.9], A: [54, 16.8, 18.4] },
    { id: 'brown-yellow-heavy', D65: [50.4, 8.9, 13.4], A: [52, 13.4, 15.1] },
    { id: 'brown-even', D65: [50.2, 9.2, 13.1], A: [51.8, 13.6, 14.9] },
    { id: 'brown-red-heavy', D65: [49.9, 9.4, 12.8], A: [51.6, 13.9, 14.6] },
    { id: 'dark-brown-iron', D65: [49.7, 7.5, 12.2], A: [51.1, 11.8, 13.6] },
  ] },
  { skin: [54, 11, 18], mixes: [
    { id: 'mostly-yellow-some-red', D65: [46.1, 14, 15.4], A: [48.3, 18.7, 18.2] },
    { id: 'orange', D65: [46.1, 14.6, 15.3], A: [48.3, 19.5, 18.3] },
    { id: 'red-oxide-some-yellow', D65: [45.2, 14.3, 14.1], A: [47.4, 19.3, 16.9] },
    { id: 'light-brown-yellow-heavy', D65: [45.8, 11.8, 14.7], A: [47.7, 16.4, 17.1] },
    { id: 'brown-yellow-heavy', D65: [44.4, 9, 12.5], A: [46, 13.4, 14.3] },
    { id: 'brown-even', D65: [44.3, 9.2, 12.3], A: [45.8, 13.6, 14.1] },
    { id: 'brown-red-heavy', D65: [44.1, 9.4, 12.1], A: [45.6, 13.8, 13.8] },
    { id: 'dark-brown-iron', D65: [43.8, 7.6, 11.5], A: [45.2, 11.9, 12.9] },
  ] },
  { skin: [45, 11, 17], mixes: [
    { id: 'mostly-yellow-some-red', D65: [39.8, 12.3, 13.7], A: [41.7, 16.8, 16.3] },
    { id: 'orange', D65: [39.8, 12.8, 13.7], A: [41.8, 17.3, 16.4] },
    { id: 'red-oxide-some-yellow', D65: [39.1, 12.6, 12.8], A: [41.1, 17.2, 15.3] },
    { id: 'light-brown-yellow-heavy', D65: [39.5, 10.6, 13.2], A: [41.3, 14.9, 15.4] },
    { id: 'brown-yellow-heavy', D65: [38.5, 8.3, 11.6], A: [40, 12.3, 13.2] },
    { id: 'brown-even', D65: [38.4, 8.4, 11.4], A: [39.8, 12.5, 13.1] },
    { id: 'brown-red-heavy', D65: [38.2, 8.6, 11.2], A: [39.7, 12.6, 12.9] },
    { id: 'dark-brown-iron', D65: [38, 7.1, 10.7], A: [39.3, 11, 12.1] },
  ] },
  { skin: [36, 10, 14], mixes: [
    { id: 'mostly-yellow-some-red', D65: [33.3, 9.7, 11.2], A: [34.9, 13.8, 13.1] },
    { id: 'orange', D65: [33.3, 10, 11.1], A: [34.9, 14.2, 13.1] },
    { id: 'red-oxide-some-yellow', D65: [32.9, 9.7, 10.7], A: [34.5, 13.9, 12.6] },
    { id: 'light-brown-yellow-heavy', D65: [33.1, 8.6, 10.7], A: [34.6, 12.5, 12.4] },
    { id: 'brown-yellow-heavy', D65: [32.4, 6.8, 9.8], A: [33.7, 10.5, 11.1] },
    { id: 'brown-even', D65: [32.4, 6.8, 9.7], A: [33.6, 10.5, 11] },
    { id: 'brown-red-heavy', D65: [32.3, 6.9, 9.6], A: [33.5, 10.6, 10.9] },
    { id: 'dark-brown-iron', D65: [32.1, 5.9, 9.3], A: [33.2, 9.5, 10.4] },
  ] },
];
