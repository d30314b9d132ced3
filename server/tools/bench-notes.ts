/** Invented notes for the bench: the same on every run. A few mention sizes; the rest teach other things. */

/** A small random source (mulberry32), so that the course is the same everywhere. */
export function random(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

const OTHER = [
  'Ask the learner to summarise what the relatives said, then compare it with the written plan.',
  'About 35 % of the teams forgot to ask about allergies before the first dose of 250 mg.',
  'Feedback works best when it is kind, close to the event, and about what was done.',
  'At 14:30 the second nurse read the chart aloud while the first one listened.',
  'Write down who was told, when, and what they were asked to watch for overnight.',
  'The scenario of 2023 was rewritten so that the patient speaks for himself.',
  'Learners who explain the plan to each other remember it 3 weeks later.',
  'Blood pressure was 118/76, the pulse 84 and regular, and the patient felt well.',
  'See the [local guideline](https://example.org/guides/handover) before the session.',
  '**Never** discharge without a named contact; *always* repeat the phone call.',
];

const SIZED = [
  'For rapid transfusion choose a 14 G or 16 G cannula rather than a 20 G.',
  'A 16 Fr urinary catheter is 5.3 mm thick; an 18 Fr one is 6 mm.',
  'Close the skin of the face with 5-0 nylon and the scalp with 3-0.',
  'The higher the gauge, the thinner the needle.',
  'A 22 G needle is thinner than an 18 G needle, so it drips more slowly.',
  'The 0.035 in guidewire passes through a 5 Fr diagnostic catheter.',
  'For an adult, a 7.5 mm ID tracheal tube is common; keep a 7.0 mm ID at hand.',
  'Silk is braided; polypropylene is a monofilament.',
];

const HEADINGS = [
  'Before the session',
  'Talking with relatives',
  'What went well',
  'Debrief',
  'For next time',
];

function pick<T>(list: readonly T[], next: () => number): T {
  return list[Math.floor(next() * list.length)]!;
}

function paragraph(next: () => number, sentence: () => string): string {
  const sentences = Array.from({ length: 3 + Math.floor(next() * 4) }, sentence);
  return next() < 0.25 ? sentences.map((one) => `- ${one}`).join('\n') : sentences.join(' ');
}

/** A note of about `bytes`; `share` of its sentences mention sizes. */
export function makeNote(seed: number, bytes: number, share: number): string {
  const next = random(seed);
  const sentence = () => pick(next() < share ? SIZED : OTHER, next);
  let text = `# Session ${seed}\n\n`;
  while (text.length < bytes) {
    if (next() < 0.15) text += `## ${pick(HEADINGS, next)}\n\n`;
    text += `${paragraph(next, sentence)}\n\n`;
  }
  return text;
}
