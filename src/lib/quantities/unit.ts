/** Units the site prints. `1` is a plain number. */
export type Unit = 'mm' | 'mm²' | '°' | '%' | '1' | 'people' | 'days';
