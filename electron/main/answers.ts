import { type Desk } from '../bridge/desk.ts';
import { type RequestName } from '../bridge/names.ts';

/** What the machine answers to each request of the page. */
export type Answers = { readonly [N in RequestName]: (...args: Readonly<Parameters<Desk[N]>>) => ReturnType<Desk[N]> };

/** Asks a person for a path; null where they gave none. Paths come from here alone. */
export interface PathDialogs {
  openProject(): Promise<string | null>;
  /** `suggested`: a file name, or a path where the project has one. */
  saveProject(suggested: string): Promise<string | null>;
  packageFolder(): Promise<string | null>;
}
