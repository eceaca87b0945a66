/** Names that hold digits and are no numbers: of a formula, a light, a licence. */
const namesWithDigits = ['CIEDE2000', 'D65', 'Apache-2.0'] as const;

/** The digits that a text types itself, names apart: content names its numbers by id. */
export function typedDigits(text: string): readonly string[] {
  return namesWithDigits.reduce((rest, name) => rest.replaceAll(name, ''), text).match(/\d+/g) ?? [];
}
