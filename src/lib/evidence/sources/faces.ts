import type { Source } from '../source.ts';

const readOn = '2026-11-25';

/** Studies of faces: how unequal brows are, who sees it, how large things are, how well they are measured. */
export const faceSources = {
  'hohman-2014': {
    kind: 'study', authors: 'Hohman MH, Kim SW, Heller ES, Frigerio A, Heaton JT, Hadlock TA', year: 2014,
    title: 'Determining the threshold for asymmetry detection in facial expressions',
    where: 'The Laryngoscope 124:860–865', doi: '10.1002/lary.24331', read: 'abstract', readOn,
  },
  'chu-2011': {
    kind: 'study', authors: 'Chu EA, Farrag TY, Ishii LE, Byrne PJ', year: 2011,
    title: 'Threshold of visual perception of facial asymmetry in a facial paralysis model',
    where: 'Archives of Facial Plastic Surgery 13:14–19', doi: '10.1001/archfacial.2010.101', read: 'abstract', readOn,
  },
  'tiryaki-2007': {
    kind: 'study', authors: 'Tiryaki T, Eroglu Ciloglu NS', year: 2007,
    title: 'Eyebrow asymmetry: definition and symmetrical correction using botulinum toxin A',
    where: 'Aesthetic Surgery Journal 27:513–517', read: 'abstract', readOn,
  },
  'eyelid-brow-2014': {
    kind: 'study', short: 'Lid and brow study 2014', authors: 'KM, AM, SMT and others (full names not in the copy read)', year: 2014,
    title: 'Eyelid and brow asymmetry in patients evaluated for upper lid blepharoplasty',
    where: 'Journal of Otolaryngology – Head & Neck Surgery 43', doi: '10.1186/s40463-014-0036-4', read: 'abstract', readOn,
  },
  'perumal-2018': {
    kind: 'study', authors: 'Perumal B, Meyer DR', year: 2018,
    title: 'Facial asymmetry: brow and ear position',
    where: 'Facial Plastic Surgery 34:230–234', doi: '10.1055/s-0038-1636903', read: 'abstract', readOn,
  },
  'katira-2014': {
    kind: 'study', authors: 'Katira K, Guyuron B', year: 2014,
    title: 'The deviated nose and asymmetric eyebrows: an important trap to avoid',
    where: 'Plastic and Reconstructive Surgery 133:519–523', read: 'abstract', readOn,
  },
  'gultekin-2020': {
    kind: 'study', authors: 'Gultekin G, Koycu A, Buyuklu F, Bahcecitapar M', year: 2020,
    title: 'An overlooked landmark for the crooked nose: eyebrow position',
    where: 'Aesthetic Plastic Surgery', doi: '10.1007/s00266-020-01786-z', read: 'abstract', readOn,
  },
  'matros-2009': {
    kind: 'study', authors: 'Matros E, Garcia JA, Yaremchuk MJ', year: 2009,
    title: 'Changes in eyebrow position and shape with aging',
    where: 'Plastic and Reconstructive Surgery 124:1296–1301', doi: '10.1097/PRS.0b013e3181b455e8', read: 'abstract', readOn,
  },
  'bouhadana-2022': {
    kind: 'review', authors: 'Bouhadana G, Gornitsky J, Saleh E, Oliveira Trabelsi N, Borsuk DE', year: 2022,
    title: 'Expanding the classic facial canons: quantifying intercanthal distance in a diverse patient population',
    where: 'Plastic and Reconstructive Surgery – Global Open, e4268', doi: '10.1097/gox.0000000000004268', read: 'abstract', readOn,
  },
  'dodgson-2004': {
    kind: 'review', authors: 'Dodgson NA', year: 2004,
    title: 'Variation and extrema of human interpupillary distance',
    where: 'Proc. SPIE 5291:36–46', doi: '10.1117/12.529999', read: 'abstract', readOn,
  },
  'jayaratne-2013': {
    kind: 'study', authors: 'Jayaratne YS, Deutsch CK, Zwahlen RA', year: 2013,
    title: 'Normative findings for periocular anthropometric measurements among Chinese young adults in Hong Kong',
    where: 'BioMed Research International 2013:821428', doi: '10.1155/2013/821428', read: 'part', readOn,
  },
  'rufer-2005': {
    kind: 'study', authors: 'Rüfer F, Schröder A, Erb C', year: 2005,
    title: 'White-to-white corneal diameter: normal values in healthy humans obtained with the Orbscan II topography system',
    where: 'Cornea 24:259–261', doi: '10.1097/01.ico.0000148312.01805.53', read: 'abstract', readOn,
  },
  'hashemi-2015': {
    kind: 'study', authors: 'Hashemi H, Khabazkhoob M, Emamian MH, Shariati M, Yekta A, Fotouhi A', year: 2015,
    title: 'White-to-white corneal diameter distribution in an adult population',
    where: 'Journal of Current Ophthalmology 27:21–24', doi: '10.1016/j.joco.2015.09.001', read: 'abstract', readOn,
  },
  'periocular-2019': {
    kind: 'study', authors: 'Guo Y and others (author list not in the copy read)', year: 2019,
    title: 'Reliability of periocular anthropometry: a comparison of direct, 2-dimensional, and 3-dimensional techniques',
    where: 'abstract on a research index', read: 'abstract', readOn,
  },
  'gomes-2019': {
    kind: 'study', authors: 'Gomes CFS, Libdy MR, Normando D', year: 2019,
    title: 'Scan time, reliability and accuracy of craniofacial measurements using a 3D light scanner',
    where: 'Journal of Oral Biology and Craniofacial Research 9:331–335', doi: '10.1016/j.jobcr.2019.07.001', read: 'abstract', readOn,
  },
  'farkas-1980': {
    kind: 'study', short: 'Farkas 1980', authors: 'Farkas LG and others (names and year from memory; the abstract was read)', year: 1980,
    title: 'Is photogrammetry of the face reliable?',
    where: 'Plastic and Reconstructive Surgery 66', read: 'abstract', readOn,
  },
  'frontal-head-position': {
    kind: 'study', short: 'Frontal head position', authors: 'author list and year not in the copy read',
    title: 'Natural head position recording on frontal skull radiographs',
    where: 'abstract on a research index', read: 'abstract', readOn,
  },
  'photographic-system-2009': {
    kind: 'study', short: 'Angle Orthodontist 2009', authors: 'author list not in the copy read', year: 2009,
    title: 'A photographic system for the three-dimensional study of facial soft tissues (title in part)',
    where: 'The Angle Orthodontist 79:1070', read: 'abstract', readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
