/** The example projects that come with the program. */
const files = import.meta.glob<string>('../../shared/examples/*.penwright.json', { query: '?raw', import: 'default', eager: true });

export interface Example {
  readonly name: string;
  readonly text: string;
}

export const EXAMPLES: readonly Example[] = Object.entries(files)
  .map(([path, text]) => ({ name: path.replace(/^.*\//, ''), text }))
  .sort((a, b) => (a.name < b.name ? -1 : 1));
