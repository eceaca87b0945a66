/** Hands the reader a file. */
export function handOut(name: string, content: string): void {
  const address = URL.createObjectURL(new Blob([content], { type: 'application/json' }));
  Object.assign(document.createElement('a'), { href: address, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
