import { type Scene } from './scene.ts';
import { onScreen } from './scene.ts';

/** Nearer than this to the board's edge, in pixels, a finding's place is brought to the middle. */
const EDGE = 90;

/** Leads the board to the place of the finding that is chosen, from wherever it was chosen. */
export function leadToFinding(scene: Scene): () => void {
  const { desk, state, size } = scene;
  let led: number | null = null;
  const lead = (): void => {
    const { finding } = desk.selection.get();
    const at = finding === null ? null : (desk.worked.get().laid?.findings[finding]?.at ?? null);
    const view = state.view.get();
    if (finding === null) led = null;
    if (finding === led || at === null || view === null) return;
    led = finding;
    const { x, y } = onScreen(scene, at);
    const { width, height } = size();
    if (x < EDGE || y < EDGE || x > width - EDGE || y > height - EDGE) state.view.set({ ...view, middle: at });
  };
  const lets = [desk.selection.subscribe(lead), desk.worked.subscribe(lead), state.view.subscribe(lead)];
  lead();
  return () => { for (const let_ of lets) let_(); };
}
