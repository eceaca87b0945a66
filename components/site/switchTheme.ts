/** Turns light to dark or back, and keeps the choice where storage allows it. */
export function switchTheme(): void {
  const root = document.documentElement;
  const isDark = root.dataset['theme']
    ? root.dataset['theme'] === 'dark'
    : matchMedia('(prefers-color-scheme: dark)').matches;
  root.dataset['theme'] = isDark ? 'light' : 'dark';
  try {
    localStorage.setItem('tautline-theme', root.dataset['theme']);
  } catch {
    // Storage is denied: the choice holds for this page only.
  }
}
