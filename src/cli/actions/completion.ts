import type { Io } from '../io.ts';

export type Shell = 'bash' | 'zsh' | 'fish';

/** `completion <shell>`. */
export function completion(io: Io, shell: Shell): void {
  io.out(SCRIPTS[shell]);
}

/*
 * The scripts know nothing of the commands: they hand the words of the line to `roombalance complete`,
 * which prints a candidate a line, behind a tab what it is. Where it prints none, files are offered.
 */

const BASH = `_roombalance() {
  local line word=\${COMP_WORDS[COMP_CWORD]}
  COMPREPLY=()
  while IFS= read -r line; do
    line=\${line%%$'\\t'*}
    case $word in
      [\\"\\']*) COMPREPLY+=("$line") ;;
      *) COMPREPLY+=("$(printf %q "$line")") ;;
    esac
  done < <("$1" complete -- "\${COMP_WORDS[@]:1:COMP_CWORD}" 2>/dev/null)
}
complete -o default -o bashdefault -F _roombalance roombalance
`;

const ZSH = `#compdef roombalance
_roombalance() {
  local line
  local -a found
  for line in "\${(@f)$(roombalance complete -- "\${(@Q)words[2,CURRENT]}" 2>/dev/null)}"; do
    [[ -n $line ]] && found+=("\${\${line//:/\\\\:}/$'\\t'/:}")
  done
  if (( \${#found} )); then
    _describe roombalance found
  else
    _files
  fi
}
compdef _roombalance roombalance
`;

const FISH = `function __roombalance_complete
    set -l words (commandline -opc) (commandline -ct)
    roombalance complete -- $words[2..-1] 2>/dev/null
end
complete -c roombalance -a '(__roombalance_complete)'
`;

const SCRIPTS: Readonly<Record<Shell, string>> = { bash: BASH, zsh: ZSH, fish: FISH };
