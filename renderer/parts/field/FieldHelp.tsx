import { type ReactElement } from 'react';
import { allowedRange, helpOf, type Field, type What } from '../../../core/brief/format/index.ts';
import { limitText, originOf, rules, type RuleId, type RuleRow } from '../../../core/checks/index.ts';
import { say, type StringKey } from '../../../core/text/index.ts';

function ruleWords(id: RuleId): string {
  const row: RuleRow = rules[id];
  const limit = limitText(row.limit);
  const trust = say(`trust.${row.trust}`);
  return say('place-brief.rule', {
    rule: say(`rule.${id}` as StringKey),
    // A limit that is a word alone, such as "report", has no unit.
    limit: /[0-9]/.test(limit) && row.unit !== '' ? `${limit} ${row.unit}` : limit,
    trust: row.source === '' ? trust : `${trust}: ${row.source}`,
  });
}

/** What is allowed, as it is typed here: without the quotes that a text has in the file. */
function allowedWords(what: Extract<What, { readonly allowed: string }>): string {
  switch (what.kind) {
    case 'length':
      return say('place-brief.allow.length', { range: allowedRange(what.range) });
    case 'weight':
      return say('place-brief.allow.weight', { range: allowedRange(what.range) });
    case 'section':
      return say('place-brief.allow.section');
    case 'sheet':
      return say('place-brief.allow.sheet');
    case 'custom-section':
      return say('place-brief.allow.custom-section');
    default:
      return what.allowed;
  }
}

/** What a field is and why it matters, what is allowed, and how far each thing is to be trusted. */
export function FieldHelp({ field, id }: { readonly field: Field; readonly id: string }): ReactElement {
  const origin = originOf(field.pattern);
  return (
    <div className="field-help" id={id}>
      <p>{helpOf(field)}</p>
      {'allowed' in field.what ? <p className="faint">{say('place-brief.allowed', { allowed: allowedWords(field.what) })}</p> : null}
      <ul className="faint">
        {origin?.rules.map((rule) => <li key={rule}>{ruleWords(rule)}</li>)}
        {origin === null || origin.source === null ? null : <li>{say(`place-brief.source.${origin.source}`)}</li>}
      </ul>
    </div>
  );
}
