/** Shell completions, made from the commands and options themselves. */
import type { Command } from 'commander';

interface Known {
  readonly command: string;
  readonly about: string;
  readonly options: readonly {
    readonly flag: string;
    readonly about: string;
    readonly choices: readonly string[];
  }[];
}

function knownOf(program: Command): Known[] {
  return program.commands.map((command) => ({
    command: command.name(),
    about: command.description(),
    options: command.options.map(({ long, description, argChoices }) => ({
      flag: long ?? '',
      about: description.split(/[;,(]/)[0]!.trim(),
      choices: argChoices ?? [],
    })),
  }));
}

const quoted = (text: string): string => `'${text.replaceAll("'", "'\\''")}'`;

function bash(all: readonly Known[]): string {
  const cases = all.map(
    ({ command, options }) => `    ${command}) words=${quoted(options.map(({ flag }) => flag).join(' '))} ;;`,
  );
  return `# bash completion for sizewright
_sizewright() {
  local words= current=\${COMP_WORDS[COMP_CWORD]}
  if [ "$COMP_CWORD" -eq 1 ]; then
    words=${quoted(all.map(({ command }) => command).join(' '))}
  else case \${COMP_WORDS[1]} in
${cases.join('\n')}
  esac; fi
  case $current in
    -*) COMPREPLY=($(compgen -W "$words" -- "$current")) ;;
    *) if [ "$COMP_CWORD" -eq 1 ]; then COMPREPLY=($(compgen -W "$words" -- "$current")); else COMPREPLY=($(compgen -f -- "$current")); fi ;;
  esac
}
complete -o filenames -F _sizewright sizewright
`;
}

function zsh(all: readonly Known[]): string {
  const plain = (text: string) => text.replace(/[[\]:']/g, ' ');
  const commands = all.map(({ command, about }) => `    ${quoted(`${command}:${plain(about)}`)}`);
  const cases = all.map(({ command, options }) => {
    const specs = options.map(({ flag, about, choices }) =>
      quoted(`${flag}[${plain(about)}]${choices.length > 0 ? `:value:(${choices.join(' ')})` : ''}`),
    );
    return `    ${command}) _arguments ${[...specs, quoted('*:note:_files')].join(' ')} ;;`;
  });
  return `#compdef sizewright
_sizewright() {
  local -a commands=(
${commands.join('\n')}
  )
  if (( CURRENT == 2 )); then _describe command commands; return; fi
  case $words[2] in
${cases.join('\n')}
  esac
}
compdef _sizewright sizewright
`;
}

function fish(all: readonly Known[]): string {
  const lines = all.flatMap(({ command, about, options }) => [
    `complete -c sizewright -n __fish_use_subcommand -a ${command} -d ${quoted(about)}`,
    ...options.map(({ flag, about: what, choices }) => {
      const values = choices.length > 0 ? ` -x -a ${quoted(choices.join(' '))}` : '';
      return `complete -c sizewright -n '__fish_seen_subcommand_from ${command}' -l ${flag.replace(/^--/, '')} -d ${quoted(what)}${values}`;
    }),
  ]);
  return `# fish completion for sizewright\n${lines.join('\n')}\n`;
}

const SHELLS: Readonly<Record<string, (all: readonly Known[]) => string>> = { bash, zsh, fish };

export const SHELL_NAMES: readonly string[] = Object.keys(SHELLS);

/** A script for the shell to read. */
export function completions(shell: string, program: Command): string {
  return SHELLS[shell]!(knownOf(program));
}
