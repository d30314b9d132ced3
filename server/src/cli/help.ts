/** Examples shown by --help. */

export const CHECK_HELP = `
Examples:
  sizewright check                         every note below this folder
  sizewright check week-1 week-2/quiz.md   a folder and a note
  sizewright check 'lectures/**/*.md'      a pattern; quote it, so that the shell leaves it alone
  sizewright check - < draft.md            standard input
  sizewright check --since main            only what is new since the branch "main"
  sizewright check -r text -r sarif=out.sarif -r junit=out.xml
                                           several reports, each to its file
  git diff --name-only -z | sizewright check --paths-from -

Exit status: 0 nothing at or above the threshold, 1 findings, 2 wrong use or a note that could not be read.`;
