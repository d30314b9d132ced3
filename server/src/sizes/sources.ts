/**
 * The published sources behind every value, by key. `cite` names the work; addresses are left out, since several
 * carry a trade name. What was read of each is in `read` when it was not the whole.
 */
import type { SourceKey } from './model.ts';

export interface Source {
  /** A few words, as shown beside a finding. */
  readonly short: string;
  readonly cite: string;
  readonly read?: string;
}

export const SOURCES: Readonly<Record<SourceKey, Source>> = {
  'USP29-861': {
    short: 'USP <861>',
    cite: 'USP 29-NF 24, general chapter <861> Sutures-Diameter (2006)',
    read: 'method text only',
  },
  'USP32-nonabs': {
    short: 'USP, Nonabsorbable Surgical Suture',
    cite: 'USP 32-NF 27, monograph Nonabsorbable Surgical Suture (2009)',
    read: 'opening; classes I to III',
  },
  'PhEur-table': {
    short: 'European Pharmacopoeia metric and USP table',
    cite: 'European Pharmacopoeia metric and USP comparison table, as reproduced by a supplier (two editions)',
  },
  JP2015: {
    short: 'Japanese suture standard 2015',
    cite: 'Japan, standard for nonabsorbable sutures (2015), as reproduced by a supplier',
    read: 'rows 12-0 to 5',
  },
  JP1999: {
    short: 'Japanese suture notification 1999',
    cite: 'Japan, notification 393 (1999), plastic nonabsorbable sutures, as reproduced by a supplier',
  },
  JIST4102: {
    short: 'JIS T 4102',
    cite: 'JIS T 4102:1992 Surgical sutures, catgut',
    read: 'scope and types',
  },
  dewiki: {
    short: 'German Wikipedia, suture sizes',
    cite: 'German Wikipedia, article on suture thread sizes (contains errors)',
  },
  thieme: {
    short: 'Learning module on needle and thread',
    cite: 'Medical learning module on needle and thread (German)',
    read: 'first three rows of its table',
  },
  uspchart: {
    short: 'USP suture size chart',
    cite: 'Excerpt of a USP suture size chart in a question-and-answer page (collagen column)',
  },
  catgutrange: {
    short: 'Article on catgut sutures',
    cite: 'Article on catgut sutures: USP 6-0 (metric 1) to USP 3 (metric 7)',
  },
  jpblog: {
    short: 'Physician teaching page, USP sizes',
    cite: 'Physician teaching page, USP sizes and diameter ranges, 4-0 to 1-0 (2016)',
  },
  jpvet: {
    short: 'Veterinary note on absorbable sutures',
    cite: 'Veterinary note comparing catgut and synthetic absorbable sutures',
  },
  chu: {
    short: 'Encyclopedia, suture classification',
    cite: 'Encyclopedia excerpt on suture classification, 1997 (USP and EP; ePTFE sizing)',
  },
  BOS: {
    short: 'Book of Style for Medical Transcription',
    cite: 'Book of Style for Medical Transcription, 3rd ed., p. 251',
    read: 'as quoted',
  },
  wcvm: {
    short: 'Veterinary surgery course',
    cite: 'Veterinary surgery course, laboratory notes on suture size',
  },
  vso: { short: 'Veterinary surgery teaching page', cite: 'Veterinary surgery teaching page, suture size' },
  pfisterer: {
    short: 'Am J Vet Res 2025',
    cite: 'Wire gauge is not a reliable indicator of the diameter of orthopedic wire. Am J Vet Res 2025, doi:10.2460/ajvr.25.01.0007',
    read: 'abstract',
  },
  nomchart: {
    short: 'Nominal needle gauge chart',
    cite: 'Needle gauge comparison chart (English Wikipedia and a mirror)',
    read: '7 to 31 G whole',
  },
  irblog: {
    short: 'Radiology teaching page',
    cite: 'Radiology teaching page, measurements in interventional radiology (2015)',
  },
  catspot: { short: 'Catalogue values', cite: 'Catalogue values quoted for 24, 25 and 26 G' },
  tpro: { short: 'Trauma teaching page', cite: 'Trauma teaching page: 7 G = 4.57 mm, 34 G = 0.18 mm' },
  'ISO9626-scope': {
    short: 'ISO 9626',
    cite: 'ISO 9626:2016, scope: 3.4 mm (10 G) to 0.18 mm (34 G)',
    read: 'scope',
  },
  GBT18457: {
    short: 'GB/T 18457-2015',
    cite: 'GB/T 18457-2015 (modified ISO 9626:1991 + Amd 1)',
    read: 'foreword',
  },
  ahn: {
    short: 'Anesth Analg 2002;95:1125',
    cite: 'The "gauge" system for the medical use. Anesth Analg 2002;95:1125, doi:10.1213/00000539-200210000-00076',
  },
  JPneedle: {
    short: 'Japanese notice on colour codes 2006',
    cite: 'Japan, notice of October 2006 on notification 112 of 2005 (needle and catheter colour codes)',
  },
  jawiki: {
    short: 'Japanese Wikipedia, syringes',
    cite: 'Japanese Wikipedia, article on syringes, needle colour table',
  },
  jpnurse: {
    short: 'Japanese nursing page',
    cite: 'Japanese nursing page, needle size and colour, 14 to 30 G',
  },
  de6009: {
    short: 'German page citing EN ISO 6009',
    cite: 'German supplier page citing EN ISO 6009 and EN ISO 9626, 14 to 29 G',
  },
  hilbert: {
    short: 'Notfallmedizin up2date 2015;10:102',
    cite: 'Der periphervenöse Zugang. Notfallmedizin up2date 2015;10:102-106, Table 1, doi:10.1055/s-0033-1358156',
  },
  ivcol: { short: 'Summary of IV cannula colours', cite: 'Summary of IV cannula colours' },
  ivcolde: {
    short: 'German page citing ISO 10555-5',
    cite: 'German emergency-medicine page citing ISO 10555-5, colours and flows',
  },
  ivflow: { short: 'IV catheter chart', cite: 'IV catheter chart, outer diameter and flow' },
  'ISO6009-92': {
    short: 'ISO 6009:1992',
    cite: 'ISO 6009:1992 (identical IS 16004:2013)',
    read: 'scope and introduction',
  },
  'ISO6009-16': { short: 'ISO 6009:2016', cite: 'ISO 6009:2016', read: 'scope and overview' },
  'ISO10555-5': { short: 'ISO 10555-5', cite: 'ISO 10555-5:2013', read: 'contents and foreword' },
  BWG1: {
    short: 'Building Construction 3',
    cite: 'Mechanical manipulation, quoted in Building Construction 3',
  },
  BWG2: {
    short: 'Dictionary of Units of Measurement',
    cite: 'How Many? A Dictionary of Units of Measurement',
  },
  BWG3: { short: 'Reference page on wire sizes', cite: 'Reference page on wire sizes' },
  BWG4: { short: 'Engineering reference page', cite: 'Engineering reference page, BWG wire gauge' },
  GNU: {
    short: 'GNU Units',
    cite: 'GNU Units 2.22 definitions (frenchcathetersize, wiregauge, brwiregauge)',
  },
  UCUM: { short: 'UCUM', cite: 'UCUM essence 2.2 (2024-06-17), unit [Ch]: 1 mm/3' },
  ISO20696: {
    short: 'ISO 20696:2018',
    cite: 'ISO 20696:2018 Sterile urethral catheters for single use, 5.5.2',
  },
  DICOM3510: { short: 'DICOM CID 3510 Catheter Size Unit', cite: 'DICOM CID 3510 Catheter Size Unit' },
  jfbc: { short: 'English Wikipedia, Charrière', cite: 'English Wikipedia, article on Charrière' },
  thoracic: {
    short: 'Textbook chapter on catheter materials',
    cite: 'Textbook chapter on catheter materials: gauge, French and inch conventions',
    read: 'opening',
  },
  radkey: {
    short: 'Textbook chapter on needles and guidewires',
    cite: 'Textbook chapter: needles, guidewires, catheters and stents',
    read: 'opening',
  },
  learnir: {
    short: 'Procedure guide on wires and sheaths',
    cite: 'Procedure guide: wires, catheters, sheaths',
    read: 'opening',
  },
  northcutt: {
    short: 'Interventional radiology primer',
    cite: 'Wires, catheters, and more: a primer for residents entering interventional radiology (2013 education exhibit)',
    read: 'opening',
  },
  artline: {
    short: 'World J Crit Care Med 2025;14:109164',
    cite: 'World J Crit Care Med 2025;14(4):109164, Tables 1 and 2 (arterial catheterisation)',
  },
  mahmood: {
    short: 'Review of chest tubes',
    cite: 'Straightening out chest tubes (review)',
    read: 'key points',
  },
  mehra: {
    short: 'Lung India 2020;37:198',
    cite: 'Lung India 2020;37:198-203 (small-bore and large-bore chest tubes)',
    read: 'abstract',
  },
  bauman: {
    short: 'World J Surg 2021;45:880',
    cite: 'World J Surg 2021;45:880-886 (14 Fr pigtail and 28-32 Fr chest tubes)',
    read: 'abstract',
  },
  chest2: { short: 'Question page on chest tubes', cite: 'Question page on chest tubes' },
  foley: {
    short: 'Urinary catheter sizes and colours',
    cite: 'Nursing and supplier pages on urinary catheter sizes and colours',
  },
  immunisation: {
    short: 'Best practice guidelines for immunization',
    cite: 'General best practice guidelines for immunization; handbook tables of needle size for vaccines',
  },
  ng: {
    short: 'Nursing articles on nasogastric tube size',
    cite: 'Nursing articles on nasogastric tube size',
  },
  gupta: {
    short: 'Korean J Anesthesiol 2019;72',
    cite: 'Significance of the outer diameter of an endotracheal tube. Korean J Anesthesiol 2019;72(1), doi:10.4097/kja.d.18.00056',
  },
  ett: {
    short: 'Airway teaching pages',
    cite: 'Airway teaching pages: tube size is the inner diameter in mm',
  },
  suctionrule: {
    short: 'Algorithm for suction catheters',
    cite: 'Medical algorithm: suction catheter for an endotracheal tube',
  },
  lb1: {
    short: 'Teaching pages on large-bore IV access',
    cite: 'Two pages on large-bore IV access: 14 to 16 G',
  },
  lb2: {
    short: 'Teaching page that counts 18 G as large-bore',
    cite: 'Page on large-bore IV access: 18 G or larger',
  },
  lb3: { short: 'Emergency handbook', cite: 'Emergency handbook: resuscitation needs at least 16 G' },
  mcpherson: {
    short: 'Anesth Analg 2009;108:1198',
    cite: 'Fluid flow through intravenous cannulae in a clinical model. Anesth Analg 2009;108:1198-1202, doi:10.1213/ane.0b013e3181966451',
    read: 'abstract',
  },
  esa: {
    short: 'Eur J Anaesthesiol 2007',
    cite: 'Conference abstract, Eur J Anaesthesiol 2007: flow = 113.3 x ID^2.21',
  },
  sinai: {
    short: 'Emergency-medicine teaching page',
    cite: 'Emergency-medicine teaching page: central lines and flow rates',
  },
  mrotte: { short: 'Suture teaching page', cite: 'Suture teaching page' },
  wikichart: { short: 'Suture materials comparison chart', cite: 'Suture materials comparison chart (wiki)' },
  medscapeN: {
    short: 'Reference article on nonabsorbable sutures',
    cite: 'Reference article on nonabsorbable synthetic sutures (2020)',
    read: 'opening',
  },
  abdkey: {
    short: 'Textbook chapter on sutures',
    cite: 'Textbook chapter: sutures and grafts in pelvic reconstructive surgery',
    read: 'excerpt',
  },
  naleway: {
    short: 'J Biomed Mater Res B 2015;103:735',
    cite: 'Mechanical properties of suture materials. J Biomed Mater Res B 2015;103:735-742, doi:10.1002/jbm.b.33171',
    read: 'abstract',
  },
  alicards: {
    short: 'Reference card on sutures',
    cite: 'Emergency-medicine reference card on suture materials (open repository)',
  },
  oneskill: {
    short: 'Suture-selection reference',
    cite: 'Suture-selection reference in an open teaching repository (contains an error)',
    read: 'opening',
  },
  jportho: {
    short: 'Japanese orthopaedic teaching page',
    cite: 'Japanese orthopaedic teaching page, suture materials',
  },
  pgavet: {
    short: 'Veterinary listing, polyglycolic acid',
    cite: 'Veterinary listing for polyglycolic acid suture',
  },
  '510kU': { short: 'FDA 510(k) K234079', cite: 'FDA 510(k) summary K234079' },
  '510kM': { short: 'FDA 510(k) K181774', cite: 'FDA 510(k) summary K181774' },
  medscapeP: {
    short: 'Reference article on needle points',
    cite: 'Reference article on types of needle points (2020)',
    read: 'opening',
  },
  residentnet: {
    short: 'University teaching page on needle tips',
    cite: 'University teaching page on needle tips',
  },
  surgimedic: {
    short: 'Teaching page on needle types',
    cite: 'Supplier teaching page, needle types',
    read: 'opening',
  },
  TJC: {
    short: '"Do Not Use" list of abbreviations',
    cite: 'Official "Do Not Use" list of abbreviations, footnote on trailing zeros',
  },
  hegar: {
    short: 'A System of Operative Surgery',
    cite: 'A System of Operative Surgery, vol. 4: Hegar numbers are mm of diameter',
  },
  kwire: {
    short: 'Radiology reference article on K-wires',
    cite: 'Radiology reference article on K-wires: wire 0.9-1.5 mm, pin 1.5-6.5 mm',
  },
};

/** The source of a key, or undefined when there is none. */
export const sourceByKey = (key: SourceKey): Source | undefined =>
  Object.hasOwn(SOURCES, key) ? SOURCES[key] : undefined;
