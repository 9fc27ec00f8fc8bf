/** A text as UTF-8. Half of a surrogate pair, which no UTF-8 can hold, becomes U+FFFD. */
export function utf8(text: string): Uint8Array {
  const out = new Uint8Array(text.length * 3);
  let at = 0;
  for (let index = 0; index < text.length; index += 1) {
    let code = text.charCodeAt(index);
    if (code >= 0xd800 && code <= 0xdfff) {
      const low = text.charCodeAt(index + 1);
      if (code <= 0xdbff && low >= 0xdc00 && low <= 0xdfff) {
        code = 0x10000 + ((code - 0xd800) << 10) + (low - 0xdc00);
        index += 1;
      } else code = 0xfffd;
    }
    if (code < 0x80) out[at++] = code;
    else if (code < 0x800) {
      out[at++] = 0xc0 | (code >> 6);
      out[at++] = 0x80 | (code & 63);
    } else if (code < 0x10000) {
      out[at++] = 0xe0 | (code >> 12);
      out[at++] = 0x80 | ((code >> 6) & 63);
      out[at++] = 0x80 | (code & 63);
    } else {
      out[at++] = 0xf0 | (code >> 18);
      out[at++] = 0x80 | ((code >> 12) & 63);
      out[at++] = 0x80 | ((code >> 6) & 63);
      out[at++] = 0x80 | (code & 63);
    }
  }
  return out.slice(0, at);
}
