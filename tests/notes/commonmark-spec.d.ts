/** The package brings no types of its own. */
declare module 'commonmark-spec' {
  export const tests: readonly {
    readonly markdown: string;
    readonly html: string;
    readonly section: string;
    readonly number: number;
  }[];
}
