/** The package carries no types; these are the parts that tests compare with. */
declare module 'jstat' {
  type Distribution = Readonly<{ cdf: (x: number, dof: number) => number; inv: (share: number, dof: number) => number }>;
  const jstat: Readonly<{ studentt: Distribution; chisquare: Distribution }>;
  export default jstat;
}
