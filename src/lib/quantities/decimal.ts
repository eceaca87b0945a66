/** Why a text was not read as one number. `ambiguous`: it can be read in two ways, so the page asks. */
export type DecimalReason = 'empty' | 'ambiguous' | 'other-unit' | 'too-long' | 'not-a-number';
export type ReadDecimal = Readonly<{ ok: true; value: number } | { ok: false; reason: DecimalReason }>;

const minusSigns = /^[-\u2010-\u2015\u2212\uFE63\uFF0D]/;
const spaces = /[\s\u00A0\u2007\u2009\u202F]+/g;
const longestText = 40;
const mostDigits = 12;

/** Arabic-Indic and Persian digits are typed on the phones of some readers. */
function asciiDigits(text: string): string {
  return text
    .replace(/[\u0660-\u0669\u06F0-\u06F9]/g, (digit) => String(digit.charCodeAt(0) & 15))
    .replace(/\u066B/g, ',');
}

/**
 * Reads one decimal number as people type it: "31.5", "31,5", "−2", "31,5 mm" when `unit` is "mm".
 * "1,234" and texts with both separators are refused as `ambiguous`: a thousand or a bit more than one?
 * Never throws, never gives NaN; at most 12 digits, so every accepted number is held exactly enough.
 */
export function readDecimal(text: string, unit?: string): ReadDecimal {
  const trimmed = text.trim();
  if (trimmed === '') return { ok: false, reason: 'empty' };
  if (trimmed.length > longestText) return { ok: false, reason: 'too-long' };
  const typed = asciiDigits(trimmed).replace(spaces, ' ');

  const isNegative = minusSigns.test(typed);
  const unsigned = typed.replace(minusSigns, '').replace(/^\+/, '').trim();
  const [, digits = '', suffix = ''] = /^([\d., ]*)(.*)$/u.exec(unsigned) ?? [];
  const number = digits.trim();
  if (!/\d/.test(number)) return { ok: false, reason: 'not-a-number' };
  if (suffix !== '' && suffix !== unit) {
    return { ok: false, reason: /^(mm|cm|m|µm|in|"|%|°)$/u.test(suffix) ? 'other-unit' : 'not-a-number' };
  }

  const plain = /^\d{1,3}( \d{3})+(?!\d)/.test(number) ? number.replaceAll(' ', '') : number;
  if (plain.includes(' ')) return { ok: false, reason: 'not-a-number' };
  const separators = plain.replace(/\d/g, '');
  if (separators.length > 1 || /^[1-9]\d{0,2},\d{3}$/.test(plain)) return { ok: false, reason: 'ambiguous' };
  if (plain.length - separators.length > mostDigits) return { ok: false, reason: 'too-long' };

  const size = Number(plain.replace(',', '.'));
  return { ok: true, value: isNegative && size !== 0 ? -size : size };
}
