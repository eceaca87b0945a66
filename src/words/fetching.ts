/**
 * Said where a part of the site did not come: what it does, and what helps. Browsers remember a script that
 * failed until the page is loaded again, so that is named too.
 */
export function notFetched(what: string): string {
  return `${what} could not be fetched. Check the connection and try again. If that fails, load the page again.`;
}
