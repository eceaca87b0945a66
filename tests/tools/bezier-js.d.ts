/** The package carries no types; only what the tests use. */
declare module 'bezier-js' {
  type Point = { x: number; y: number };
  export class Bezier {
    constructor(...coordinates: number[]);
    length(): number;
    get(t: number): Point;
    derivative(t: number): Point;
    split(from: number, to: number): Readonly<{ points: readonly Point[] }>;
    normal(t: number): Point;
    intersects(line: Readonly<{ p1: Point; p2: Point }>): number[];
    bbox(): Readonly<Record<'x' | 'y', Readonly<{ min: number; max: number }>>>;
  }
}
