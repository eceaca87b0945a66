import type { Source } from '../source.ts';

const readOn = '2026-11-30';

/** First aid for a person: fainting, allergy, waking and breathing. */
export const firstAidSources = {
  'st-john-fainting': {
    kind: 'guidance', short: 'St John Ambulance, fainting', authors: 'St John Ambulance', place: 'United Kingdom', title: 'Fainting: what to do',
    where: 'sja.org.uk', address: 'https://www.sja.org.uk/get-advice/first-aid-advice/unresponsive-casualty/fainting', read: 'whole', readOn,
  },
  'st-john-column': {
    kind: 'guidance', short: 'St John Ambulance, column', authors: 'St John Ambulance', place: 'United Kingdom', title: 'First aid focus: helping someone who has fainted',
    where: 'column in a local newspaper, ledburyreporter.co.uk', address: 'http://www.ledburyreporter.co.uk/news/ledbury/14632983.Hereford_Times_first_aid_focus__Helping_someone_who_has_fainted/', read: 'copy', readOn,
  },
  'nhs-wales-fainting': {
    kind: 'guidance', short: 'NHS 111 Wales, fainting', authors: 'NHS 111 Wales', place: 'United Kingdom', title: 'Fainting: if you see someone faint',
    where: '111.wales.nhs.uk, to the middle of its list of reasons to call', address: 'https://111.wales.nhs.uk/encyclopaedia/f/article/fainting', read: 'part', readOn,
  },
  'nhs-faint-retold': {
    kind: 'guidance', short: 'NHS, fainting, retold', authors: 'NHS', place: 'United Kingdom', title: 'Fainting: call if',
    where: 'as a news site retells it, fugentimes.news', address: 'https://fugentimes.news/?p=26493', read: 'copy', readOn,
  },
  'nhs-pregnant-fainting': {
    kind: 'guidance', short: 'NHS, fainting in pregnancy', authors: 'NHS Healthier Together', place: 'United Kingdom', title: 'Fainting under 20 weeks',
    where: 'what0-18.nhs.uk', address: 'https://www.what0-18.nhs.uk/pregnant-women/concerns-during-pregnancy/under-20-weeks/fainting-under-20-weeks', read: 'part', readOn,
  },
  'heart-red-cross-2019': {
    kind: 'guidance', short: 'American Heart and Red Cross', authors: 'American Heart Association and American Red Cross', place: 'United States', year: 2019, title: 'Focused update for first aid: presyncope',
    where: 'Circulation 140:e931; recommendations as a guideline register prints them', address: 'https://www.guidelinecentral.com/guideline/14340/', read: 'copy', readOn,
  },
  'rcuk-2021': {
    kind: 'guidance', short: 'Resuscitation Council UK 2021', authors: 'Resuscitation Council UK', place: 'United Kingdom', year: 2021, title: 'Adult basic life support: key points',
    where: 'resus.org.uk', address: 'https://resus.org.uk/library/2015-resuscitation-guidelines/adult-basic-life-support-and-automated-external', read: 'part', readOn,
  },
  'rcuk-2025': {
    kind: 'guidance', short: 'Resuscitation Council UK 2025', authors: 'Resuscitation Council UK', place: 'United Kingdom', year: 2025, title: 'Adult basic life support',
    where: 'as a trainer’s page quotes it, aid-training.co.uk', address: 'https://aid-training.co.uk/?p=2287', read: 'copy', readOn,
  },
  'ascia-2021': {
    kind: 'guidance', short: 'ASCIA 2021', authors: 'Australasian Society of Clinical Immunology and Allergy', place: 'Australia and New Zealand', year: 2021, title: 'First aid plan for anaphylaxis',
    where: 'allergy.org.au', address: 'https://allergy.org.au/hp/anaphylaxis/first-aid-for-anaphylaxis/', read: 'part', readOn,
  },
  'ascia-2023': {
    kind: 'guidance', short: 'ASCIA 2023', authors: 'Australasian Society of Clinical Immunology and Allergy', place: 'Australia and New Zealand', year: 2023, title: 'First aid plan for anaphylaxis, pictorial',
    where: 'allergy.org.au', address: 'https://allergy.org.au/hp/anaphylaxis/first-aid-for-anaphylaxis-pictorial', read: 'part', readOn,
  },
  'ascia-2024': {
    kind: 'guidance', short: 'ASCIA 2024', authors: 'Australasian Society of Clinical Immunology and Allergy', place: 'Australia and New Zealand', year: 2024, title: 'How to position a person having anaphylaxis',
    where: 'allergy.org.au', address: 'https://allergy.org.au/hp/anaphylaxis/positioning', read: 'whole', readOn,
  },
  'anaphylaxis-uk': {
    kind: 'guidance', short: 'Anaphylaxis UK', authors: 'Anaphylaxis UK', place: 'United Kingdom', title: 'What to do in an emergency',
    where: 'anaphylaxis.org.uk', address: 'https://anaphylaxis.org.uk/what-to-do-in-an-emergency', read: 'part', readOn,
  },
  'mhra-2023': {
    kind: 'guidance', short: 'UK medicines agency 2023', authors: 'Medicines and Healthcare products Regulatory Agency', place: 'United Kingdom', year: 2023, title: 'Adrenaline auto-injectors: advice for an emergency',
    where: 'copy on the site of a doctors’ practice, 17 July 2023', address: 'https://www.bridgewatersurgeries.nhs.uk/2023/07/17/adrenaline-auto-injectors/', read: 'copy', readOn,
  },
  'mhra-2014': {
    kind: 'guidance', short: 'UK medicines agency 2014', authors: 'Medicines and Healthcare products Regulatory Agency', place: 'United Kingdom', year: 2014, title: 'Adrenaline auto-injector: advice for patients (since replaced)',
    where: 'gov.uk, Drug Safety Update', address: 'https://www.gov.uk/drug-safety-update/adrenaline-auto-injector-advice-for-patients', read: 'part', readOn,
  },
  'red-cross-allergy': {
    kind: 'guidance', short: 'American Red Cross, allergy', authors: 'American Red Cross', place: 'United States', title: 'Allergic reaction and anaphylaxis: emergency steps',
    where: 'redcross.org', address: 'https://redcross.org/take-a-class/resources/learn-first-aid/allergic-reaction-anaphylaxis', read: 'part', readOn,
  },
  'ifrc-allergy': {
    kind: 'guidance', short: 'Red Cross and Red Crescent', authors: 'International Federation of Red Cross and Red Crescent Societies', place: 'international', title: 'Allergic reaction and anaphylaxis: good practice',
    where: 'globalfirstaidcentre.org', address: 'https://www.globalfirstaidcentre.org/allergic-reaction-and-anaphylaxis', read: 'part', readOn,
  },
  'immunisation-2018': {
    kind: 'guidance', short: 'Immunisation Handbook 2018', authors: 'Australian Government, Department of Health', place: 'Australia', year: 2018, title: 'Australian Immunisation Handbook, table: vasovagal episode or anaphylaxis',
    where: 'immunisationhandbook.health.gov.au', address: 'https://immunisationhandbook.health.gov.au/resources/handbook-tables/table-clinical-features-that-may-help-differentiate-between-a-vasovagal', read: 'whole', readOn,
  },
} as const satisfies Readonly<Record<string, Source>>;
