/**
 * What a viewer shows for a TEXT of a DXF, after the published rules: `\U+XXXX` is a character by its number, `^` begins a control
 * character and `^ ` is a caret, `%%c %%d %%p` are symbols, `%%nnn` is character number nnn, `%%%` is a percent sign, and `%%o %%u %%k`
 * draw lines over, under and through (DXF Reference, string group codes; AutoCAD help, control codes and special text).
 */
export function shownText(raw: string): string {
  const characters = raw.replace(/\\[Uu]\+([0-9A-Fa-f]{4})/g, (_, code: string) => String.fromCharCode(parseInt(code, 16)));
  const controls = characters.replace(/\^(.)/g, (_, char: string) => (char === ' ' ? '^' : String.fromCharCode(char.charCodeAt(0) ^ 64)));
  return controls.replace(/%%(\d{3}|.)/g, (code, what: string) => SYMBOLS[what.toLowerCase()] ?? (what.length === 3 ? String.fromCharCode(Number(what)) : code));
}

const SYMBOLS: Readonly<Record<string, string>> = { c: 'Ø', d: '°', p: '±', '%': '%', o: '', u: '', k: '' };
