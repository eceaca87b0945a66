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
