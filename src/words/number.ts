/** Prints a number with a fixed count of decimals, a true minus sign and no "-0.0". */
export function fixed(value: number, decimals = 1): string {
  const text = value.toFixed(decimals);
  const isZero = Number(text) === 0;
  return (isZero ? text.replace('-', '') : text).replace('-', '−');
}

/** The same with a sign in front of anything that is not zero. */
export function signed(value: number, decimals = 1): string {
  const text = fixed(value, decimals);
  return Number(text.replace('−', '-')) > 0 ? `+${text}` : text;
}

/** A small number without powers of ten: one digit that counts, or "under" where it is below a billionth. */
export function small(value: number): string {
  const size = Math.abs(value);
  if (size === 0) return '0';
  if (size < 1e-9) return 'under 0.000000001';
  const decimals = Math.max(0, -Math.floor(Math.log10(size)));
  return fixed(value, decimals);
}
