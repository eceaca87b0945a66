/** The few names of the test-only oracle that are used; it carries no types. */
declare module 'culori' {
  type Colour = Readonly<{ mode: string }> & Readonly<Record<string, number | string>>;
  export function differenceCiede2000(): (one: Colour, other: Colour) => number;
  export function converter(mode: 'rgb'): (colour: Colour) => Readonly<{ r: number; g: number; b: number }>;
}
