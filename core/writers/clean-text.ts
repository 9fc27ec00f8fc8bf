/**
 * A text fit for any file: line breaks and tabs fold to one space, other control characters go, and what no encoding can hold
 * (half a surrogate pair, U+FFFE, U+FFFF) becomes U+FFFD.
 */
export function cleanText(text: string): string {
  return text
    .replace(/[\t\n\v\f\r\u0085\u2028\u2029]+/g, ' ')
    .replace(/\p{Cc}/gu, '')
    .replace(/[\p{Cs}\ufffe\uffff]/gu, '\ufffd');
}
