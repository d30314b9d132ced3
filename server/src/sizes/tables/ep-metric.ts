/**
 * European Pharmacopoeia metric (decimetric) numbers: the number is the least diameter in tenths of a millimetre,
 * the next number the exclusive upper limit, mm. Metric 2.5 has no USP size.
 */
import type { MetricRow } from './rows.ts';

export const EP_METRIC: readonly MetricRow[] = [
  { metric: 0.1, min: 0.01, max: 0.019, confidence: 'confirmed', sources: ['PhEur-table', 'dewiki', 'chu'] },
  { metric: 0.2, min: 0.02, max: 0.029, confidence: 'confirmed', sources: ['PhEur-table', 'dewiki', 'chu'] },
  { metric: 0.3, min: 0.03, max: 0.039, confidence: 'confirmed', sources: ['PhEur-table', 'dewiki', 'chu'] },
  { metric: 0.4, min: 0.04, max: 0.049, confidence: 'confirmed', sources: ['PhEur-table', 'dewiki', 'chu'] },
  { metric: 0.5, min: 0.05, max: 0.069, confidence: 'confirmed', sources: ['PhEur-table', 'dewiki', 'chu'] },
  { metric: 0.7, min: 0.07, max: 0.099, confidence: 'confirmed', sources: ['PhEur-table', 'dewiki', 'chu'] },
  { metric: 1, min: 0.1, max: 0.149, confidence: 'confirmed', sources: ['PhEur-table', 'dewiki', 'chu'] },
  { metric: 1.5, min: 0.15, max: 0.199, confidence: 'confirmed', sources: ['PhEur-table', 'dewiki', 'chu'] },
  { metric: 2, min: 0.2, max: 0.249, confidence: 'confirmed', sources: ['PhEur-table', 'dewiki', 'chu'] },
  {
    metric: 2.5,
    min: 0.25,
    max: 0.299,
    confidence: 'single-source',
    sources: ['PhEur-table', 'dewiki', 'chu'],
  },
  { metric: 3, min: 0.3, max: 0.349, confidence: 'single-source', sources: ['PhEur-table', 'dewiki', 'chu'] },
  { metric: 3.5, min: 0.35, max: 0.399, confidence: 'confirmed', sources: ['PhEur-table', 'dewiki', 'chu'] },
  { metric: 4, min: 0.4, max: 0.499, confidence: 'confirmed', sources: ['PhEur-table', 'dewiki', 'chu'] },
  { metric: 5, min: 0.5, max: 0.599, confidence: 'confirmed', sources: ['PhEur-table', 'dewiki', 'chu'] },
  { metric: 6, min: 0.6, max: 0.699, confidence: 'confirmed', sources: ['PhEur-table', 'dewiki', 'chu'] },
  { metric: 7, min: 0.7, max: 0.799, confidence: 'confirmed', sources: ['PhEur-table', 'dewiki', 'chu'] },
  { metric: 8, min: 0.8, max: 0.899, confidence: 'confirmed', sources: ['PhEur-table', 'dewiki', 'chu'] },
  { metric: 9, min: 0.9, max: 0.999, confidence: 'memory', sources: ['PhEur-table', 'dewiki', 'chu'] },
  { metric: 10, min: 1.0, max: 1.099, confidence: 'memory', sources: ['PhEur-table', 'dewiki', 'chu'] },
];
