import { useEffect, useRef } from 'react';
import { fieldAt, labelOf, standingAt, unitsOf, type Field, type Standing } from '../../../core/brief/format/index.ts';
import { type Json } from '../../../core/brief/json/types.ts';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { pathSteps, type Step } from '../../project/json-path.ts';
import { type Units } from '../../worker/protocol.ts';
import { fieldId } from './field-id.ts';
import { useFault } from './use-faults.ts';
import { useProject, useValue } from './use-project.ts';

export interface FieldState {
  readonly path: string;
  readonly field: Field;
  readonly label: string;
  readonly id: string;
  readonly units: Units;
  /** As the file has it; undefined: it does not say. */
  readonly value: Json | undefined;
  /** What holds where the file does not say it. */
  readonly standing: Standing | null;
  /** What is wrong with it, in words; empty: nothing. */
  readonly fault: string;
  /** The next value, one step of undo until the field is left. Undefined takes it out of the file. */
  write(value: Json | undefined): void;
  /** The field is left: what follows is a step of its own. */
  settle(): void;
  /** Leaves the field to its default. */
  restore(): void;
  /** The field is looked at: other places can follow. */
  look(): void;
}

/** Whether a place can stand empty: an entry of a list or of names would go with its value. */
export const isEntry = (steps: readonly Step[], field: Field): boolean => typeof steps.at(-1) === 'number' || field.pattern.endsWith('[*]');

/** A field of the open project by its path. Throws for a path that the format has not. */
export function useField(path: string): FieldState {
  const { session, select } = useDeskWindow();
  const steps = pathSteps(path);
  const field = fieldAt(steps);
  if (field === null) throw new Error(`no field of the format: ${path}`);
  const value = useValue(path);
  const units = useProject((project) => unitsOf(project)) as Units;
  const standing = JSON.parse(useProject((project) => JSON.stringify(standingAt(steps, project)))) as Standing | null;
  const fault = useFault(path);
  const typing = useRef(false);
  const settle = (): void => {
    if (!typing.current) return;
    typing.current = false;
    session.settle();
  };
  // A field that goes from the screen while it is being typed in is left too.
  useEffect(() => () => {
    if (typing.current) session.settle();
    typing.current = false;
  }, [session]);
  const label = labelOf(field);
  return {
    path, field, label, id: fieldId(path), units, value, standing, fault, settle,
    write: (next) => {
      typing.current = true;
      session.setField(path, next, { label: say('place-brief.changed', { field: label }), gesture: `type ${path}` });
    },
    restore: () => {
      settle();
      session.setField(path, undefined, { label: say('place-brief.restored', { field: label }) });
    },
    look: () => { select({ field: path }); },
  };
}
