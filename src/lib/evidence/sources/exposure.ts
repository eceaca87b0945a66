import type { Source } from '../source.ts';

const readOn = '2026-11-30';

/** First aid after contact with a thing: numbing cream, an eye, a needle, blood. */
export const exposureSources = {
  'fda-numbing-2007': {
    kind: 'guidance', short: 'FDA advisory, 2007', authors: 'US Food and Drug Administration', place: 'United States', year: 2007, title: 'Hazards of using skin numbing products for cosmetic procedures',
    where: 'copy at spiritindia.com', address: 'https://spiritindia.com/cosmetic-surgery-hazards-of-using-skin-numbing-products-for-cosmetic-procedures/', read: 'copy', readOn,
  },
  'fda-benzocaine-2011': {
    kind: 'guidance', short: 'FDA on benzocaine, 2011', authors: 'US Food and Drug Administration', place: 'United States', year: 2011, title: 'Drug safety communication: benzocaine sprays',
    where: 'copy at biospace.com', address: 'https://www.biospace.com/fda-continues-to-receive-reports-of-a-rare-but-potentially-fatal-adverse-effect-with-benzocaine-sprays', read: 'copy', readOn,
  },
  'lignocaine-overdose': {
    kind: 'label', short: 'Lignocaine injection, label', authors: 'Monthly Index of Medical Specialities', place: 'Malaysia', title: 'Lignocaine injection: overdosage',
    where: 'copy of the monograph', read: 'copy', readOn,
  },
  'numbing-script-2019': {
    kind: 'label', short: 'Numbing cream script, 2019', authors: 'Not named', place: 'United States', year: 2019, title: 'Lidocaine and prilocaine cream: what a patient is told',
    where: 'text dated 17 June 2019', read: 'copy', readOn,
  },
  'cdc-seizures': {
    kind: 'guidance', short: 'CDC, seizures', authors: 'Centers for Disease Control and Prevention', place: 'United States', title: 'Get Seizure Smart: do I call',
    where: 'cdc.gov', address: 'https://www.cdc.gov/epilepsy/communications/features/firstaid.htm', read: 'part', readOn,
  },
  'cdc-seizures-2012': {
    kind: 'guidance', short: 'CDC, seizures, 2012', authors: 'Centers for Disease Control and Prevention', place: 'United States', year: 2012, title: 'First aid for seizures',
    where: 'archived page, 7 October 2012', address: 'https://webarchive.library.unt.edu/web/20121007032603/http://www.cdc.gov/epilepsy/basics/first_aid.htm', read: 'copy', readOn,
  },
  'st-john-eye': {
    kind: 'guidance', short: 'St John Ambulance, eye', authors: 'St John Ambulance', place: 'United Kingdom', title: 'Chemical burns to the eye: what to do',
    where: 'sja.org.uk', address: 'https://www.sja.org.uk/get-advice/first-aid-advice/effects-of-heat-and-cold/eye-injuries---chemical-burns/', read: 'whole', readOn,
  },
  'nz-poisons-eye': {
    kind: 'guidance', short: 'NZ poisons centre, eye', authors: 'National Poisons Centre', place: 'New Zealand', title: 'How to flush an eye',
    where: 'poison.co.nz', address: 'https://poison.co.nz/articles-and-info/first-aid/view/how-to-flush-an-eye', read: 'whole', readOn,
  },
  'healthinfo-eye-2022': {
    kind: 'guidance', short: 'HealthInfo, eye, 2022', authors: 'HealthInfo Canterbury', place: 'New Zealand', year: 2022, title: 'Chemicals in the eye',
    where: 'healthinfo.org.nz, December 2022', address: 'https://www.healthinfo.org.nz/chemicals-in-eyes.htm', read: 'whole', readOn,
  },
  'nhs-eye-2018': {
    kind: 'guidance', short: 'NHS, eye, 2018', authors: 'NHS', place: 'United Kingdom', year: 2018, title: 'Eye injuries: flushing your eye',
    where: 'copy at zana.com, 21 December 2018', address: 'https://zana.com/a/eye-injuries-flushing-eye.6462?lang=de', read: 'copy', readOn,
  },
  'royal-free-cream': {
    kind: 'guidance', short: 'Royal Free London, cream', authors: 'Royal Free London NHS Foundation Trust', place: 'United Kingdom', title: 'About lidocaine and prilocaine cream: micropigmentation',
    where: 'royalfree.nhs.uk', address: 'https://royalfree.nhs.uk/patients-and-visitors/patient-information-leaflets/about-lidocaine-and-prilocaine-cream-micropigmentation', read: 'part', readOn,
  },
  'chlorhexidine-1989': {
    kind: 'study', short: 'JAMA letter, 1989', authors: 'Authors not named on the page read', place: 'United States', year: 1989, title: 'Corneal damage due to eye contact with chlorhexidine gluconate',
    where: 'JAMA 261:557–558, first lines', address: 'https://jamanetwork.com/journals/jama/article-abstract/376080', read: 'abstract', readOn,
  },
  'numbing-eye-1999': {
    kind: 'study', short: 'Letter on a numbed eye, 1999', authors: 'Authors not named on the page read', place: 'United States', year: 1999, title: 'Eye injury by a lidocaine and prilocaine cream',
    where: 'Archives of Dermatology 135:855–856, first page', address: 'http://jamanetwork.com/journals/jamadermatology/article-abstract/477907', read: 'abstract', readOn,
  },
  'hse-exposure': {
    kind: 'guidance', short: 'UK safety executive, exposure', authors: 'Health and Safety Executive', place: 'United Kingdom', title: 'How to deal with an exposure incident',
    where: 'hse.gov.uk', address: 'https://www.hse.gov.uk/biosafety/blood-borne-viruses/how-deal-exposure-incident.htm', read: 'part', readOn,
  },
  'cardiff-sharps': {
    kind: 'guidance', short: 'Cardiff and Vale NHS', authors: 'Cardiff and Vale University Health Board', place: 'United Kingdom', title: 'Sharps injury advice',
    where: 'cavuhb.nhs.wales', address: 'https://cavuhb.nhs.wales/staff-information/your-health-and-wellbeing/people-health-and-wellbeing-service/occupational-health-service/sharps-injury-advice', read: 'part', readOn,
  },
  'glasgow-sharps': {
    kind: 'guidance', short: 'Greater Glasgow NHS', authors: 'NHS Greater Glasgow and Clyde', place: 'United Kingdom', title: 'Needlestick injuries: initial action plan',
    where: 'clinicalguidelines.scot.nhs.uk', address: 'https://clinicalguidelines.scot.nhs.uk/ggc-paediatric-guidelines/ggc-paediatric-guidelines/emergency-medicine/needlestick-injuries-and-exposure-to-blood-and-high-risk-body-fluids-initial-action-plan', read: 'part', readOn,
  },
  'scotland-sharps': {
    kind: 'guidance', short: 'Scottish needlestick procedure', authors: 'NHS Scotland, Right Decision Service', place: 'United Kingdom', title: 'Post-exposure prophylaxis for HIV',
    where: 'test copy of the page', address: 'https://rds.staging.tactuum.com/infectious-diseases/needlesticks-peppepse/needlestick-injury/needlestick-injury-management-procedure/post-exposure-prophylaxis-pep-for-hiv', read: 'copy', readOn,
  },
  'who-blood-2010': {
    kind: 'guidance', short: 'WHO, drawing blood, 2010', authors: 'World Health Organization', place: 'international', year: 2010, title: 'Guidelines on drawing blood, annex on exposure',
    where: 'copy of the page at NCBI Bookshelf', read: 'copy', readOn,
  },
  'who-hiv-2024': {
    kind: 'guidance', short: 'WHO, HIV, 2024', authors: 'World Health Organization', place: 'international', year: 2024, title: 'Guidelines for HIV post-exposure prophylaxis, overview',
    where: 'who.int', address: 'https://www.who.int/publications/i/item/9789240095137', read: 'part', readOn,
  },
  'cdc-hepatitis-2006': {
    kind: 'guidance', short: 'CDC, hepatitis B, 2006', authors: 'Centers for Disease Control and Prevention', place: 'United States', year: 2006, title: 'Postexposure prophylaxis to prevent hepatitis B virus infection',
    where: 'MMWR 55(RR-16), appendix B', address: 'https://cdc.gov/MMWR/preview/mmwrhtml/rr5516a3.htm', read: 'part', readOn,
  },
  'ashm-source': {
    kind: 'guidance', short: 'Australian HIV guideline', authors: 'Australasian Society for HIV, Viral Hepatitis and Sexual Health Medicine', place: 'Australia', title: 'Post-exposure prophylaxis: HIV status of the source',
    where: 'pep.guidelines.org.au', address: 'https://pep.guidelines.org.au/index.php/assessment-of-the-risk-of-hiv-transmission/what-is-the-hiv-status-of-the-source-individual', read: 'part', readOn,
  },
  'usphs-squeezing-2011': {
    kind: 'guidance', short: 'US health service, squeezing', authors: 'US Public Health Service', place: 'United States', year: 2011, title: 'No evidence for squeezing',
    where: 'as a journal for hospitals answers, 24 May 2011', address: 'https://www.hcpro.com/SAF-266477-3487/QA-Squeezing-out-blood-after-a-needlestick.html', read: 'copy', readOn,
  },
  'niosh-2008': {
    kind: 'guidance', short: 'NIOSH 2008', authors: 'National Institute for Occupational Safety and Health', place: 'United States', year: 2008, title: 'Bloodborne pathogens: what should you do if you’re exposed',
    where: 'publication 2008-116, copy at scribd.com', address: 'https://scribd.com/document/664973382/bloodborne-pathogens', read: 'copy', readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
