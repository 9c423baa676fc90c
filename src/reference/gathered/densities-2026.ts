/**
 * Densities of fats and oils by temperature, gathered from several publications; each row names its own.
 * A relative density is a ratio to water at the temperature given, where the source says which.
 */
import type { ReferenceSource, SourcedRow } from '../sourced-row.ts';

export interface DensityRow extends SourcedRow {
  readonly material: string;
  readonly temperatureCelsius: number;
  readonly minDensityGramsPerMl?: number;
  readonly maxDensityGramsPerMl?: number;
  readonly minRelativeDensity?: number;
  readonly maxRelativeDensity?: number;
  readonly relativeToWaterAtCelsius?: number;
}

export interface DensityTemperatureRule extends SourcedRow {
  readonly text: string;
  readonly slopeGramsPerMlPerCelsius?: number;
  readonly points?: readonly { readonly temperatureCelsius: number; readonly densityGramsPerMl: number }[];
}

export const densities: readonly DensityRow[] = [
  {
    id: 'shea-butter-unrefined-20-c', material: 'shea butter, unrefined', temperatureCelsius: 20,
    minRelativeDensity: 0.91, maxRelativeDensity: 0.98, source: 'codex-325', confidence: 'read',
  },
  {
    id: 'shea-butter-unrefined-40-c', material: 'shea butter, unrefined', temperatureCelsius: 40,
    minDensityGramsPerMl: 0.89, maxDensityGramsPerMl: 0.93, source: 'codex-325', confidence: 'read',
  },
  {
    id: 'cocoa-butter-solid-15-c', material: 'cocoa butter, solid', temperatureCelsius: 15,
    minDensityGramsPerMl: 0.96, maxDensityGramsPerMl: 0.99, source: 'beckett', confidence: 'read-secondary',
  },
  {
    id: 'cocoa-butter-liquid-40-c', material: 'cocoa butter, liquid', temperatureCelsius: 40,
    minDensityGramsPerMl: 0.88, maxDensityGramsPerMl: 0.9, source: 'beckett', confidence: 'read-secondary',
  },
  {
    id: 'coconut-oil-40-c', material: 'coconut oil', temperatureCelsius: 40, minRelativeDensity: 0.908,
    maxRelativeDensity: 0.921, relativeToWaterAtCelsius: 20, source: 'oil-rel', confidence: 'read-secondary',
  },
  {
    id: 'palm-oil-50-c', material: 'palm oil', temperatureCelsius: 50, minRelativeDensity: 0.891,
    maxRelativeDensity: 0.899, relativeToWaterAtCelsius: 20, source: 'oil-rel', confidence: 'read-secondary',
  },
  {
    id: 'olive-oil-20-c', material: 'olive oil', temperatureCelsius: 20, minRelativeDensity: 0.913,
    maxRelativeDensity: 0.916, source: 'oil-rel', confidence: 'read-secondary',
  },
  {
    id: 'olive-oil-20-c-codex', material: 'olive oil', temperatureCelsius: 20, minRelativeDensity: 0.91,
    maxRelativeDensity: 0.916, source: 'codex-210', confidence: 'memory',
  },
  {
    id: 'sunflower-oil-20-c', material: 'sunflower oil', temperatureCelsius: 20, minRelativeDensity: 0.918,
    maxRelativeDensity: 0.923, source: 'oil-rel', confidence: 'read-secondary',
  },
  {
    id: 'soybean-oil-20-c', material: 'soybean oil', temperatureCelsius: 20, minRelativeDensity: 0.919,
    maxRelativeDensity: 0.925, source: 'oil-rel', confidence: 'read-secondary',
  },
  {
    id: 'rapeseed-oil-20-c', material: 'rapeseed oil', temperatureCelsius: 20, minRelativeDensity: 0.91,
    maxRelativeDensity: 0.92, source: 'oil-rel', confidence: 'read-secondary',
  },
  {
    id: 'peanut-oil-20-c', material: 'peanut oil', temperatureCelsius: 20, minRelativeDensity: 0.912,
    maxRelativeDensity: 0.92, source: 'oil-rel', confidence: 'read-secondary',
  },
  {
    id: 'linseed-oil-20-c', material: 'linseed oil', temperatureCelsius: 20, minRelativeDensity: 0.926,
    maxRelativeDensity: 0.93, source: 'oil-rel', confidence: 'read-secondary',
  },
  {
    id: 'safflower-oil-20-c', material: 'safflower oil', temperatureCelsius: 20, minRelativeDensity: 0.922,
    maxRelativeDensity: 0.927, source: 'oil-rel', confidence: 'read-secondary',
  },
  {
    id: 'water-20-c', material: 'water', temperatureCelsius: 20, minDensityGramsPerMl: 0.998203,
    maxDensityGramsPerMl: 0.998207, source: 'calc', confidence: 'memory',
  },
];

export const densityTemperatureRules: readonly DensityTemperatureRule[] = [
  {
    id: 'density-slope',
    text: 'trade practice slope for liquid oils about -0.00068 kg/l per degC (ISO 6883 / FOSFA usage)',
    slopeGramsPerMlPerCelsius: -0.00068, source: 'codex-210', confidence: 'memory',
  },
  {
    id: 'density-correlation',
    text: 'linear density-temperature correlations exist for coconut and other oils from 24 degC or the melting point to 110 degC (numbers not seen)',
    source: 'noureddini', confidence: 'read',
  },
  {
    id: 'density-slope-example', text: 'olive 0.913 at 20 C gives 0.899 at 40 C and 0.886 at 60 C with that slope',
    points: [
      { temperatureCelsius: 20, densityGramsPerMl: 0.913 },
      { temperatureCelsius: 40, densityGramsPerMl: 0.899 },
      { temperatureCelsius: 60, densityGramsPerMl: 0.886 },
    ],
    source: 'calc', confidence: 'computed',
  },
];

export const densitySources: readonly ReferenceSource[] = [
  {
    id: 'codex-325', title: 'Standard for unrefined shea butter (Saudi copy of CXS 325R-2017)',
    where: 'Saudi public consultation platform', read: true,
  },
  {
    id: 'beckett',
    title: 'Density of cocoa butter after Beckett, Industrial chocolate manufacture and use (secondary)',
    where: 'document-sharing copy quoting the book', read: true,
  },
  {
    id: 'oil-rel', title: 'Relative densities of vegetable oils and conversion example',
    where: 'retailer page quoting the tables', read: true,
  },
  {
    id: 'codex-210', title: 'Codex standard 210-1999 and 33-1981, relative density ranges', where: 'fao.org codex',
    read: false,
  },
  {
    id: 'noureddini',
    title: 'Noureddini, Teoh, Clements 1992, Densities of vegetable oils and fatty acids, JAOCS (abstract only)',
    where: 'doi.org/10.1007/bf02637677', read: true,
  },
  { id: 'calc', title: 'Own computation', where: 'own computation', read: true },
];
