/** `astro check` reads the components themselves; plain `tsc` only has to know that they are components. */
declare module '*.astro' {
  const Component: import('astro/runtime/server/index.js').AstroComponentFactory;
  export default Component;
}
