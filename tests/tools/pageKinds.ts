/** The template a page is made by, from its address. */
export function kindOfPage(address: string): string {
  const [section = '', ...deeper] = address.split('/').filter(Boolean);
  if (deeper.length > 0) return section === 'lessons' && deeper.length === 1 ? 'list' : section;
  if (section === '' || section.includes('.')) return section || 'home';
  return ['lessons', 'calculators', 'practice', 'rules', 'sheets'].includes(section) ? 'list' : 'words';
}
