/** A short hash in plain arithmetic (FNV-1a, 64 bits in two halves): same on every machine, no crypto needed. */

const PRIME_LOW = 0x1b3;

/** 16 hexadecimal digits for `text`. Not for secrets. */
export function hash(text: string): string {
  let low = 0x84222325;
  let high = 0xcbf29ce4;
  for (let i = 0; i < text.length; i++) {
    low ^= text.charCodeAt(i);
    // (high:low) × 0x100000001b3, kept to 64 bits.
    const product = (low >>> 0) * PRIME_LOW;
    const carry = Math.floor(product / 0x100000000);
    high = (Math.imul(high, PRIME_LOW) + carry + (low << 8)) | 0;
    low = product | 0;
  }
  return hex(high) + hex(low);
}

function hex(half: number): string {
  return (half >>> 0).toString(16).padStart(8, '0');
}
