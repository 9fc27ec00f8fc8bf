const DIGITS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

/** Bytes as base64 (RFC 4648, section 4), padded. */
export function base64(bytes: Uint8Array): string {
  const out: string[] = [];
  for (let i = 0; i < bytes.length; i += 3) {
    const word = ((bytes[i] ?? 0) << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0);
    const left = bytes.length - i;
    out.push(
      digit(word >> 18) + digit(word >> 12) + (left > 1 ? digit(word >> 6) : '=') + (left > 2 ? digit(word) : '='),
    );
  }
  return out.join('');
}

const digit = (bits: number): string => DIGITS.charAt(bits & 63);
