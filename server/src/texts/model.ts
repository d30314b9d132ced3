/** What texts for readers are made of: templates in each language, and what fills them. */

/** Language of the words a reader is shown. It never changes what is read or judged. */
export type Locale = 'en' | 'de';

/** One sentence or part of one, in every language. `{name}` is a slot; `{^name}` is filled with a capital letter. */
export type Text = Readonly<Record<Locale, string>>;

/** Texts of one idea, by id. */
export type Texts = Readonly<Record<string, Text>>;

/** A template with what fills its slots, not yet in any language. */
export interface Phrase {
  readonly text: Text;
  readonly parts: Readonly<Record<string, Part>>;
}

/** Text as it stands in a note or a file: the same in every language. */
export interface Quoted {
  readonly quoted: string;
}

/** Several in a row, with a word or a sign between them. */
export interface Listed {
  readonly listed: readonly Part[];
  readonly by: Text;
}

/** What may fill a slot. Plain English words are looked up in `words`; numbers get the sign of the language. */
export type Part = string | number | Phrase | Quoted | Listed;

/** Names of the slots of a template. */
export type Slots<Template extends string> = Template extends `${string}{${infer Name}}${infer Rest}`
  ? (Name extends `^${infer Bare}` ? Bare : Name) | Slots<Rest>
  : never;
