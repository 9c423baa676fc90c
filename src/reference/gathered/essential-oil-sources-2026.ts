/** Sources of the compositions in essential-oils-2026. */
import type { ReferenceSource } from '../sourced-row.ts';

export const essentialOilSources: readonly ReferenceSource[] = [
  {
    id: 'pmc-lav',
    title: 'Molecules 2022, 27, 3216, Table 2: lavender oil against Ph. Eur. 10 and ISO 3515:2002 (other origins)',
    where: 'pmc.ncbi.nlm.nih.gov/articles/PMC9148000 table 2', read: true,
  },
  {
    id: 'pmc-lvd',
    title: 'Molecules 2022, 27, 2152, Table 6: ISO 3054, 8902, 3515, 4719 normative ranges for lavandin, lavender, spike',
    where: 'pmc.ncbi.nlm.nih.gov/articles/PMC9000678 table 6', read: true,
  },
  {
    id: 'pf-clary',
    title: 'Adams and Yanke, Material review: clary sage oils (Perfumer & Flavorist, Sept 2007): European Pharmacopoeia 5 limits and literature ranges',
    where: 'perfumerflavorist.com article 21858300', read: true,
  },
  {
    id: 'cham-hb', title: 'Retailer page quoting handbook ranges for Roman chamomile', where: 'retailer page',
    read: true, note: 'secondary',
  },
  {
    id: 'cham-sheet', title: 'Supplier data sheet, Roman chamomile oil: CAS 8015-92-7, alternative 84649-86-5',
    where: 'supplier page', read: true,
  },
  {
    id: 'bp-lemon', title: 'Supplier specification, lemon oil BP (GC assay)',
    where: 'supplier page, pharmacopoeia grade', read: true,
  },
  {
    id: 'eu-2022-593', title: 'Regulation (EU) 2022/593, Annex: litsea berry essential oil',
    where: 'Official Journal of the European Union (copy of the text)', read: true,
  },
  {
    id: 'eu-2022-347', title: 'Regulation (EU) 2022/347, Annex: petitgrain bigarade essential oil',
    where: 'Official Journal of the European Union (copy of the text)', read: true,
  },
  {
    id: 'pmc-tto', title: 'Table 1 Composition of tea tree oil, ISO 4730 ranges (2004 edition) and typical',
    where: 'pmc.ncbi.nlm.nih.gov/articles/PMC5516420 table 1', read: true,
  },
  {
    id: 'efsa-clove', title: 'EFSA FEEDAP 2023, clove bud and leaf oils: methyleugenol up to 0.13 %',
    where: 'pmc.ncbi.nlm.nih.gov/articles/PMC10375362', read: true,
  },
  {
    id: 'efsa-nutmeg',
    title: 'EFSA FEEDAP 2023, nutmeg oil: myristicin up to 12 %, safrole 2.30 %, elemicin 0.40 %, methyleugenol 0.33 %',
    where: 'doaj.org/article/0ed00fdf4e5045238fa24c8d45a25246', read: true,
  },
  {
    id: 'cinnamon-page',
    title: 'Retailer page on cinnamon bark and leaf oil (bark: cinnamal 55-75 %, eugenol 5-18 %; leaf: eugenol 70-90 %)',
    where: 'retailer page', read: true, note: 'secondary',
  },
  {
    id: 'clary-lot', title: 'Supplier lot statement: clary sage oil, France, geraniol 2.2 % of the then 26 allergens',
    where: 'supplier page', read: true, note: 'one lot',
  },
  {
    id: 'bergassoc', title: "Producers' association: average 5-MOP content of bergamot oil 0.35 %",
    where: 'association page', read: true,
  },
  {
    id: 'sandal', title: 'Molecules 2021, 26, 2249: commercial sandalwood oils against ISO 3518 (sample P1-P6)',
    where: 'mdpi.com/1420-3049/26/8/2249', read: true,
  },
  {
    id: 'd-2008-42', title: 'Directive 2008/42/EC annex: peroxide value below 10 mmol/L for Abies, Pinus, Picea oils',
    where: 'Official Journal of the European Union (copy of the text)', read: true,
  },
  {
    id: 'canada',
    title: 'Environment Canada 2020 screening assessment: CAS list (geranium 8000-46-2, rose 8007-01-0, lemongrass 8007-02-1, pine 8002-09-3)',
    where: 'canada.ca', read: true,
  },
  {
    id: 'ifra-49', title: 'IFRA Standards, 49th Amendment, machine extract', where: 'table ifra/limits-49',
    read: true,
  },
  {
    id: 'sccs-1681-25', title: 'SCCS/1681/25 tea tree oil, final opinion',
    where: 'health.ec.europa.eu; repositorio.insa.pt', read: true,
  },
  {
    id: 'cosing3',
    title: 'European Commission cosmetic ingredient database, Annex III list as exported December 2025 (last update 8 December 2025): names and CAS numbers of the allergen entries; absence from Annex II and III',
    where: 'European Commission, CosIng, Annexes II and III', read: true,
  },
  {
    id: 'pheur-orange',
    title: 'European Pharmacopoeia 6.2, sweet orange oil: component ranges, as printed in a drug reference',
    where: 'drug reference, entry Sweet Orange Oil', read: true,
    note: 'secondary; geranial is printed "0.03 to 0.02", an evident misprint',
  },
  {
    id: 'pheur-clove',
    title: 'European Pharmacopoeia 6.2, clove oil: eugenol 75.0-88.0 %, as printed in a drug reference',
    where: 'drug reference, entry Clove Oil', read: true, note: 'secondary',
  },
  {
    id: 'hmpc-clove',
    title: 'EMA/HMPC/534946/2010, assessment report on clove and clove oil: eugenol 75-88 %, eugenyl acetate 4-15 %, beta-caryophyllene 5-14 % (after Blaschek et al. 2008)',
    where: 'European Medicines Agency (copy of the text)', read: true,
  },
  {
    id: 'hmpc-bergamot',
    title: 'EMA/HMPC 2012, assessment report on Citrus bergamia aetheroleum: table of main constituents, as adapted by an encyclopaedia of supplements',
    where: 'encyclopaedia page on the constituents of bergamot oil', read: true, note: 'secondary',
  },
  {
    id: 'jeor-bergamot',
    title: 'Kirbaslar et al., J. Essent. Oil Res. 2001, 13, 411: Turkish cold-pressed bergamot oil (limonene 37.2, linalyl acetate 36.3, linalool 7.9, beta-pinene 3.9 %)',
    where: 'abstract, doi 10.1080/10412905.2001.9699710', read: true,
  },
  {
    id: 'surburg-panten',
    title: 'Surburg and Panten, Common Fragrance and Flavor Materials: ranges by gas chromatography for mandarin, lime, Java citronella, basil, rosemary, Virginia cedarwood oils, as quoted on chemical data pages',
    where: 'chemical data pages, by CAS number', read: true, note: 'secondary',
  },
  {
    id: 'lime-hb', title: 'Herbal page quoting handbook figures for cold-pressed lime oil: bergapten 0.17-0.33 %',
    where: 'profile page', read: true, note: 'secondary',
  },
  {
    id: 'usp-lemon', title: 'USP lemon oil: total aldehydes as citral 2.2-3.8 % (California), 3.0-5.5 % (Italian)',
    where: 'copies of USP 28 and USP 2025', read: true,
  },
  {
    id: 'lemongrass-sheet',
    title: 'Supplier data sheet, lemongrass oil: citral 53-83 % (West Indian), 70-85 % (East Indian)',
    where: 'supplier page', read: true, note: 'secondary',
  },
  {
    id: 'merck-lemongrass', title: 'Chemical handbook entry, oil of lemon grass: 75-85 % citral',
    where: 'chemical data page', read: true, note: 'secondary',
  },
  {
    id: 'wiki-citronella', title: 'Encyclopaedia article on citronella oil, Java type: limonene 1-4 %',
    where: 'en.wikipedia.org/wiki/Citronella_oil', read: true, note: 'secondary',
  },
  {
    id: 'jsfa-rose',
    title: 'J. Sci. Food Agric. 1994, 64: fifteen Turkish rose oils, from fresh and from fermented petals (citronellol 24.47-42.97, geraniol 2.11-18.04 %)',
    where: 'abstract, doi 10.1002/jsfa.2740640408', read: true,
  },
  {
    id: 'ffj-geranium',
    title: 'Gauvin et al., Flavour Fragr. J. 2004: geranium cv. Rose, Reunion: citronellol 21.9, geraniol 18.3, linalool 16.0 %',
    where: 'abstract, doi 10.1002/ffj.1354', read: true, note: 'one oil',
  },
  {
    id: 'cedar-hb',
    title: 'Supplier page quoting handbook ranges for Virginia cedarwood oil: alpha-cedrene 21.1-38.0 %, beta-cedrene 8.2-9.2 %',
    where: 'supplier page', read: true, note: 'secondary',
  },
  {
    id: 'jeor-rosemary', title: 'A study of Moroccan rosemary oils: cineole chemotype 58-63 % 1,8-cineole',
    where: 'abstract, J. Essent. Oil Res.', read: true, note: 'laboratory oils',
  },
  {
    id: 'usp-eucalyptus', title: 'USP-NF eucalyptus oil: 1,8-cineole not less than 70.0 and not more than 95.0 %',
    where: 'copies of the monograph official from May 2020 and of USP 2025', read: true,
  },
  {
    id: 'bp-eucalyptus',
    title: 'British Pharmacopoeia limits for eucalyptus oil, as listed by a producer: alpha-pinene trace to 9, limonene trace to 12, beta-pinene under 1.5, camphor under 0.1, 1,8-cineole at least 70 %',
    where: 'producer page, technical information', read: true, note: 'secondary',
  },
  {
    id: 'pheur-mint',
    title: 'European Pharmacopoeia limits for peppermint oil, as quoted in Handbook of Herbs and Spices, vol. 3, ch. 28, and in a book on transgenic plants: limonene 1.0-5.0, cineole 3.5-14.0, menthol 30.0-55.0, pulegone at most 4.0, carvone at most 1.0 %',
    where: 'copies of the book pages', read: true, note: 'later editions may set less pulegone: check',
  },
  {
    id: 'spearmint-course', title: 'University course page on flavouring essences: spearmint oil, carvone 50-70 %',
    where: 'web.ist.utl.pt, flavouring essences, spearmint', read: true, note: 'secondary',
  },
  {
    id: 'iso-3033-2', title: 'ISO 3033-2:2005 spearmint oil, Chinese type (80 % and 60 %), redistilled: title page',
    where: 'standards document, title page only', read: true,
  },
  {
    id: 'mint-sheet', title: 'Supplier typical analysis, spearmint oil: limonene 15-30, 1,8-cineole 2-5 %',
    where: 'supplier page', read: true, note: 'secondary',
  },
  {
    id: 'volatile-oils',
    title: 'Gildemeister and Hoffmann, The Volatile Oils, vol. 2, cinnamon leaf oil: eugenol 65 to 95 %',
    where: 'copy of the book text', read: true, note: 'old assay of phenols',
  },
  {
    id: 'herbs-spices-3',
    title: 'Handbook of Herbs and Spices, vol. 3, ch. 11, black pepper: Zachariah 1995 (42 accessions: limonene 3.6-21.2, linalool 0.2-1.8, beta-caryophyllene 11.8-41.8 %) and Gopalakrishnan et al. 1993',
    where: 'copy of the book page', read: true,
  },
  {
    id: 'pepper-hb',
    title: 'Herbal page quoting handbook ranges for black pepper oil: beta-caryophyllene 9.4-30.9, limonene 16.4-24.4, alpha-pinene 1.1-16.2, beta-pinene 4.9-14.3 %',
    where: 'profile page', read: true, note: 'secondary',
  },
  {
    id: 'ip-juniper',
    title: 'Indian Pharmacopoeia Commission, juniper oil (2017): alpha-pinene 20.0-50.0, beta-pinene 1.0-12.0, limonene 2.0-12.0 %',
    where: 'ipc.gov.in', read: true,
  },
  {
    id: 'pheur-thyme',
    title: 'Plant compendium page quoting the European Pharmacopoeia for thyme oil: linalool 4-6.5 %',
    where: 'compendium page, Thymus vulgaris', read: true, note: 'secondary',
  },
  {
    id: 'pf-thyme',
    title: 'Lawrence, Progress in essential oils: thyme oil (2008) and thymol-rich Thymus vulgaris oils, part 1',
    where: 'perfumerflavorist.com 18005814 and article 21856539', read: true,
  },
  {
    id: 'pmc-thyme', title: 'Saudi J. Biol. Sci. 2021, 28, 6532, Table 3: thyme oil from shaded and unshaded plants',
    where: 'pmc.ncbi.nlm.nih.gov/articles/PMC8568991 table 3', read: true,
  },
  {
    id: 'pf-marjoram',
    title: 'Lawrence, Progress in essential oils: marjoram oil (Tabanca et al. 2004, four Turkish oils: linalool 1.6-5.0, linalyl acetate 6.8-9.6, limonene 0.8-1.6, terpinolene 0.6-1.6 %)',
    where: 'perfumerflavorist.com 9495682', read: true, note: 'laboratory oils rich in sabinene hydrate',
  },
  {
    id: 'iran-marjoram',
    title: 'Omidbaigi, marjoram of north Iran: terpinolene 2.6, limonene 3.0, linalyl acetate 3.0 %',
    where: 'abstract page', read: true, note: 'one oil',
  },
  {
    id: 'pf-fennel',
    title: 'Lawrence, Progress in essential oils: sweet fennel oil (Lawrence 1980; Tognolini et al. 2006) and fennel oil (Aridogan et al. 2002)',
    where: 'perfumerflavorist.com articles 21860821 and 21858157', read: true,
  },
  {
    id: 'escop-fennel',
    title: 'Herbal handbook page after ESCOP 2009: oil of sweet fennel, not more than 10 % estragole and 7.5 % fenchone',
    where: 'herbal handbook page, Foeniculum vulgare', read: true, note: 'secondary',
  },
  {
    id: 'npr-fennel',
    title: 'Nat. Prod. Res. 2011, fennel fruits from pharmacies, sweet and bitter together: limonene 0.8-16.5, estragole 2.4-17.0, trans-anethole 34.8-82.0 %',
    where: 'abstract, PMID 21827282', read: true,
  },
  {
    id: 'nutmeg-sheet', title: 'Supplier page, nutmeg oil: alpha-pinene 15-28, beta-pinene 10-18 %',
    where: 'supplier page', read: true, note: 'secondary',
  },
  {
    id: 'ginger-book',
    title: 'Book chapter on ginger: Mitra 1975 (neral 0.8, geranial 1.4, linalool 1.3 %), Narayanan and Mathew 1985 (fifteen cultivars, neral 6.6-15.1 %), Ekundayo et al. 1988 (fresh and dried rhizomes, geranial 15.0 and 9 %)',
    where: 'copy of the book text', read: true,
  },
  {
    id: 'howes-2004',
    title: 'Howes et al., J. Chromatogr. A 2004, 1028, 307: proposed for Santalum album oil at least 43 % Z-alpha-santalol and 18 % Z-beta-santalol',
    where: 'copy of the conclusions', read: true,
  },
  {
    id: 'memory',
    title: 'From memory: ISO essential-oil standards and European Pharmacopoeia monographs as remembered, rounded',
    where: 'iso.org (TC 54); edqm.eu', read: false,
  },
];
