/** The manual page (man(7) format), made from the commands, options and examples themselves. */
import type { Command } from 'commander';
import { CAUTION } from './caution.ts';
import { EXAMPLES } from './help.ts';

/** A line that the formatter takes as text. */
function roff(text: string): string {
  return text
    .replaceAll('\\', '\\e')
    .replaceAll('-', '\\-')
    .replaceAll('"', '\\(dq')
    .replace(
      /[^\u0000-\u007f]/gu,
      (sign) => `\\[u${sign.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')}]`,
    )
    .replace(/^([.'])/gm, '\\&$1');
}

function commandPart(command: Command): string[] {
  const names = command.registeredArguments.map((argument) =>
    argument.required ? argument.name() : `[${argument.name()}]`,
  );
  return [
    `.SS ${roff([command.name(), ...names].join(' '))}`,
    roff(command.description()),
    ...command.options.flatMap(({ flags, description }) => ['.TP', `.B ${roff(flags)}`, roff(description)]),
  ];
}

/** The page as text; the same for the same program. */
export function manual(program: Command, version: string): string {
  const examples = Object.values(EXAMPLES)
    .flat()
    .flatMap(([written, what]) => ['.TP', `.B ${roff(written)}`, roff(what)]);
  return [
    `.TH SIZEWRIGHT 1 "" "sizewright ${version}"`,
    '.SH NAME',
    `sizewright \\- ${roff(program.description())}`,
    '.SH SYNOPSIS',
    '.B sizewright',
    '.I COMMAND',
    '[OPTIONS] [PATHS...]',
    '.SH COMMANDS',
    ...program.commands.flatMap(commandPart),
    '.SH EXAMPLES',
    ...examples,
    '.SH EXIT STATUS',
    '.TP',
    '0',
    'Nothing at or above the threshold.',
    '.TP',
    '1',
    'Findings.',
    '.TP',
    '2',
    'Wrong use, or a note that could not be read.',
    '.SH ENVIRONMENT',
    '.TP',
    '.B NO_COLOR',
    'When set, no colour is used.',
    '.TP',
    '.B SOURCE_DATE_EPOCH',
    'Seconds since 1970 to stand as the time of a JUnit report.',
    '.TP',
    '.B SIZEWRIGHT_CODE_CACHE',
    'When \\(lqoff\\(rq, the compiled form of the program is not kept in the cache folder of the user.',
    '.SH CAUTION',
    roff(CAUTION),
    '',
  ].join('\n');
}
