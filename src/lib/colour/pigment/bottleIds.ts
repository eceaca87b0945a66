/** The bottles of the teaching palette, named by what is in them, light and yellow first. */
export const bottleIds = [
  'yellow-oxide-some-white',
  'mostly-yellow-some-red',
  'orange',
  'red-oxide-some-yellow',
  'light-brown-yellow-heavy',
  'brown-yellow-heavy',
  'brown-even',
  'brown-red-heavy',
  'dark-brown-iron',
  'dark-brown-carbon',
  'black-iron',
  'white',
] as const;
export type BottleId = (typeof bottleIds)[number];
