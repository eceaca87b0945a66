/**
 * The library's version, printed on sheets and written into files. A test holds it equal to the package's.
 */
export const libraryVersion = '0.1.0';
