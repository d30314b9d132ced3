/** What a .vsix holds, and whether that is all right: no sources, no packages, small. */

/** Largest .vsix, bytes. */
export const LARGEST = 1_200_000;

const NEEDED = [
  'extension/package.json',
  'extension/dist/extension.cjs',
  'extension/dist/extension.browser.js',
  'extension/dist/server-node.cjs',
  'extension/dist/server.js',
  'extension/client/media/icon.png',
];

/** Names of the files in a zip archive, from its central directory (PKWARE APPNOTE 4.3.12). */
export function entriesOf(zip: Uint8Array): string[] {
  const view = new DataView(zip.buffer, zip.byteOffset, zip.byteLength);
  const end = lastIndexOf(view, 0x06054b50);
  const count = view.getUint16(end + 10, true);
  const names: string[] = [];
  let at = view.getUint32(end + 16, true);
  for (let i = 0; i < count; i++) {
    const length = view.getUint16(at + 28, true);
    names.push(new TextDecoder().decode(zip.subarray(at + 46, at + 46 + length)));
    at += 46 + length + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return names;
}

function lastIndexOf(view: DataView, signature: number): number {
  for (let at = view.byteLength - 22; at >= 0; at--) if (view.getUint32(at, true) === signature) return at;
  throw new Error('not a zip archive');
}

/** What is wrong with the contents; nothing when all is right. */
export function faults(entries: readonly string[], bytes: number): string[] {
  const missing = NEEDED.filter((name) => !entries.includes(name)).map((name) => `missing: ${name}`);
  const foreign = entries
    .filter((name) => /\.ts$|\.map$|node_modules|tests\/|tsconfig/.test(name))
    .map((name) => `should not be inside: ${name}`);
  const heavy = bytes > LARGEST ? [`too large: ${bytes} bytes, at most ${LARGEST}`] : [];
  return [...missing, ...foreign, ...heavy];
}
