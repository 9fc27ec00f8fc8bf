import { type z } from 'zod';
import { say } from '../../text/index.ts';
import { showValue } from '../json/show-value.ts';
import { type Json } from '../json/types.ts';
import { type FaultCode, type Path, type PathFault } from '../path-fault.ts';

type Issue = z.core.$ZodIssue;

function valueAt(project: Json, path: Path): unknown {
  return path.reduce<unknown>((value, step) => (typeof value === 'object' && value !== null ? Reflect.get(value, step) : undefined), project);
}

function kindFault(path: Path, value: unknown, expected: string): PathFault {
  const isList = expected === 'array';
  if (value === undefined) {
    return { path, code: 'fault.missing', params: { allowed: say(isList ? 'allowed.list' : 'allowed.object') } };
  }
  return { path, code: isList ? 'fault.list' : 'fault.object', params: { value: showValue(value) } };
}

function choiceFault(path: Path, value: unknown, options: readonly unknown[]): PathFault {
  const allowed = options.map(String).join(', ');
  return value === undefined
    ? { path, code: 'fault.missing', params: { allowed } }
    : { path, code: 'fault.choice', params: { value: showValue(value), allowed } };
}

interface OurParams {
  readonly code: FaultCode;
  readonly words: PathFault['params'];
}

/** What the validation library found, in our own codes: its messages reach nobody. Throws on a kind of issue that no schema here makes. */
export function issueFaults(issue: Issue, project: Json): readonly PathFault[] {
  const path = issue.path as Path;
  const value = valueAt(project, path);
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => ({ path: [...path, key], code: 'fault.unknown', params: { allowed: issue.message } }));
    case 'invalid_type':
      return [kindFault(path, value, issue.expected)];
    case 'invalid_union':
      return [choiceFault(path, value, 'options' in issue && Array.isArray(issue.options) ? issue.options : [])];
    case 'custom': {
      const { code, words } = issue.params as unknown as OurParams;
      const shown = Array.isArray(value) && code === 'fault.count' ? value.length : showValue(value);
      return [{ path, code, params: { value: shown, ...words } }];
    }
    default:
      throw new Error(`no words for ${issue.code} at ${path.join('.')}`);
  }
}
