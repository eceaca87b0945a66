/** Units the site prints. `1` is a plain number. */
export type Unit = 'mm' | 'cm' | 'mm²' | '°' | '%' | '1' | 'people' | 'drops' | 'minutes' | 'hours' | 'days' | 'weeks' | 'months' | 'years' | 'cm⁻¹' | 'g/l' | 'g/mol' | 'mg/cm²' | 'K' | 'lx';
