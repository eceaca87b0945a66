/** The lamps a colour can be looked at under: two daylights, tungsten, one white LED. */
export const lamps = ['D65', 'D50', 'A', 'LED-B3'] as const;
export type Lamp = (typeof lamps)[number];
