/** What a template says of itself in sentences. */
import { inches, radians } from '../../base/quantity.ts';
import { printSize } from '../../drafting/kit.ts';
import { type Cope, type Template, type TemplateUse, type Wrap } from '../../shop/templates/index.ts';
import { say } from '../../text/index.ts';
import { printAngle, printDecimalInches } from '../../units/index.ts';

/** Paragraphs: the cope, how to use the paper, and every piece that it serves. */
export function templateWords(units: 'in' | 'mm', template: Template, wrap: Wrap): readonly string[] {
  const { cope, sections, uses } = template;
  const size = (value: number): string => printSize({ units }, value, true);
  return [
    `${say('template.pipe', { sections: sections.join(', '), size: size(2 * cope.branch) })} ${copeWords(cope, size)}`,
    say('template.edge', { size: size(wrap.lengthEnd), end: say(`template.end.${endOf(cope)}`) }),
    say('template.around', { around: units === 'in' ? `${printDecimalInches(wrap.around)} in` : size(wrap.around) }),
    say('template.how'),
    ...usesByWay(uses),
    say('template.caution'),
  ];
}

const endOf = (cope: Cope): 'axis' | 'long' => (cope.kind === 'mitre' && cope.lies !== 'frame' ? 'axis' : 'long');

function copeWords(cope: Cope, size: (value: number) => string): string {
  const bend = cope.bend === null ? '' : ` ${say('template.bend', { radius: size(cope.bend) })}`;
  if (cope.kind === 'mitre') return `${say(`template.mitre.${cope.lies}`, { angle: printAngle(cope.angle) })}${bend}`;
  const header = size(2 * cope.header);
  const angle = printAngle(radians(Math.PI / 2 - cope.slope));
  return `${cope.slope === 0 ? say('template.square', { header }) : say('template.leaning', { header, angle })}${bend}`;
}

/** Marks that use the template in one way share a sentence. */
function usesByWay(uses: readonly TemplateUse[]): readonly string[] {
  const ways = new Map<string, TemplateUse[]>();
  for (const use of uses) {
    const way = `${String(use.ends)} ${use.other ?? ''} ${String(use.turn)}`;
    const group = ways.get(way);
    if (group === undefined) ways.set(way, [use]);
    else group.push(use);
  }
  return [...ways.values()].map((group) => {
    const { ends, other, turn } = group[0]!;
    const marks = group.map(({ mark, quantity }) => say('template.mark', { mark, quantity })).join(', ');
    if (ends === 2) return say(turn === 180 ? 'template.both-turned' : 'template.both', { marks });
    if (other === null) return say('template.one', { marks });
    return say(turn === 180 ? 'template.other-turned' : 'template.other', { marks, other });
  });
}

/** Inches of the bars that prove the scale: 4 in, and 100 mm too where the project is metric. */
export const checkBars = (units: 'in' | 'mm'): readonly { readonly length: number; readonly words: string }[] => [
  { length: inches(4), words: say('template.bar-in') },
  ...(units === 'mm' ? [{ length: inches(100 / 25.4), words: say('template.bar-mm') }] : []),
];
