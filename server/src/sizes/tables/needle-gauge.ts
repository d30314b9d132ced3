/**
 * Hypodermic needle tubing. `metric`: designated metric size of ISO 9626, mm. `limits`: outer limits and least inner
 * diameters of ISO 9626:1991 + Amd 1, mm, from memory (no text read shows the table). `nominal`: the common regular-wall
 * chart, inches (source nomchart). `innerWidest`: least inner diameter of the widest wall type listed (extra-thin; for 30
 * and 32 G ultra-thin, ISO 9626:2016 as quoted in doi:10.1208/s12249-021-01949-4).
 */
import type { NeedleRow } from './rows.ts';

export const NEEDLE_METRIC_SOURCES = [
  'ISO9626-scope',
  'GBT18457',
  'JPneedle',
  'jawiki',
  'jpnurse',
  'ahn',
] as const;
export const NEEDLE_NOMINAL_SOURCES = ['nomchart', 'irblog', 'catspot', 'tpro'] as const;

// biome-ignore format: one gauge a line
export const NEEDLE_GAUGE: readonly NeedleRow[] = [
  { gauge: 7, nominal: { outerInch: 0.18, innerInch: 0.15, outerConfidence: 'confirmed', innerConfidence: 'single-source' } },
  { gauge: 8, nominal: { outerInch: 0.165, innerInch: 0.135, outerConfidence: 'single-source', innerConfidence: 'single-source' } },
  { gauge: 9, nominal: { outerInch: 0.148, innerInch: 0.118, outerConfidence: 'single-source', innerConfidence: 'single-source' } },
  { gauge: 10, metric: { value: 3.4, confidence: 'confirmed' }, limits: { min: 3.3, max: 3.5, innerNormal: 2.5, innerThin: 2.819, confidence: 'memory' }, nominal: { outerInch: 0.134, innerInch: 0.106, outerConfidence: 'single-source', innerConfidence: 'single-source' } },
  { gauge: 11, metric: { value: 3.0, confidence: 'single-source' }, limits: { min: 2.95, max: 3.15, innerNormal: 2.2, innerThin: 2.464, confidence: 'memory' }, nominal: { outerInch: 0.12, innerInch: 0.094, outerConfidence: 'single-source', innerConfidence: 'single-source' } },
  { gauge: 12, metric: { value: 2.7, confidence: 'single-source' }, limits: { min: 2.65, max: 2.85, innerNormal: 1.95, innerThin: 2.235, confidence: 'memory' }, nominal: { outerInch: 0.109, innerInch: 0.085, outerConfidence: 'single-source', innerConfidence: 'single-source' } },
  { gauge: 13, metric: { value: 2.4, confidence: 'single-source' }, limits: { min: 2.3, max: 2.5, innerNormal: 1.7, innerThin: 1.956, confidence: 'memory' }, nominal: { outerInch: 0.095, innerInch: 0.071, outerConfidence: 'single-source', innerConfidence: 'single-source' } },
  { gauge: 14, metric: { value: 2.1, confidence: 'confirmed' }, limits: { min: 1.95, max: 2.15, innerNormal: 1.5, innerThin: 1.6, innerWidest: 1.727, confidence: 'memory' }, nominal: { outerInch: 0.083, innerInch: 0.063, outerConfidence: 'single-source', innerConfidence: 'single-source' } },
  { gauge: 15, metric: { value: 1.8, confidence: 'confirmed' }, limits: { min: 1.75, max: 1.9, innerNormal: 1.3, innerThin: 1.46, innerWidest: 1.56, confidence: 'memory' }, nominal: { outerInch: 0.072, innerInch: 0.054, outerConfidence: 'single-source', innerConfidence: 'single-source' } },
  { gauge: 16, metric: { value: 1.6, confidence: 'confirmed' }, limits: { min: 1.6, max: 1.69, innerNormal: 1.1, innerThin: 1.283, innerWidest: 1.39, confidence: 'memory' }, nominal: { outerInch: 0.065, innerInch: 0.047, outerConfidence: 'single-source', innerConfidence: 'single-source' } },
  { gauge: 17, metric: { value: 1.4, confidence: 'confirmed' }, limits: { min: 1.4, max: 1.51, innerNormal: 0.95, innerThin: 1.156, innerWidest: 1.244, confidence: 'memory' }, nominal: { outerInch: 0.058, innerInch: 0.042, outerConfidence: 'single-source', innerConfidence: 'single-source' } },
  { gauge: 18, metric: { value: 1.2, confidence: 'confirmed' }, limits: { min: 1.2, max: 1.3, innerNormal: 0.79, innerThin: 0.91, innerWidest: 1.041, confidence: 'memory' }, nominal: { outerInch: 0.05, innerInch: 0.033, outerConfidence: 'single-source', innerConfidence: 'single-source' } },
  { gauge: 19, metric: { value: 1.1, confidence: 'confirmed' }, limits: { min: 1.03, max: 1.1, innerNormal: 0.648, innerThin: 0.75, innerWidest: 0.85, confidence: 'memory' }, nominal: { outerInch: 0.042, innerInch: 0.027, outerConfidence: 'single-source', innerConfidence: 'single-source' } },
  { gauge: 20, metric: { value: 0.9, confidence: 'confirmed' }, limits: { min: 0.86, max: 0.92, innerNormal: 0.56, innerThin: 0.635, innerWidest: 0.687, confidence: 'memory' }, nominal: { outerInch: 0.03575, innerInch: 0.02375, outerConfidence: 'single-source', innerConfidence: 'single-source' } },
  { gauge: 21, metric: { value: 0.8, confidence: 'confirmed' }, limits: { min: 0.8, max: 0.83, innerNormal: 0.49, innerThin: 0.547, innerWidest: 0.61, confidence: 'memory' }, nominal: { outerInch: 0.03225, innerInch: 0.02025, outerConfidence: 'confirmed', innerConfidence: 'confirmed' } },
  { gauge: 22, metric: { value: 0.7, confidence: 'confirmed' }, limits: { min: 0.698, max: 0.73, innerNormal: 0.39, innerThin: 0.44, innerWidest: 0.522, confidence: 'memory' }, nominal: { outerInch: 0.02825, innerInch: 0.01625, outerConfidence: 'single-source', innerConfidence: 'single-source' } },
  { gauge: 23, metric: { value: 0.6, confidence: 'confirmed' }, limits: { min: 0.6, max: 0.673, innerNormal: 0.317, innerThin: 0.37, innerWidest: 0.46, confidence: 'memory' }, nominal: { outerInch: 0.02525, innerInch: 0.01325, outerConfidence: 'single-source', innerConfidence: 'single-source' } },
  { gauge: 24, metric: { value: 0.55, confidence: 'confirmed' }, limits: { min: 0.55, max: 0.58, innerNormal: 0.28, innerThin: 0.343, confidence: 'memory' }, nominal: { outerInch: 0.02225, innerInch: 0.01225, outerConfidence: 'confirmed', innerConfidence: 'single-source' } },
  { gauge: 25, metric: { value: 0.5, confidence: 'confirmed' }, limits: { min: 0.5, max: 0.53, innerNormal: 0.232, innerThin: 0.292, confidence: 'memory' }, nominal: { outerInch: 0.02025, innerInch: 0.01025, outerConfidence: 'confirmed', innerConfidence: 'single-source' } },
  { gauge: 26, metric: { value: 0.45, confidence: 'confirmed' }, limits: { min: 0.44, max: 0.47, innerNormal: 0.232, innerThin: 0.292, confidence: 'memory' }, nominal: { outerInch: 0.01825, innerInch: 0.01025, outerConfidence: 'confirmed', innerConfidence: 'single-source' } },
  { gauge: 27, metric: { value: 0.4, confidence: 'confirmed' }, limits: { min: 0.4, max: 0.42, innerNormal: 0.184, innerThin: 0.241, confidence: 'memory' }, nominal: { outerInch: 0.01625, innerInch: 0.00825, outerConfidence: 'single-source', innerConfidence: 'single-source' } },
  { gauge: 28, metric: { value: 0.36, confidence: 'single-source' }, limits: { min: 0.349, max: 0.37, innerNormal: 0.133, innerThin: 0.19, confidence: 'memory' }, nominal: { outerInch: 0.01425, innerInch: 0.00725, outerConfidence: 'single-source', innerConfidence: 'single-source' } },
  { gauge: 29, metric: { value: 0.33, confidence: 'confirmed' }, limits: { min: 0.324, max: 0.351, innerNormal: 0.133, innerThin: 0.19, confidence: 'memory' }, nominal: { outerInch: 0.01325, innerInch: 0.00725, outerConfidence: 'single-source', innerConfidence: 'single-source' } },
  { gauge: 30, metric: { value: 0.3, confidence: 'confirmed' }, limits: { min: 0.298, max: 0.32, innerNormal: 0.133, innerThin: 0.165, innerWidest: 0.24, confidence: 'memory' }, nominal: { outerInch: 0.01225, innerInch: 0.00625, outerConfidence: 'single-source', innerConfidence: 'single-source' } },
  { gauge: 31, metric: { value: 0.25, confidence: 'single-source' }, limits: { min: 0.254, max: 0.267, innerNormal: 0.114, innerThin: 0.125, confidence: 'memory' }, nominal: { outerInch: 0.01025, innerInch: 0.00525, outerConfidence: 'single-source', innerConfidence: 'single-source' } },
  { gauge: 32, metric: { value: 0.23, confidence: 'single-source' }, limits: { min: 0.229, max: 0.241, innerNormal: 0.089, innerThin: 0.105, innerWidest: 0.146, confidence: 'memory' }, nominal: { outerInch: 0.00925, innerInch: 0.00425, outerConfidence: 'single-source', innerConfidence: 'memory' } },
  { gauge: 33, metric: { value: 0.2, confidence: 'single-source' }, limits: { min: 0.203, max: 0.216, innerNormal: 0.089, innerThin: 0.105, confidence: 'memory' }, nominal: { outerInch: 0.00825, innerInch: 0.00425, outerConfidence: 'memory', innerConfidence: 'memory' } },
  { gauge: 34, metric: { value: 0.18, confidence: 'confirmed' }, nominal: { outerInch: 0.00725, innerInch: 0.00325, outerConfidence: 'confirmed', innerConfidence: 'memory' } },
];
