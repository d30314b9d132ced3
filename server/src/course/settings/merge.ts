/** Settings files from the outermost folder inwards to what holds for a note: the nearest file decides. */
import type { Context } from '../../mentions/model.ts';
import type { Settings, SettingsFile } from './model.ts';

/** Drops the files that an inner one marked `outermost` cuts off. */
export function inForce<T extends { readonly file: SettingsFile }>(files: readonly T[]): readonly T[] {
  const cut = files.findLastIndex(({ file }) => file.outermost === true);
  return cut < 0 ? files : files.slice(cut);
}

function lowered<T>(names: Readonly<Record<string, T>> | undefined): Record<string, T> {
  return Object.fromEntries(Object.entries(names ?? {}).map(([name, value]) => [name.toLowerCase(), value]));
}

function contextOf(files: readonly SettingsFile[]): Context {
  const assume = Object.assign({}, ...files.map((file) => file.assume));
  const materials = Object.assign({}, ...files.map((file) => lowered(file.names?.materials)));
  const devices = Object.assign({}, ...files.map((file) => lowered(file.names?.devices)));
  const languages = files.findLast((file) => file.languages !== undefined)?.languages;
  return {
    ...assume,
    ...(Object.keys(materials).length > 0 && { materials }),
    ...(Object.keys(devices).length > 0 && { devices }),
    ...(languages !== undefined && { languages }),
  };
}

/** `files` from the outermost inwards, those in force only. */
export function mergeSettings(files: readonly SettingsFile[]): Settings {
  const styles = files.map((file) => file.style).filter((style) => style !== undefined);
  return {
    severity: Object.assign({}, ...files.map((file) => file.checks)),
    ...(styles.length > 0 && { style: Object.assign({}, ...styles) }),
    context: contextOf(files),
  };
}
