/** Many constructions ask the same of one sentence: the answer is worked out once and kept as long as the sentence. */

/** Answers are kept on what was asked about, in a field that nobody else sees: quicker to find than in a map of all. */
class Bearer {
  constructor(bearer: object) {
    // biome-ignore lint/correctness/noConstructorReturn: the field goes onto the object that is handed in.
    return bearer;
  }
}
class Remembering extends Bearer {
  #answers: unknown[] = [];

  static answersOf(about: object): unknown[] {
    if (!(#answers in about)) new Remembering(about);
    return (about as Remembering).#answers;
  }

  static forget(about: object): void {
    if (#answers in about) (about as Remembering).#answers = [];
  }
}

/** Stands for an answer that is nothing. */
const NOTHING = Symbol('nothing');

let questions = 0;

/** The same function, with its answers kept by the identity of what is asked about, which must not change. */
export function remembered<Key extends object, Answer>(ask: (about: Key) => Answer): (about: Key) => Answer {
  const question = questions++;
  return (about) => {
    const answers = Remembering.answersOf(about);
    const known = answers[question];
    if (known !== undefined) return (known === NOTHING ? undefined : known) as Answer;
    const answer = ask(about);
    // No holes: a list without them is read faster.
    while (answers.length < question) answers.push(undefined);
    answers[question] = answer === undefined ? NOTHING : answer;
    return answer;
  };
}

/** Lets go of all that was found out about something; whoever asks again finds it out again. */
export const forget = (about: object): void => Remembering.forget(about);
