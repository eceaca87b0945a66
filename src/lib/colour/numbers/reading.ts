/** The bare numbers of a skin reading, written here once; their sources stand in facts/skinMeasured.ts and skinReading.ts. */
export const readingValues = {
  /** How far readings of one place repeat, in L*, a* or b*: the upper end of what was measured. */
  repeat: 0.5,
  /**
   * Doubt of a single reading, each way (assumed): places beside one brow differ by more than a reading
   * repeats.
   */
  oneReading: 2,
  /** What touching the skin may have changed, each way (assumed): redness most. */
  touchedL: 2,
  touchedA: 4,
  touchedB: 1,
  /** Below this hue angle a skin is said to lean red, from the other one yellow (editorial). */
  leansRedBelowDeg: 55,
  leansYellowFromDeg: 65,
  /** Doubt a camera leaves after a grey card has set white and brightness, each way (assumed). */
  camera: 3,
  /** What a grey card throws back of the light that falls on it, a share: the usual card. */
  usualCard: 0.18,
  /**
   * A card is grey enough while its strongest channel is at most so many times its weakest, in light
   * (editorial): every skin is beyond it.
   */
  cardTintMost: 1.4,
} as const;
