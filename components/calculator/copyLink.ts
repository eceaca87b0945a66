/** Copies a link and says so; where the browser does not allow it, gives the link itself. */
export async function copyLink(link: string): Promise<string> {
  try {
    await navigator.clipboard.writeText(link);
    return 'Link copied. It holds your numbers and nothing else.';
  } catch {
    return `This browser does not allow copying. The link is ${link}`;
  }
}
