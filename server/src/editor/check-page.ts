/** What a check is about, as a page. */
import { aboutCheck, CHECKS } from '../checks/index.ts';
import { CAUTION } from '../sizes/index.ts';
import { type Locale, say, tell } from '../texts/index.ts';
import { PAGE } from './texts/help.ts';

/** Undefined when there is no such check. */
export function checkPage(id: string, locale?: Locale): string | undefined {
  const check = CHECKS.find((each) => each.id === id);
  if (check === undefined) return undefined;
  const { title, docs } = aboutCheck(check, locale);
  return [
    `# ${title}`,
    docs,
    say(locale, PAGE[check.kind]),
    say(locale, PAGE.level, { id: check.id, severity: check.severity }),
    `*${tell(CAUTION, locale)}*\n`,
  ].join('\n\n');
}
