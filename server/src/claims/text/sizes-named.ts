/** The sizes of a whole note, for a sentence that compares with all of them. */
import type { Mention } from '../../mentions/model.ts';
import type { Device, Size, System } from '../../sizes/model.ts';
import type { Scene } from './scene.ts';

/** The sizes a note names, asked for by system and device; nothing where several devices share the system and none is meant. */
export function sizesNamed(mentions: readonly Mention[]): Scene['named'] {
  const known = new Map<string, readonly Size[]>();
  const find = (system: System, device?: Device): readonly Size[] => {
    const plain = mentions.filter(
      ({ kind, bound, sizes }) => kind !== 'ambiguous' && !bound && sizes[0]?.system === system,
    );
    const devices = new Set(plain.flatMap((mention) => mention.device ?? []));
    const one = devices.size <= 1;
    if (device === undefined && !one) return [];
    const own = plain.filter((mention) => one || mention.device === device).flatMap(({ sizes }) => sizes);
    return [...new Map(own.map((size) => [size.value, size])).values()];
  };
  return (system, device) => {
    const key = `${system} ${device ?? ''}`;
    const found = known.get(key) ?? find(system, device);
    known.set(key, found);
    return found;
  };
}
