/** Base64 without help: these layers know neither Node nor a browser. */
const DIGITS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

/** Base64 (RFC 4648, section 4) of the UTF-8 bytes of a text. */
export function base64(text: string): string {
  const bytes = utf8(text);
  let out = '';
  for (let i = 0; i < bytes.length; i += 3) {
    const group = (bytes[i]! << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0);
    out += DIGITS[group >> 18]! + DIGITS[(group >> 12) & 63]!;
    out += i + 1 < bytes.length ? DIGITS[(group >> 6) & 63]! : '=';
    out += i + 2 < bytes.length ? DIGITS[group & 63]! : '=';
  }
  return out;
}

function utf8(text: string): number[] {
  const bytes: number[] = [];
  for (const character of text) {
    const code = character.codePointAt(0)!;
    if (code < 0x80) bytes.push(code);
    else if (code < 0x800) bytes.push(0xc0 | (code >> 6), tail(code));
    else if (code < 0x10000) bytes.push(0xe0 | (code >> 12), tail(code >> 6), tail(code));
    else bytes.push(0xf0 | (code >> 18), tail(code >> 12), tail(code >> 6), tail(code));
  }
  return bytes;
}

const tail = (bits: number): number => 0x80 | (bits & 63);
