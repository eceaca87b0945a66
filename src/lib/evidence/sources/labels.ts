import type { Source } from '../source.ts';

const readOn = '2026-11-25';

/** What must stand on a label, and what stood on real ones. */
export const labelSources = {
  'swedish-agency-labelling': {
    kind: 'law',
    short: 'EU entry 75, labelling',
    authors: 'Swedish Medical Products Agency',
    year: 2021,
    title: 'Labelling regulations: entry 75, point 7, of Annex XVII of the REACH Regulation',
    where: 'lakemedelsverket.se, English page',
    address: 'https://lakemedelsverket.se/ChangeLanguage?contentReference=9770&languageId=sv',
    read: 'part',
    readOn,
  },
  'swedish-agency-content': {
    kind: 'law',
    short: 'EU entry 75, content',
    authors: 'Swedish Medical Products Agency',
    year: 2022,
    title: 'Content checks for tattoo ink carried out by companies',
    where: 'lakemedelsverket.se, English page',
    address: 'https://lakemedelsverket.se/ChangeLanguage?contentReference=25945&languageId=sv',
    read: 'part',
    readOn,
  },
  'swedish-agency-control': {
    kind: 'study',
    short: 'Swedish ink control',
    authors: 'Läkemedelsverket',
    title: 'Kontroll av tatueringsfärger för tatuering och permanent makeup',
    where: 'summary, copy at docplayer.se',
    address:
      'http://docplayer.se/10708648-Kontroll-av-tatueringsfarger-for-tatuering-och-permanent-makeup.html',
    read: 'copy',
    readOn,
  },
  'french-health-code': {
    kind: 'law',
    short: 'French health code',
    authors: 'République française',
    title: 'Code de la santé publique, article R. 513-10-5: labelling of tattooing products',
    where: 'English copy, french-business-law.com',
    address:
      'https://french-business-law.com/french-legislation-art/article-r513-10-5-of-the-french-public-health-code',
    read: 'copy',
    readOn,
  },
  'moseman-2024': {
    kind: 'study',
    authors: 'Moseman K, Ahmed A, Ruhren A, Swierk JR',
    year: 2024,
    title: 'What’s in my ink: an analysis of commercial tattoo ink on the US market',
    where: 'Analytical Chemistry; as told in a news article and by the university',
    read: 'copy',
    readOn,
  },
  'fda-recall-2024': {
    kind: 'law',
    short: 'FDA recall, 2024',
    authors: 'US Food and Drug Administration',
    year: 2024,
    title: 'Company announcement: recall of water-based tattoo pigments, named by batch, lot and dates',
    where: 'copy at einpresswire.com',
    read: 'copy',
    readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
