/**
 * Bench or maker flow through IV catheters, ml/min, as printed by each source read. The numbers differ between sources:
 * only their order is used.
 */
import type { FlowRow } from './rows.ts';

export const FLOW_SOURCES = ['hilbert', 'ivflow', 'ivcolde', 'sinai', 'lb3'] as const;

export const FLOW: readonly FlowRow[] = [
  { gauge: 14, mlPerMinute: [343, 240, 286] },
  { gauge: 16, mlPerMinute: [196, 180, 220, 167] },
  { gauge: 17, mlPerMinute: [128] },
  { gauge: 18, mlPerMinute: [96, 90, 105, 100] },
  { gauge: 20, mlPerMinute: [61, 60, 60, 67] },
  { gauge: 22, mlPerMinute: [36, 36, 35, 45] },
  { gauge: 24, mlPerMinute: [22, 20] },
  { gauge: 26, mlPerMinute: [13] },
];
