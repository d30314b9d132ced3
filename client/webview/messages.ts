/** What the chart view and the extension say to each other. */
export interface Place {
  readonly line: number;
  readonly character: number;
}

export interface Row {
  readonly label: string;
  readonly system: string;
  readonly device: string;
  /** Millimetres. */
  readonly min: number;
  readonly max: number;
  readonly measure: string;
  readonly hollow: boolean;
  readonly standard: string;
  readonly caution: string;
  readonly runs: 'up' | 'down' | 'split';
  readonly places: readonly {
    readonly uri: string;
    readonly range: { readonly start: Place; readonly end: Place };
  }[];
}

export interface ToChart {
  readonly rows: readonly Row[];
  readonly title: string;
  readonly words: Readonly<
    Record<
      'search' | 'together' | 'zoom' | 'save' | 'empty' | 'none' | 'place' | 'places' | 'hint' | 'caution',
      string
    >
  >;
}

export type FromChart =
  | { readonly kind: 'ready' }
  | { readonly kind: 'open'; readonly uri: string; readonly range: Row['places'][number]['range'] }
  | { readonly kind: 'save'; readonly svg: string };
