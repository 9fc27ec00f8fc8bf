/** Lets a person choose one file where the browser has no more than the plain file field; null where they chose none. */
export function chooseFile(): Promise<File | null> {
  return new Promise((done) => {
    const field = document.createElement('input');
    field.type = 'file';
    field.accept = '.json,.penwright,application/json';
    field.addEventListener('change', () => { done(field.files?.[0] ?? null); });
    field.addEventListener('cancel', () => { done(null); });
    field.click();
  });
}
