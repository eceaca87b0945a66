/** The package carries no types; only what the tests use. */
declare module 'bezier-js' {
  export class Bezier {
    constructor(...coordinates: number[]);
    length(): number;
    get(t: number): { x: number; y: number };
    derivative(t: number): { x: number; y: number };
  }
}
