export const markFileWords = {
  save: 'Save as a file',
  open: 'Open a file',
  notReady: 'The calculator is still starting. Try again in a moment.',
  saved: 'Saved. The file holds the numbers of this page and nothing else.',
  failed: 'The file could not be read. Nothing on this page was changed.',
} as const;

type Refused = Readonly<{
  reason: 'too-large' | 'not-a-file-of-ours' | 'damaged' | 'too-long' | 'newer-schema' | 'unknown-calculator';
  schema?: number;
  calculator?: string;
}>;

/** Why a file was not opened. Each sentence says that nothing was lost. */
export function markFileRefusal({ reason, schema, calculator }: Refused): string {
  const kept = 'Nothing on this page was changed.';
  switch (reason) {
    case 'too-large':
      return `This file is too large to be one of ours. ${kept}`;
    case 'newer-schema':
      return `This file was saved by a newer version of the site (form ${schema}). Load the page again to get that version. The file is untouched. ${kept}`;
    case 'unknown-calculator':
      return `This file belongs to a calculator that this version does not have: “${calculator}”. ${kept}`;
    case 'damaged':
      return `Part of this file is missing or changed, so it was not opened. ${kept}`;
    case 'too-long':
      return `This file holds more than a calculator of ours can. It was not opened. ${kept}`;
    case 'not-a-file-of-ours':
      return `This is not a file saved by a calculator of this site. ${kept}`;
  }
}

/** A good file of another calculator. */
export function otherCalculator(title: string): string {
  return `This file belongs to “${title}”. Open it there:`;
}
