/** The part of the converter that the tests use; the package ships no types. */
declare module '@lhncbc/ucum-lhc' {
  interface Answer {
    readonly status: 'succeeded' | 'failed' | 'error';
    readonly toVal: number | null;
    readonly msg: readonly string[];
  }
  export const UcumLhcUtils: {
    getInstance(): { convertUnitTo(from: string, value: number, to: string): Answer };
  };
}
