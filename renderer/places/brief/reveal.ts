import { pathText } from '../../../core/brief/path-fault.ts';
import { pathSteps } from '../../project/json-path.ts';

/** The part of the form for a place of the project file: its own row, else the nearest group around it. */
export function partFor(form: HTMLElement, path: string): HTMLElement | null {
  const steps = pathSteps(path);
  for (let length = steps.length; length > 0; length -= 1) {
    const at = pathText(steps.slice(0, length));
    const part = [...form.querySelectorAll<HTMLElement>('[data-field]')].find((element) => element.dataset['field'] === at);
    if (part !== undefined) return part;
  }
  return null;
}

/** Brings a place into sight; `focus`: and puts the hand on it. Does nothing where the hand is on it already. */
export function reveal(form: HTMLElement, path: string, focus: boolean): void {
  const part = partFor(form, path);
  if (part === null || part.contains(document.activeElement)) return;
  part.scrollIntoView({ block: part.offsetHeight > form.offsetHeight / 2 ? 'start' : 'center' });
  if (!focus) return;
  const control = part.matches('fieldset, [tabindex]') && part.dataset['field'] !== path ? part : (part.querySelector<HTMLElement>('input, select') ?? part);
  control.focus({ preventScroll: true });
}
