/** Of what is asked while an answer is awaited, only the last is asked next: a hand moves faster than the work. */
export interface Latest<Ask> {
  ask(what: Ask): void;
  /** Whether something is asked and not answered. */
  busy(): boolean;
}

/** `answer` works something out, `show` shows it: while it is shown the next is worked out already. */
export function latest<Ask, Answer>(answer: (what: Ask) => Promise<Answer>, show: (what: Ask, answer: Answer) => void): Latest<Ask> {
  let running = false;
  let next: { readonly what: Ask } | null = null;
  const run = async (what: Ask): Promise<void> => {
    running = true;
    let answered: Answer;
    try {
      answered = await answer(what);
    } finally {
      running = false;
      const then = next;
      next = null;
      if (then !== null) void run(then.what);
    }
    show(what, answered);
  };
  return {
    ask: (what) => {
      if (running) next = { what };
      else void run(what);
    },
    busy: () => running,
  };
}
