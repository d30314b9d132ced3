/** Shapes of the tables' rows. */
import type { Confidence, SourceKey } from '../model.ts';

export interface UspRow {
  /** USP rank: n-0 is 1 − n, a whole number is itself. */
  readonly rank: number;
  readonly metric: number;
  readonly min: number;
  readonly max: number;
  readonly confidence: Confidence;
  readonly sources: readonly SourceKey[];
  readonly note?: string;
}
export interface OversizeRow {
  readonly rank: number;
  readonly min: number;
  readonly max: number;
}
export interface MetricRow {
  readonly metric: number;
  readonly min: number;
  readonly max: number;
  readonly confidence: Confidence;
  readonly sources: readonly SourceKey[];
}
export interface NeedleRow {
  readonly gauge: number;
  readonly metric?: { readonly value: number; readonly confidence: Confidence };
  readonly limits?: {
    readonly min: number;
    readonly max: number;
    readonly innerNormal: number;
    readonly innerThin: number;
    readonly innerWidest?: number;
    readonly confidence: Confidence;
  };
  readonly nominal: {
    readonly outerInch: number;
    readonly innerInch: number;
    readonly outerConfidence: Confidence;
    readonly innerConfidence: Confidence;
  };
}
export interface CannulaRow {
  readonly gauge: number;
  readonly listed: readonly number[];
  readonly min: number;
  readonly max: number;
}
export interface ColourRow {
  readonly gauge: number;
  readonly colour: string;
  readonly confidence: Confidence;
}
export interface WireRow {
  readonly gauge: number;
  readonly inch: number;
}
export interface FlowRow {
  readonly gauge: number;
  readonly mlPerMinute: readonly number[];
}
