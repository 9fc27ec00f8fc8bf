/** Of what is asked while an answer is awaited, only the last is asked next: a hand moves faster than the work. */
export interface Latest<Ask> {
  ask(what: Ask): void;
  /** Whether something is asked and not answered. */
  busy(): boolean;
}

export function latest<Ask>(answer: (what: Ask) => Promise<void>): Latest<Ask> {
  let running = false;
  let next: { readonly what: Ask } | null = null;
  const run = async (what: Ask): Promise<void> => {
    running = true;
    try {
      await answer(what);
    } finally {
      running = false;
      const then = next;
      next = null;
      if (then !== null) void run(then.what);
    }
  };
  return {
    ask: (what) => {
      if (running) next = { what };
      else void run(what);
    },
    busy: () => running,
  };
}
