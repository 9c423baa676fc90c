/**
 * Ingredient names for labels of common maker materials: common ingredient names of the European Union (glossary of
 * Implementing Decision (EU) 2025/1175, whose table was not read) and the names used in the United States.
 */
import type { ReferenceSource, SourcedRow } from '../sourced-row.ts';

export interface InciName extends SourcedRow {
  readonly group: string;
  readonly name: string;
  readonly inciEu: string;
  readonly inciUs?: string;
  readonly cas: readonly string[];
  readonly allergenEntryId?: string;
  readonly note?: string;
}

export interface InciRule extends SourcedRow {
  readonly text: string;
}

/** A CAS number that several materials share: it never decides alone. */
export interface InciCasTrap extends SourcedRow {
  readonly cas: string;
  readonly tellApartBy: readonly string[];
  readonly inciNameIds: readonly string[];
  readonly note?: string;
}

export const inciNames: readonly InciName[] = [
  {
    id: 'shea-butter', group: 'butter', name: 'shea butter', inciEu: 'Butyrospermum Parkii Butter',
    inciUs: 'Butyrospermum Parkii (Shea) Butter', cas: ['194043-92-0'], source: 'catalogue', confidence: 'read',
  },
  {
    id: 'cocoa-butter', group: 'butter', name: 'cocoa butter', inciEu: 'Theobroma Cacao Seed Butter',
    inciUs: 'Theobroma Cacao (Cocoa) Seed Butter', cas: ['8002-31-1', '84649-99-0'], source: 'memory',
    confidence: 'memory',
  },
  {
    id: 'mango-butter', group: 'butter', name: 'mango butter', inciEu: 'Mangifera Indica Seed Butter',
    inciUs: 'Mangifera Indica (Mango) Seed Butter', cas: ['90063-86-8'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'kokum-butter', group: 'butter', name: 'kokum butter', inciEu: 'Garcinia Indica Seed Butter',
    inciUs: 'Garcinia Indica Seed Butter', cas: [], note: 'CAS not confirmed', source: 'memory', confidence: 'memory',
  },
  {
    id: 'sal-butter', group: 'butter', name: 'sal butter', inciEu: 'Shorea Robusta Seed Butter',
    inciUs: 'Shorea Robusta Seed Butter', cas: [], note: 'CAS not confirmed', source: 'memory', confidence: 'memory',
  },
  {
    id: 'illipe-butter', group: 'butter', name: 'illipe butter', inciEu: 'Shorea Stenoptera Seed Butter',
    inciUs: 'Shorea Stenoptera Seed Butter', cas: [], note: 'CAS not confirmed', source: 'memory',
    confidence: 'memory',
  },
  {
    id: 'cupuacu-butter', group: 'butter', name: 'cupuacu butter', inciEu: 'Theobroma Grandiflorum Seed Butter',
    inciUs: 'Theobroma Grandiflorum Seed Butter', cas: ['394236-97-6'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'murumuru-butter', group: 'butter', name: 'murumuru butter', inciEu: 'Astrocaryum Murumuru Seed Butter',
    inciUs: 'Astrocaryum Murumuru Seed Butter', cas: [], note: 'CAS not confirmed', source: 'memory',
    confidence: 'memory',
  },
  {
    id: 'coconut-oil', group: 'oil', name: 'coconut oil', inciEu: 'Cocos Nucifera Oil',
    inciUs: 'Cocos Nucifera (Coconut) Oil', cas: ['8001-31-8'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'fractionated-coconut-oil-mct', group: 'oil', name: 'fractionated coconut oil, MCT',
    inciEu: 'Caprylic/Capric Triglyceride', inciUs: 'Caprylic/Capric Triglyceride', cas: ['65381-09-1', '73398-61-5'],
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'olive-oil', group: 'oil', name: 'olive oil', inciEu: 'Olea Europaea Fruit Oil',
    inciUs: 'Olea Europaea (Olive) Fruit Oil', cas: ['8001-25-0'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'sweet-almond-oil', group: 'oil', name: 'sweet almond oil', inciEu: 'Prunus Amygdalus Dulcis Oil',
    inciUs: 'Prunus Amygdalus Dulcis (Sweet Almond) Oil', cas: ['8007-69-0', '90320-37-9'], source: 'catalogue',
    confidence: 'read',
  },
  {
    id: 'jojoba-oil', group: 'oil', name: 'jojoba oil', inciEu: 'Simmondsia Chinensis Seed Oil',
    inciUs: 'Simmondsia Chinensis (Jojoba) Seed Oil', cas: ['61789-91-1', '90045-98-0'], source: 'catalogue',
    confidence: 'read',
  },
  {
    id: 'sunflower-oil', group: 'oil', name: 'sunflower oil', inciEu: 'Helianthus Annuus Seed Oil',
    inciUs: 'Helianthus Annuus (Sunflower) Seed Oil', cas: ['8001-21-6'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'castor-oil', group: 'oil', name: 'castor oil', inciEu: 'Ricinus Communis Seed Oil',
    inciUs: 'Ricinus Communis (Castor) Seed Oil', cas: ['8001-79-4'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'argan-oil', group: 'oil', name: 'argan oil', inciEu: 'Argania Spinosa Kernel Oil',
    inciUs: 'Argania Spinosa Kernel Oil', cas: ['223747-87-3', '299184-75-1'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'avocado-oil', group: 'oil', name: 'avocado oil', inciEu: 'Persea Gratissima Oil',
    inciUs: 'Persea Gratissima (Avocado) Oil', cas: ['8024-32-6'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'grapeseed-oil', group: 'oil', name: 'grapeseed oil', inciEu: 'Vitis Vinifera Seed Oil',
    inciUs: 'Vitis Vinifera (Grape) Seed Oil', cas: ['8024-22-4'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'apricot-kernel-oil', group: 'oil', name: 'apricot kernel oil', inciEu: 'Prunus Armeniaca Kernel Oil',
    inciUs: 'Prunus Armeniaca (Apricot) Kernel Oil', cas: ['72869-69-3'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'sesame-oil', group: 'oil', name: 'sesame oil', inciEu: 'Sesamum Indicum Seed Oil',
    inciUs: 'Sesamum Indicum (Sesame) Seed Oil', cas: ['8008-74-0'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'canola-rapeseed-oil', group: 'oil', name: 'canola / rapeseed oil', inciEu: 'Canola Oil',
    inciUs: 'Canola Oil', cas: ['120962-03-0'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'hemp-seed-oil', group: 'oil', name: 'hemp seed oil', inciEu: 'Cannabis Sativa Seed Oil',
    inciUs: 'Cannabis Sativa Seed Oil', cas: ['89958-21-4'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'rice-bran-oil', group: 'oil', name: 'rice bran oil', inciEu: 'Oryza Sativa Bran Oil',
    inciUs: 'Oryza Sativa (Rice) Bran Oil', cas: ['68553-81-1'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'macadamia-oil', group: 'oil', name: 'macadamia oil', inciEu: 'Macadamia Ternifolia Seed Oil',
    inciUs: 'Macadamia Ternifolia Seed Oil', cas: ['128497-20-1'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'baobab-oil', group: 'oil', name: 'baobab oil', inciEu: 'Adansonia Digitata Seed Oil',
    inciUs: 'Adansonia Digitata Seed Oil', cas: ['91745-12-9'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'tamanu-oil', group: 'oil', name: 'tamanu oil', inciEu: 'Calophyllum Inophyllum Seed Oil',
    inciUs: 'Calophyllum Inophyllum Seed Oil', cas: ['241148-25-4'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'palm-oil', group: 'oil', name: 'palm oil', inciEu: 'Elaeis Guineensis Oil',
    inciUs: 'Elaeis Guineensis (Palm) Oil', cas: ['8002-75-3'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'palm-kernel-oil', group: 'oil', name: 'palm kernel oil', inciEu: 'Elaeis Guineensis Kernel Oil',
    inciUs: 'Elaeis Guineensis (Palm) Kernel Oil', cas: ['8023-79-8'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'soybean-oil', group: 'oil', name: 'soybean oil', inciEu: 'Glycine Soja Oil',
    inciUs: 'Glycine Soja (Soybean) Oil', cas: ['8001-22-7'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'safflower-oil', group: 'oil', name: 'safflower oil', inciEu: 'Carthamus Tinctorius Seed Oil',
    inciUs: 'Carthamus Tinctorius (Safflower) Seed Oil', cas: ['8001-23-8'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'linseed-oil', group: 'oil', name: 'linseed oil', inciEu: 'Linum Usitatissimum Seed Oil',
    inciUs: 'Linum Usitatissimum (Linseed) Seed Oil', cas: ['8001-26-1'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'meadowfoam-oil', group: 'oil', name: 'meadowfoam oil', inciEu: 'Limnanthes Alba Seed Oil',
    inciUs: 'Limnanthes Alba (Meadowfoam) Seed Oil', cas: ['153065-40-8'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'evening-primrose-oil', group: 'oil', name: 'evening primrose oil', inciEu: 'Oenothera Biennis Oil',
    inciUs: 'Oenothera Biennis (Evening Primrose) Oil', cas: ['90028-66-3'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'borage-oil', group: 'oil', name: 'borage oil', inciEu: 'Borago Officinalis Seed Oil',
    inciUs: 'Borago Officinalis Seed Oil', cas: ['84012-16-8'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'marula-oil', group: 'oil', name: 'marula oil', inciEu: 'Sclerocarya Birrea Seed Oil',
    inciUs: 'Sclerocarya Birrea Seed Oil', cas: ['68956-68-3'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'squalane-olive-or-sugar-cane', group: 'oil', name: 'squalane (olive or sugar cane)', inciEu: 'Squalane',
    inciUs: 'Squalane', cas: ['111-01-3'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'rosehip-oil', group: 'oil', name: 'rosehip oil', inciEu: 'Rosa Canina Fruit Oil',
    inciUs: 'Rosa Canina Fruit Oil', cas: ['84603-93-0', '84696-47-9'],
    note: 'CAS 84696-47-9 is also the CAS of the allergen row 366 (flower oil). A pressed seed/fruit oil is not that row.',
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'neem-oil', group: 'oil', name: 'neem oil', inciEu: 'Azadirachta Indica Seed Oil',
    inciUs: 'Azadirachta Indica (Neem) Seed Oil', cas: ['84696-25-3'],
    note: 'Same CAS as the prohibited margosa extract (Annex II 1716): keep the process statement.', source: 'memory',
    confidence: 'memory',
  },
  {
    id: 'peanut-oil', group: 'oil', name: 'peanut oil', inciEu: 'Arachis Hypogaea Oil',
    inciUs: 'Arachis Hypogaea (Peanut) Oil', cas: ['8002-03-7'],
    note: 'Annex III 306: peanut protein at most 0.5 ppm', source: 'cosing3', confidence: 'read',
  },
  {
    id: 'mineral-oil', group: 'oil', name: 'mineral oil', inciEu: 'Paraffinum Liquidum', inciUs: 'Mineral Oil',
    cas: ['8042-47-5', '8012-95-1'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'petroleum-jelly', group: 'oil', name: 'petroleum jelly', inciEu: 'Petrolatum', inciUs: 'Petrolatum',
    cas: ['8009-03-8'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'beeswax', group: 'wax-emulsifier', name: 'beeswax', inciEu: 'Cera Alba', inciUs: 'Beeswax',
    cas: ['8012-89-3', '8006-40-4'], note: 'Trivial Latin name in the EU', source: 'memory', confidence: 'memory',
  },
  {
    id: 'candelilla-wax', group: 'wax-emulsifier', name: 'candelilla wax', inciEu: 'Euphorbia Cerifera Cera',
    inciUs: 'Euphorbia Cerifera (Candelilla) Wax', cas: ['8006-44-8'],
    note: 'EU form also met as Candelilla Cera; check the glossary', source: 'memory', confidence: 'memory',
  },
  {
    id: 'carnauba-wax', group: 'wax-emulsifier', name: 'carnauba wax', inciEu: 'Copernicia Cerifera Cera',
    inciUs: 'Copernicia Cerifera (Carnauba) Wax', cas: ['8015-86-9'],
    note: 'EU form also met as Cera Carnauba; check the glossary', source: 'memory', confidence: 'memory',
  },
  {
    id: 'lanolin', group: 'wax-emulsifier', name: 'lanolin', inciEu: 'Lanolin', inciUs: 'Lanolin', cas: ['8006-54-0'],
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'cetearyl-alcohol', group: 'wax-emulsifier', name: 'cetearyl alcohol', inciEu: 'Cetearyl Alcohol',
    inciUs: 'Cetearyl Alcohol', cas: ['67762-27-0', '8005-44-5'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'cetyl-alcohol', group: 'wax-emulsifier', name: 'cetyl alcohol', inciEu: 'Cetyl Alcohol',
    inciUs: 'Cetyl Alcohol', cas: ['36653-82-4'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'stearic-acid', group: 'wax-emulsifier', name: 'stearic acid', inciEu: 'Stearic Acid', inciUs: 'Stearic Acid',
    cas: ['57-11-4'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'glyceryl-stearate', group: 'wax-emulsifier', name: 'glyceryl stearate', inciEu: 'Glyceryl Stearate',
    inciUs: 'Glyceryl Stearate', cas: ['31566-31-1', '123-94-4'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'polysorbate-80', group: 'wax-emulsifier', name: 'polysorbate 80', inciEu: 'Polysorbate 80',
    inciUs: 'Polysorbate 80', cas: ['9005-65-6'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'polysorbate-20', group: 'wax-emulsifier', name: 'polysorbate 20', inciEu: 'Polysorbate 20',
    inciUs: 'Polysorbate 20', cas: ['9005-64-5'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'sodium-cocoyl-isethionate-sci', group: 'wax-emulsifier', name: 'sodium cocoyl isethionate (SCI)',
    inciEu: 'Sodium Cocoyl Isethionate', inciUs: 'Sodium Cocoyl Isethionate', cas: ['61789-32-0'], source: 'memory',
    confidence: 'memory',
  },
  {
    id: 'kaolin-white-clay', group: 'clay-starch-mineral', name: 'kaolin (white clay)', inciEu: 'Kaolin',
    inciUs: 'Kaolin', cas: ['1332-58-7'], note: 'Used as a colourant: CI 77004 (Annex IV 119)', source: 'memory',
    confidence: 'memory',
  },
  {
    id: 'bentonite', group: 'clay-starch-mineral', name: 'bentonite', inciEu: 'Bentonite', inciUs: 'Bentonite',
    cas: ['1302-78-9'], source: 'cosing4', confidence: 'read',
  },
  {
    id: 'green-clay-illite', group: 'clay-starch-mineral', name: 'green clay, illite', inciEu: 'Illite',
    inciUs: 'Illite', cas: ['12173-60-3'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'montmorillonite', group: 'clay-starch-mineral', name: 'montmorillonite', inciEu: 'Montmorillonite',
    inciUs: 'Montmorillonite', cas: ['1318-93-0'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'rhassoul-ghassoul', group: 'clay-starch-mineral', name: 'rhassoul, ghassoul', inciEu: 'Moroccan Lava Clay',
    inciUs: 'Moroccan Lava Clay', cas: [], source: 'memory', confidence: 'memory',
  },
  {
    id: 'corn-starch', group: 'clay-starch-mineral', name: 'corn starch', inciEu: 'Zea Mays Starch',
    inciUs: 'Zea Mays (Corn) Starch', cas: ['9005-25-8'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'tapioca-starch', group: 'clay-starch-mineral', name: 'tapioca starch', inciEu: 'Tapioca Starch',
    inciUs: 'Tapioca Starch', cas: ['9005-25-8'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'arrowroot-powder', group: 'clay-starch-mineral', name: 'arrowroot powder',
    inciEu: 'Maranta Arundinacea Root Powder', inciUs: 'Maranta Arundinacea Root Powder', cas: [],
    note: 'Check which arrowroot the supplier sells; many are tapioca', source: 'memory', confidence: 'memory',
  },
  {
    id: 'potato-starch', group: 'clay-starch-mineral', name: 'potato starch', inciEu: 'Solanum Tuberosum Starch',
    inciUs: 'Solanum Tuberosum (Potato) Starch', cas: ['9005-25-8'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'rice-starch', group: 'clay-starch-mineral', name: 'rice starch', inciEu: 'Oryza Sativa Starch',
    inciUs: 'Oryza Sativa (Rice) Starch', cas: ['9005-25-8'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'oat-flour-colloidal-oatmeal', group: 'clay-starch-mineral', name: 'oat flour, colloidal oatmeal',
    inciEu: 'Avena Sativa Kernel Flour', inciUs: 'Avena Sativa (Oat) Kernel Flour', cas: ['134134-86-4'],
    note: "'Colloidal oatmeal' is a US skin-protectant drug ingredient name", source: 'memory', confidence: 'memory',
  },
  {
    id: 'talc', group: 'clay-starch-mineral', name: 'talc', inciEu: 'Talc', inciUs: 'Talc', cas: ['14807-96-6'],
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'silica', group: 'clay-starch-mineral', name: 'silica', inciEu: 'Silica', inciUs: 'Silica',
    cas: ['7631-86-9'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'pumice', group: 'clay-starch-mineral', name: 'pumice', inciEu: 'Pumice', inciUs: 'Pumice',
    cas: ['1332-09-8'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'activated-charcoal', group: 'clay-starch-mineral', name: 'activated charcoal', inciEu: 'Charcoal Powder',
    inciUs: 'Charcoal Powder', cas: ['7440-44-0', '16291-96-6'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'zinc-oxide', group: 'clay-starch-mineral', name: 'zinc oxide', inciEu: 'Zinc Oxide', inciUs: 'Zinc Oxide',
    cas: ['1314-13-2'], note: 'As colourant CI 77947', source: 'cosing4', confidence: 'read',
  },
  {
    id: 'magnesium-stearate', group: 'clay-starch-mineral', name: 'magnesium stearate', inciEu: 'Magnesium Stearate',
    inciUs: 'Magnesium Stearate', cas: ['557-04-0'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'mica', group: 'clay-starch-mineral', name: 'mica', inciEu: 'Mica', inciUs: 'Mica', cas: ['12001-26-2'],
    note: 'No EU colour index entry found; declare Mica and the pigments on it by CI number', source: 'memory',
    confidence: 'memory',
  },
  {
    id: 'sugar', group: 'salt-sugar-exfoliant', name: 'sugar', inciEu: 'Sucrose', inciUs: 'Sucrose', cas: ['57-50-1'],
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'table-salt', group: 'salt-sugar-exfoliant', name: 'table salt', inciEu: 'Sodium Chloride',
    inciUs: 'Sodium Chloride', cas: ['7647-14-5'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'sea-salt', group: 'salt-sugar-exfoliant', name: 'sea salt', inciEu: 'Maris Sal', inciUs: 'Sea Salt', cas: [],
    note: 'Trivial Latin name in the EU', source: 'memory', confidence: 'memory',
  },
  {
    id: 'epsom-salt', group: 'salt-sugar-exfoliant', name: 'Epsom salt', inciEu: 'Magnesium Sulfate',
    inciUs: 'Magnesium Sulfate', cas: ['7487-88-9', '10034-99-8'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'baking-soda', group: 'salt-sugar-exfoliant', name: 'baking soda', inciEu: 'Sodium Bicarbonate',
    inciUs: 'Sodium Bicarbonate', cas: ['144-55-8'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'citric-acid', group: 'salt-sugar-exfoliant', name: 'citric acid', inciEu: 'Citric Acid',
    inciUs: 'Citric Acid', cas: ['77-92-9', '5949-29-1'], source: 'cosing5', confidence: 'read',
  },
  {
    id: 'walnut-shell-powder', group: 'salt-sugar-exfoliant', name: 'walnut shell powder',
    inciEu: 'Juglans Regia Shell Powder', inciUs: 'Juglans Regia (Walnut) Shell Powder', cas: ['84012-43-1'],
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'coffee-grounds', group: 'salt-sugar-exfoliant', name: 'coffee grounds', inciEu: 'Coffea Arabica Seed Powder',
    inciUs: 'Coffea Arabica (Coffee) Seed Powder', cas: ['84650-00-0'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'apricot-seed-powder', group: 'salt-sugar-exfoliant', name: 'apricot seed powder',
    inciEu: 'Prunus Armeniaca Seed Powder', inciUs: 'Prunus Armeniaca (Apricot) Seed Powder', cas: ['68650-44-2'],
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'water', group: 'liquid-misc', name: 'water', inciEu: 'Aqua', inciUs: 'Water', cas: ['7732-18-5'],
    source: 'glossary-old', confidence: 'read',
  },
  {
    id: 'glycerin', group: 'liquid-misc', name: 'glycerin', inciEu: 'Glycerin', inciUs: 'Glycerin', cas: ['56-81-5'],
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'honey', group: 'liquid-misc', name: 'honey', inciEu: 'Mel', inciUs: 'Honey', cas: ['8028-66-8'],
    note: 'Trivial Latin name in the EU', source: 'memory', confidence: 'memory',
  },
  {
    id: 'milk', group: 'liquid-misc', name: 'milk', inciEu: 'Lac', inciUs: 'Milk', cas: ['8049-98-7'],
    note: 'Trivial Latin name in the EU', source: 'memory', confidence: 'memory',
  },
  {
    id: 'goat-milk', group: 'liquid-misc', name: 'goat milk', inciEu: 'Caprae Lac', inciUs: 'Goat Milk', cas: [],
    note: 'Trivial Latin name in the EU; check the glossary form', source: 'memory', confidence: 'memory',
  },
  {
    id: 'lard', group: 'liquid-misc', name: 'lard', inciEu: 'Adeps Suillus', inciUs: 'Lard', cas: ['61789-99-9'],
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'beef-tallow', group: 'liquid-misc', name: 'beef tallow', inciEu: 'Adeps Bovis', inciUs: 'Tallow',
    cas: ['61789-97-7'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'aloe-juice', group: 'liquid-misc', name: 'aloe juice', inciEu: 'Aloe Barbadensis Leaf Juice',
    inciUs: 'Aloe Barbadensis Leaf Juice', cas: ['85507-69-3', '94349-62-9'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'alcohol-denatured', group: 'liquid-misc', name: 'alcohol, denatured', inciEu: 'Alcohol Denat.',
    inciUs: 'Alcohol Denat.', cas: ['64-17-5'], note: 'US: name the SD alcohol number', source: 'memory',
    confidence: 'memory',
  },
  {
    id: 'perfume-oil', group: 'liquid-misc', name: 'perfume oil', inciEu: 'Parfum', inciUs: 'Fragrance', cas: [],
    note: 'Aroma (EU) / Flavor (US) for taste', source: 'eu-1223-art-19', confidence: 'read',
  },
  {
    id: 'calendula-extract', group: 'liquid-misc', name: 'calendula extract',
    inciEu: 'Calendula Officinalis Flower Extract', inciUs: 'Calendula Officinalis Flower Extract',
    cas: ['84776-23-8'], note: 'An infused oil: name the carrier oil and the extract', source: 'memory',
    confidence: 'memory',
  },
  {
    id: 'xanthan-gum', group: 'liquid-misc', name: 'xanthan gum', inciEu: 'Xanthan Gum', inciUs: 'Xanthan Gum',
    cas: ['11138-66-2'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'vitamin-e', group: 'vitamin-antioxidant', name: 'vitamin E', inciEu: 'Tocopherol', inciUs: 'Tocopherol',
    cas: ['59-02-9', '10191-41-0', '1406-18-4', '2074-53-5'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'vitamin-e-acetate', group: 'vitamin-antioxidant', name: 'vitamin E acetate', inciEu: 'Tocopheryl Acetate',
    inciUs: 'Tocopheryl Acetate', cas: ['7695-91-2', '58-95-7'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'rosemary-extract-roe', group: 'vitamin-antioxidant', name: 'rosemary extract (ROE)',
    inciEu: 'Rosmarinus Officinalis Leaf Extract', inciUs: 'Rosmarinus Officinalis (Rosemary) Leaf Extract',
    cas: ['84604-14-8'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'vitamin-a-palmitate', group: 'vitamin-antioxidant', name: 'vitamin A palmitate', inciEu: 'Retinyl Palmitate',
    inciUs: 'Retinyl Palmitate', cas: ['79-81-2'], note: 'Annex III 376', source: 'cosing3', confidence: 'read',
  },
  {
    id: 'pro-vitamin-b5', group: 'vitamin-antioxidant', name: 'pro-vitamin B5', inciEu: 'Panthenol',
    inciUs: 'Panthenol', cas: ['81-13-0', '16485-10-2'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'niacinamide', group: 'vitamin-antioxidant', name: 'niacinamide', inciEu: 'Niacinamide',
    inciUs: 'Niacinamide', cas: ['98-92-0'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'allantoin', group: 'vitamin-antioxidant', name: 'allantoin', inciEu: 'Allantoin', inciUs: 'Allantoin',
    cas: ['97-59-6'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'bisabolol', group: 'vitamin-antioxidant', name: 'bisabolol', inciEu: 'Bisabolol', inciUs: 'Bisabolol',
    cas: ['515-69-5', '23089-26-1'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'sodium-benzoate', group: 'preservative', name: 'sodium benzoate', inciEu: 'Sodium Benzoate',
    inciUs: 'Sodium Benzoate', cas: ['532-32-1'], source: 'cosing5', confidence: 'read',
  },
  {
    id: 'potassium-sorbate', group: 'preservative', name: 'potassium sorbate', inciEu: 'Potassium Sorbate',
    inciUs: 'Potassium Sorbate', cas: ['24634-61-5'], source: 'cosing5', confidence: 'read',
  },
  {
    id: 'phenoxyethanol', group: 'preservative', name: 'phenoxyethanol', inciEu: 'Phenoxyethanol',
    inciUs: 'Phenoxyethanol', cas: ['122-99-6'], source: 'cosing5', confidence: 'read',
  },
  {
    id: 'benzyl-alcohol', group: 'preservative', name: 'benzyl alcohol', inciEu: 'Benzyl Alcohol',
    inciUs: 'Benzyl Alcohol', cas: ['100-51-6'], allergenEntryId: 'benzyl-alcohol', source: 'cosing5',
    confidence: 'read', evidence: { allergenEntryId: { source: 'memory', confidence: 'derived' } },
  },
  {
    id: 'dehydroacetic-acid', group: 'preservative', name: 'dehydroacetic acid', inciEu: 'Dehydroacetic Acid',
    inciUs: 'Dehydroacetic Acid', cas: ['520-45-6'], source: 'cosing5', confidence: 'read',
  },
  {
    id: 'ethylhexylglycerin', group: 'preservative', name: 'ethylhexylglycerin', inciEu: 'Ethylhexylglycerin',
    inciUs: 'Ethylhexylglycerin', cas: ['70445-33-9'], note: 'Booster, not in Annex V', source: 'memory',
    confidence: 'memory',
  },
  {
    id: 'caprylyl-glycol', group: 'preservative', name: 'caprylyl glycol', inciEu: 'Caprylyl Glycol',
    inciUs: 'Caprylyl Glycol', cas: ['1117-86-8'], note: 'Booster, not in Annex V', source: 'memory',
    confidence: 'memory',
  },
  {
    id: 'lye', group: 'soap', name: 'lye', inciEu: 'Sodium Hydroxide', inciUs: 'Sodium Hydroxide', cas: ['1310-73-2'],
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'caustic-potash', group: 'soap', name: 'caustic potash', inciEu: 'Potassium Hydroxide',
    inciUs: 'Potassium Hydroxide', cas: ['1310-58-3'], source: 'cosing3', confidence: 'read',
  },
  {
    id: 'saponified-coconut-oil-naoh', group: 'soap', name: 'saponified coconut oil (NaOH)', inciEu: 'Sodium Cocoate',
    inciUs: 'Sodium Cocoate', cas: ['61789-31-9'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'saponified-palm-oil-naoh', group: 'soap', name: 'saponified palm oil (NaOH)', inciEu: 'Sodium Palmate',
    inciUs: 'Sodium Palmate', cas: ['61790-79-2'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'saponified-palm-kernel-oil-naoh', group: 'soap', name: 'saponified palm kernel oil (NaOH)',
    inciEu: 'Sodium Palm Kernelate', inciUs: 'Sodium Palm Kernelate', cas: ['61789-89-7'], source: 'memory',
    confidence: 'memory',
  },
  {
    id: 'saponified-olive-oil-naoh', group: 'soap', name: 'saponified olive oil (NaOH)', inciEu: 'Sodium Olivate',
    inciUs: 'Sodium Olivate', cas: ['64709-72-4'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'saponified-tallow-naoh', group: 'soap', name: 'saponified tallow (NaOH)', inciEu: 'Sodium Tallowate',
    inciUs: 'Sodium Tallowate', cas: ['8052-48-0'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'saponified-lard-naoh', group: 'soap', name: 'saponified lard (NaOH)', inciEu: 'Sodium Lardate',
    inciUs: 'Sodium Lardate', cas: [], note: 'Spelling and CAS to be checked in the glossary before printing',
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'saponified-shea-butter-naoh', group: 'soap', name: 'saponified shea butter (NaOH)',
    inciEu: 'Sodium Shea Butterate', inciUs: 'Sodium Shea Butterate', cas: [],
    note: 'Spelling and CAS to be checked in the glossary before printing', source: 'memory', confidence: 'memory',
  },
  {
    id: 'saponified-cocoa-butter-naoh', group: 'soap', name: 'saponified cocoa butter (NaOH)',
    inciEu: 'Sodium Cocoa Butterate', inciUs: 'Sodium Cocoa Butterate', cas: [],
    note: 'Spelling and CAS to be checked in the glossary before printing', source: 'memory', confidence: 'memory',
  },
  {
    id: 'saponified-castor-oil-naoh', group: 'soap', name: 'saponified castor oil (NaOH)', inciEu: 'Sodium Castorate',
    inciUs: 'Sodium Castorate', cas: [], note: 'Spelling and CAS to be checked in the glossary before printing',
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'saponified-sunflower-oil-naoh', group: 'soap', name: 'saponified sunflower oil (NaOH)',
    inciEu: 'Sodium Sunflowerseedate', inciUs: 'Sodium Sunflowerseedate', cas: [],
    note: 'Spelling and CAS to be checked in the glossary before printing', source: 'memory', confidence: 'memory',
  },
  {
    id: 'saponified-sweet-almond-oil-naoh', group: 'soap', name: 'saponified sweet almond oil (NaOH)',
    inciEu: 'Sodium Sweet Almondate', inciUs: 'Sodium Sweet Almondate', cas: [],
    note: 'Spelling and CAS to be checked in the glossary before printing', source: 'memory', confidence: 'memory',
  },
  {
    id: 'saponified-avocado-oil-naoh', group: 'soap', name: 'saponified avocado oil (NaOH)',
    inciEu: 'Sodium Avocadoate', inciUs: 'Sodium Avocadoate', cas: [],
    note: 'Spelling and CAS to be checked in the glossary before printing', source: 'memory', confidence: 'memory',
  },
  {
    id: 'saponified-rapeseed-oil-naoh', group: 'soap', name: 'saponified rapeseed oil (NaOH)',
    inciEu: 'Sodium Rapeseedate', inciUs: 'Sodium Rapeseedate', cas: [],
    note: 'Spelling and CAS to be checked in the glossary before printing', source: 'memory', confidence: 'memory',
  },
  {
    id: 'saponified-soybean-oil-naoh', group: 'soap', name: 'saponified soybean oil (NaOH)', inciEu: 'Sodium Soyate',
    inciUs: 'Sodium Soyate', cas: [], note: 'Spelling and CAS to be checked in the glossary before printing',
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'saponified-babassu-oil-naoh', group: 'soap', name: 'saponified babassu oil (NaOH)',
    inciEu: 'Sodium Babassuate', inciUs: 'Sodium Babassuate', cas: [],
    note: 'Spelling and CAS to be checked in the glossary before printing', source: 'memory', confidence: 'memory',
  },
  {
    id: 'saponified-mango-butter-naoh', group: 'soap', name: 'saponified mango butter (NaOH)',
    inciEu: 'Sodium Mango Seedate', inciUs: 'Sodium Mango Seedate', cas: [],
    note: 'Spelling and CAS to be checked in the glossary before printing', source: 'memory', confidence: 'memory',
  },
  {
    id: 'saponified-rice-bran-oil-naoh', group: 'soap', name: 'saponified rice bran oil (NaOH)',
    inciEu: 'Sodium Ricebranate', inciUs: 'Sodium Ricebranate', cas: [],
    note: 'Spelling and CAS to be checked in the glossary before printing', source: 'memory', confidence: 'memory',
  },
  {
    id: 'saponified-grapeseed-oil-naoh', group: 'soap', name: 'saponified grapeseed oil (NaOH)',
    inciEu: 'Sodium Grapeseedate', inciUs: 'Sodium Grapeseedate', cas: [],
    note: 'Spelling and CAS to be checked in the glossary before printing', source: 'memory', confidence: 'memory',
  },
  {
    id: 'saponified-hemp-oil-naoh', group: 'soap', name: 'saponified hemp oil (NaOH)', inciEu: 'Sodium Hempseedate',
    inciUs: 'Sodium Hempseedate', cas: [], note: 'Spelling and CAS to be checked in the glossary before printing',
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'saponified-stearic-acid-naoh', group: 'soap', name: 'saponified stearic acid (NaOH)',
    inciEu: 'Sodium Stearate', inciUs: 'Sodium Stearate', cas: ['822-16-2'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'saponified-coconut-oil-koh', group: 'soap', name: 'saponified coconut oil (KOH)',
    inciEu: 'Potassium Cocoate', inciUs: 'Potassium Cocoate', cas: ['61789-30-8'], source: 'memory',
    confidence: 'memory',
  },
  {
    id: 'saponified-olive-oil-koh', group: 'soap', name: 'saponified olive oil (KOH)', inciEu: 'Potassium Olivate',
    inciUs: 'Potassium Olivate', cas: ['68154-77-8'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'lavender-oil', group: 'essential-oil', name: 'lavender oil', inciEu: 'Lavandula Angustifolia Oil',
    inciUs: 'Lavandula Angustifolia (Lavender) Oil', cas: ['84776-65-8', '8000-28-0', '90063-37-9'],
    allergenEntryId: 'lavandula-oil-extract', source: 'cosing3', confidence: 'read',
  },
  {
    id: 'lavandin-oil', group: 'essential-oil', name: 'lavandin oil', inciEu: 'Lavandula Hybrida Oil',
    inciUs: 'Lavandula Hybrida Oil', cas: ['91722-69-9', '8022-15-9', '93455-96-0', '93455-97-1', '92623-76-2'],
    allergenEntryId: 'lavandula-oil-extract', source: 'cosing3', confidence: 'read',
  },
  {
    id: 'spike-lavender-oil', group: 'essential-oil', name: 'spike lavender oil',
    inciEu: 'Lavandula Latifolia Herb Oil', inciUs: 'Lavandula Latifolia Herb Oil', cas: ['8016-78-2', '84837-04-7'],
    note: 'Not in entry 360; its linalool and camphor are allergens', source: 'memory', confidence: 'memory',
  },
  {
    id: 'peppermint-oil', group: 'essential-oil', name: 'peppermint oil', inciEu: 'Mentha Piperita Oil',
    inciUs: 'Mentha Piperita (Peppermint) Oil', cas: ['8006-90-4', '84082-70-2'],
    allergenEntryId: 'mentha-piperita-oil', source: 'cosing3', confidence: 'read',
  },
  {
    id: 'spearmint-oil', group: 'essential-oil', name: 'spearmint oil', inciEu: 'Mentha Viridis Leaf Oil',
    inciUs: 'Mentha Viridis (Spearmint) Leaf Oil', cas: ['8008-79-5', '84696-51-5'],
    allergenEntryId: 'mentha-viridis-leaf-oil', source: 'cosing3', confidence: 'read',
  },
  {
    id: 'tea-tree-oil', group: 'essential-oil', name: 'tea tree oil', inciEu: 'Melaleuca Alternifolia Leaf Oil',
    inciUs: 'Melaleuca Alternifolia (Tea Tree) Leaf Oil', cas: ['68647-73-4', '85085-48-9'],
    note: 'See restricted-substances: tea-tree', source: 'sccs-1681-25', confidence: 'read',
  },
  {
    id: 'sweet-orange-oil', group: 'essential-oil', name: 'sweet orange oil',
    inciEu: 'Citrus Aurantium Dulcis Peel Oil', inciUs: 'Citrus Aurantium Dulcis (Orange) Peel Oil',
    cas: ['8008-57-9', '8028-48-6', '97766-30-8'], allergenEntryId: 'citrus-aurantium-peel-oil',
    note: 'Label name of the allergen: Citrus Aurantium Peel Oil', source: 'cosing3', confidence: 'read',
  },
  {
    id: 'bitter-orange-oil', group: 'essential-oil', name: 'bitter orange oil',
    inciEu: 'Citrus Aurantium Amara Peel Oil', inciUs: 'Citrus Aurantium Amara (Bitter Orange) Peel Oil',
    cas: ['68916-04-1', '72968-50-4'], allergenEntryId: 'citrus-aurantium-peel-oil', source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'lemon-oil', group: 'essential-oil', name: 'lemon oil', inciEu: 'Citrus Limon Peel Oil',
    inciUs: 'Citrus Limon (Lemon) Peel Oil', cas: ['8008-56-8', '84929-31-7'],
    allergenEntryId: 'citrus-limon-peel-oil', source: 'cosing3', confidence: 'read',
  },
  {
    id: 'bergamot-oil', group: 'essential-oil', name: 'bergamot oil', inciEu: 'Citrus Aurantium Bergamia Peel Oil',
    inciUs: 'Citrus Aurantium Bergamia (Bergamot) Fruit Oil',
    cas: ['8007-75-8', '89957-91-5', '68648-33-9', '85049-52-1'],
    allergenEntryId: 'citrus-aurantium-bergamia-peel-oil', note: 'US form of the name from memory', source: 'cosing3',
    confidence: 'read', evidence: { inciUs: { source: 'memory', confidence: 'memory' } },
  },
  {
    id: 'grapefruit-oil', group: 'essential-oil', name: 'grapefruit oil', inciEu: 'Citrus Paradisi Peel Oil',
    inciUs: 'Citrus Paradisi (Grapefruit) Peel Oil', cas: ['8016-20-4', '90045-43-5'],
    note: 'Not an entry; limonene is', source: 'memory', confidence: 'memory',
  },
  {
    id: 'lime-oil', group: 'essential-oil', name: 'lime oil', inciEu: 'Citrus Aurantifolia Oil',
    inciUs: 'Citrus Aurantifolia (Lime) Oil', cas: ['8008-26-2'], note: 'Furocoumarins if expressed',
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'neroli-oil', group: 'essential-oil', name: 'neroli oil', inciEu: 'Citrus Aurantium Amara Flower Oil',
    inciUs: 'Citrus Aurantium Amara (Bitter Orange) Flower Oil', cas: ['72968-50-4'],
    allergenEntryId: 'citrus-aurantium-flower-oil', source: 'cosing3', confidence: 'read',
  },
  {
    id: 'eucalyptus-oil', group: 'essential-oil', name: 'eucalyptus oil', inciEu: 'Eucalyptus Globulus Leaf Oil',
    inciUs: 'Eucalyptus Globulus Leaf Oil', cas: ['8000-48-4', '97926-40-4'],
    allergenEntryId: 'eucalyptus-globulus-oil', source: 'cosing3', confidence: 'read',
  },
  {
    id: 'rosemary-oil', group: 'essential-oil', name: 'rosemary oil', inciEu: 'Rosmarinus Officinalis Leaf Oil',
    inciUs: 'Rosmarinus Officinalis (Rosemary) Leaf Oil', cas: ['8000-25-7'],
    note: 'Camphor, pinene, limonene are entries', source: 'memory', confidence: 'memory',
  },
  {
    id: 'geranium-oil', group: 'essential-oil', name: 'geranium oil', inciEu: 'Pelargonium Graveolens Oil',
    inciUs: 'Pelargonium Graveolens Oil', cas: ['8000-46-2', '90082-51-2'],
    allergenEntryId: 'pelargonium-graveolens-flower-oil', source: 'cosing3', confidence: 'read',
  },
  {
    id: 'lemongrass-oil', group: 'essential-oil', name: 'lemongrass oil', inciEu: 'Cymbopogon Schoenanthus Oil',
    inciUs: 'Cymbopogon Schoenanthus Oil', cas: ['8007-02-1', '89998-16-3'], allergenEntryId: 'lemongrass-oil',
    note: 'East Indian: Cymbopogon Flexuosus Oil 91844-92-7. Label name of the allergen: Lemongrass Oil',
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'palmarosa-oil', group: 'essential-oil', name: 'palmarosa oil', inciEu: 'Cymbopogon Martini Oil',
    inciUs: 'Cymbopogon Martini Oil', cas: ['8014-19-5', '84649-81-0'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'patchouli-oil', group: 'essential-oil', name: 'patchouli oil', inciEu: 'Pogostemon Cablin Oil',
    inciUs: 'Pogostemon Cablin Oil', cas: ['8014-09-3', '84238-39-1'], allergenEntryId: 'pogostemon-cablin-oil',
    source: 'cosing3', confidence: 'read',
  },
  {
    id: 'ylang-ylang-oil', group: 'essential-oil', name: 'ylang ylang oil', inciEu: 'Cananga Odorata Flower Oil',
    inciUs: 'Cananga Odorata Flower Oil', cas: ['83863-30-3', '8006-81-3', '68606-83-7', '93686-30-7'],
    allergenEntryId: 'cananga-odorata-oil-extract', source: 'cosing3', confidence: 'read',
  },
  {
    id: 'clove-bud-oil', group: 'essential-oil', name: 'clove bud oil', inciEu: 'Eugenia Caryophyllus Bud Oil',
    inciUs: 'Eugenia Caryophyllus (Clove) Bud Oil', cas: ['84961-50-2', '8000-34-8'],
    allergenEntryId: 'eugenia-caryophyllus-oil', source: 'cosing3', confidence: 'read',
  },
  {
    id: 'cinnamon-bark-oil', group: 'essential-oil', name: 'cinnamon bark oil',
    inciEu: 'Cinnamomum Zeylanicum Bark Oil', inciUs: 'Cinnamomum Zeylanicum Bark Oil',
    cas: ['8015-91-6', '84649-98-9'], allergenEntryId: 'cinnamomum-zeylanicum-bark-oil', source: 'cosing3',
    confidence: 'read',
  },
  {
    id: 'cassia-oil', group: 'essential-oil', name: 'cassia oil', inciEu: 'Cinnamomum Cassia Leaf Oil',
    inciUs: 'Cinnamomum Cassia Leaf Oil', cas: ['8007-80-5', '84961-46-6'],
    allergenEntryId: 'cinnamomum-cassia-leaf-oil', source: 'cosing3', confidence: 'read',
  },
  {
    id: 'atlas-cedarwood-oil', group: 'essential-oil', name: 'Atlas cedarwood oil',
    inciEu: 'Cedrus Atlantica Wood Oil', inciUs: 'Cedrus Atlantica Wood Oil', cas: ['92201-55-3', '8023-85-6'],
    allergenEntryId: 'cedrus-atlantica-oil-extract', source: 'cosing3', confidence: 'read',
  },
  {
    id: 'virginian-cedarwood-oil', group: 'essential-oil', name: 'Virginian cedarwood oil',
    inciEu: 'Juniperus Virginiana Oil', inciUs: 'Juniperus Virginiana Oil', cas: ['8000-27-9', '85085-41-2'],
    allergenEntryId: 'juniperus-virginiana-oil', source: 'cosing3', confidence: 'read',
  },
  {
    id: 'sandalwood-oil-east-indian', group: 'essential-oil', name: 'sandalwood oil (East Indian)',
    inciEu: 'Santalum Album Oil', inciUs: 'Santalum Album (Sandalwood) Oil', cas: ['8006-87-9', '84787-70-2'],
    allergenEntryId: 'santalum-album-oil', source: 'cosing3', confidence: 'read',
  },
  {
    id: 'rose-otto', group: 'essential-oil', name: 'rose otto', inciEu: 'Rosa Damascena Flower Oil',
    inciUs: 'Rosa Damascena Flower Oil', cas: ['8007-01-0', '90106-38-0'], allergenEntryId: 'rose-flower-oil-extract',
    note: 'Methyl eugenol', source: 'cosing3', confidence: 'read',
  },
  {
    id: 'jasmine-absolute', group: 'essential-oil', name: 'jasmine absolute',
    inciEu: 'Jasminum Officinale Flower Extract', inciUs: 'Jasminum Officinale (Jasmine) Flower Extract',
    cas: ['90045-94-6'], allergenEntryId: 'jasmine-oil-extract', source: 'cosing3', confidence: 'read',
  },
  {
    id: 'frankincense-oil', group: 'essential-oil', name: 'frankincense oil', inciEu: 'Boswellia Carterii Oil',
    inciUs: 'Boswellia Carterii Oil', cas: ['8050-07-5', '89957-98-2'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'clary-sage-oil', group: 'essential-oil', name: 'clary sage oil', inciEu: 'Salvia Sclarea Oil',
    inciUs: 'Salvia Sclarea (Clary) Oil', cas: ['8016-63-5'], note: 'Sclareol, linalool, linalyl acetate are entries',
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'juniper-berry-oil', group: 'essential-oil', name: 'juniper berry oil',
    inciEu: 'Juniperus Communis Fruit Oil', inciUs: 'Juniperus Communis Fruit Oil', cas: ['8002-68-4'],
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'roman-chamomile-oil', group: 'essential-oil', name: 'Roman chamomile oil',
    inciEu: 'Anthemis Nobilis Flower Oil', inciUs: 'Anthemis Nobilis Flower Oil', cas: ['8015-92-7'],
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'german-chamomile-oil', group: 'essential-oil', name: 'German chamomile oil',
    inciEu: 'Chamomilla Recutita Flower Oil', inciUs: 'Chamomilla Recutita (Matricaria) Flower Oil',
    cas: ['8002-66-2'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'vetiver-oil', group: 'essential-oil', name: 'vetiver oil', inciEu: 'Vetiveria Zizanoides Root Oil',
    inciUs: 'Vetiveria Zizanoides Root Oil', cas: ['8016-96-4'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'litsea-oil-may-chang', group: 'essential-oil', name: 'litsea oil (may chang)',
    inciEu: 'Litsea Cubeba Fruit Oil', inciUs: 'Litsea Cubeba Fruit Oil', cas: ['68855-99-2'], note: 'Citral',
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'wintergreen-oil', group: 'essential-oil', name: 'wintergreen oil', inciEu: 'Gaultheria Procumbens Leaf Oil',
    inciUs: 'Gaultheria Procumbens (Wintergreen) Leaf Oil', cas: ['68917-75-9', '90045-28-6'],
    note: 'Nearly pure methyl salicylate', source: 'memory', confidence: 'memory',
  },
  {
    id: 'ginger-oil', group: 'essential-oil', name: 'ginger oil', inciEu: 'Zingiber Officinale Root Oil',
    inciUs: 'Zingiber Officinale (Ginger) Root Oil', cas: ['8007-08-7'], source: 'memory', confidence: 'memory',
  },
  {
    id: 'vanilla-extract', group: 'essential-oil', name: 'vanilla extract',
    inciEu: 'Vanilla Planifolia Fruit Extract', inciUs: 'Vanilla Planifolia Fruit Extract', cas: ['8024-06-4'],
    note: 'Vanillin is entry 346', source: 'memory', confidence: 'memory',
  },
  {
    id: 'titanium-dioxide', group: 'colourant', name: 'titanium dioxide', inciEu: 'CI 77891',
    inciUs: 'Titanium Dioxide', cas: ['13463-67-7'], source: 'cosing4', confidence: 'read',
  },
  {
    id: 'iron-oxide-red', group: 'colourant', name: 'iron oxide red', inciEu: 'CI 77491', inciUs: 'Iron Oxides',
    cas: ['1309-37-1'], source: 'cosing4', confidence: 'read',
  },
  {
    id: 'iron-oxide-yellow', group: 'colourant', name: 'iron oxide yellow', inciEu: 'CI 77492', inciUs: 'Iron Oxides',
    cas: ['51274-00-1'], source: 'cosing4', confidence: 'read',
  },
  {
    id: 'iron-oxide-black', group: 'colourant', name: 'iron oxide black', inciEu: 'CI 77499', inciUs: 'Iron Oxides',
    cas: ['1317-61-9'], source: 'cosing4', confidence: 'read',
  },
  {
    id: 'ultramarine', group: 'colourant', name: 'ultramarine', inciEu: 'CI 77007', inciUs: 'Ultramarines',
    cas: ['57455-37-5'], note: 'US: not for lips (memory)', source: 'cosing4', confidence: 'read',
  },
  {
    id: 'chromium-oxide-green', group: 'colourant', name: 'chromium oxide green', inciEu: 'CI 77288',
    inciUs: 'Chromium Oxide Greens', cas: ['1308-38-9'], note: 'US: not for lips (memory)', source: 'cosing4',
    confidence: 'read',
  },
  {
    id: 'carmine', group: 'colourant', name: 'carmine', inciEu: 'CI 75470', inciUs: 'Carmine', cas: ['1390-65-4'],
    note: 'CI number read in cosing4', source: 'memory', confidence: 'memory',
    evidence: { inciEu: { source: 'cosing4', confidence: 'read' } },
  },
  {
    id: 'annatto', group: 'colourant', name: 'annatto', inciEu: 'CI 75120', inciUs: 'Annatto', cas: ['1393-63-1'],
    source: 'cosing4', confidence: 'read',
  },
  {
    id: 'beta-carotene', group: 'colourant', name: 'beta-carotene', inciEu: 'CI 40800', inciUs: 'Beta-Carotene',
    cas: ['7235-40-7'], source: 'cosing4', confidence: 'read',
  },
  {
    id: 'curcumin', group: 'colourant', name: 'curcumin', inciEu: 'CI 75300', cas: ['458-37-7'],
    note: 'Not a listed US cosmetic colour (memory).', source: 'cosing4', confidence: 'read',
  },
];

export const inciRules: readonly InciRule[] = [
  {
    id: 'glossary',
    text: 'EU and Northern Ireland: print the common ingredient name of the glossary in force. Implementing Decision (EU) 2025/1175 of 16 June 2025 repealed 2022/677; economic operators had 12 months. The application date (about 30 July 2026) was not read.',
    source: 'eu-2025-1175', confidence: 'read',
  },
  {
    id: 'art33',
    text: 'The glossary name applies to products placed on the market at the latest 12 months after publication of the glossary.',
    source: 'eu-1223-art-33', confidence: 'read',
  },
  {
    id: 'no-name',
    text: 'If there is no glossary name, a name from a generally accepted nomenclature is used (Art. 19(6)).',
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'trivial-latin',
    text: 'EU uses Latin trivial names: Aqua, Cera Alba, Mel, Lac, Maris Sal, Paraffinum Liquidum, Adeps Bovis. US: Water, Beeswax, Honey, Milk, Sea Salt, Mineral Oil, Tallow.',
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'botanical',
    text: 'Botanicals: EU Latin binomial + plant part + form. US: Latin binomial (Common Name) + plant part + form.',
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'dual',
    text: "One label for both markets commonly prints both: 'Aqua (Water)', 'Parfum (Fragrance)', 'CI 77891 (Titanium Dioxide)'.",
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'colour', text: 'EU: colourants (not for hair) by CI number where one exists. US: by the FDA listed name.',
    source: 'eu-2025-1175', confidence: 'read',
  },
  {
    id: 'perfume',
    text: "Perfume and aromatic compositions and their raw materials: 'Parfum' or 'Aroma' (EU), 'Fragrance' or 'Flavor' (US). Annex III allergens are named as well in the EU.",
    source: 'eu-1223-art-19', confidence: 'read',
  },
  {
    id: 'soap',
    text: 'Cold-process soap: name what is in the finished bar (Sodium Olivate, Sodium Cocoate, Glycerin, Aqua, unsaponified surplus oils), or, as many makers do, what was put in (oils, Aqua, Sodium Hydroxide). The ingredient order counts weights at the time of addition.',
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'nano', text: "Nanomaterials: the name followed by '(nano)' in the EU.", source: 'memory',
    confidence: 'memory',
  },
  {
    id: 'case', text: "Letter case is free; matching should ignore case and spacing around '/'.", source: 'memory',
    confidence: 'memory',
  },
];

export const inciCasTraps: readonly InciCasTrap[] = [
  {
    id: 'cas-9005-25-8', cas: '9005-25-8', tellApartBy: ['name'],
    inciNameIds: ['corn-starch', 'tapioca-starch', 'potato-starch', 'rice-starch'], source: 'memory',
    confidence: 'memory',
  },
  {
    id: 'cas-72968-50-4', cas: '72968-50-4', tellApartBy: ['plantPart'],
    inciNameIds: ['bitter-orange-oil', 'neroli-oil'], source: 'cosing3', confidence: 'read',
  },
  {
    id: 'cas-84696-25-3', cas: '84696-25-3', tellApartBy: ['process'], inciNameIds: ['neem-oil'],
    note: 'Also the number of the prohibited margosa extract (Annex II 1716): neem kernels extracted with water and further processed with organic solvents.',
    source: 'memory', confidence: 'memory',
  },
  {
    id: 'cas-84696-47-9', cas: '84696-47-9', tellApartBy: ['plantPart'], inciNameIds: ['rosehip-oil'],
    note: 'Also the number of the rose flower oil of allergen entry rose-flower-oil-extract.', source: 'cosing3',
    confidence: 'read',
  },
];

export const inciSources: readonly ReferenceSource[] = [
  {
    id: 'eu-2025-1175',
    title: 'Commission Implementing Decision (EU) 2025/1175 of 16 June 2025, glossary of common ingredient names, repealing Implementing Decision (EU) 2022/677',
    where: 'Official Journal of the European Union, 2025; recitals read, the name table not read', read: true,
  },
  {
    id: 'eu-1223-art-33',
    title: 'Regulation (EC) No 1223/2009, Article 33 (glossary; names apply to products placed on the market at the latest 12 months after publication)',
    where: 'legislation.gov.uk eur/2009/1223/article/33', read: true,
  },
  {
    id: 'cosing3',
    title: 'European Commission cosmetic ingredient database: Annex III list, export 25 December 2025 (names and CAS numbers of the entry)',
    where: 'European Commission, CosIng, Annex III', read: true,
  },
  {
    id: 'cosing5', title: 'European Commission cosmetic ingredient database: Annex V list, export early 2024',
    where: 'European Commission, CosIng, Annex V', read: true,
  },
  {
    id: 'cosing4',
    title: 'European Commission cosmetic ingredient database: Annex IV list, export early 2024 (colour index numbers)',
    where: 'European Commission, CosIng, Annex IV', read: true,
  },
  {
    id: 'glossary-old', title: "EU glossary row 'AQUA' (INN name: water), as reported from the published inventory",
    where: 'Decision 96/335/EC inventory as reported', read: true,
  },
  {
    id: 'catalogue', title: 'Name and CAS seen together in several public ingredient lists (not an official list)',
    where: 'public ingredient lists', read: true,
  },
  { id: 'sccs-1681-25', title: 'SCCS/1681/25 (tea tree oil) and ECHA CLH record', where: 'SCCS, ECHA', read: true },
  {
    id: 'eu-1223-art-19',
    title: 'Regulation (EC) No 1223/2009, Article 19, as set out by national authorities (Austria, Cyprus) and UK government answers',
    where: 'public authority pages', read: true,
  },
  { id: 'memory', title: 'From memory, not confirmed in a printed text', where: 'not seen in print', read: false },
];
