import type { Command } from "./command.ts";
import { tableText } from "./show/table.ts";

const codesText =
  "Exit codes\n" +
  "  0   done; there may be warnings\n" +
  "  1   a stop was found: the result is missing, or is only a part of what was asked for\n" +
  "  2   the command line is wrong, or a file cannot be read\n" +
  "  3   solve: proved that there is no plan; 4 that none was found in the time\n" +
  "  130 solve, plan: ended by Ctrl-C (143 by SIGTERM); the best that was found by then is printed\n" +
  "  70  a fault of the program itself\n";

/** The help of the whole command line. */
export const mainHelp = (commands: readonly Command[]): string =>
  "tamis reads a cook's plain words and serves the whole sitting.\n\n" +
  "Usage: tamis COMMAND … [--json] [--notes]\n\n" +
  tableText(
    commands.map((command) => [command.name, command.takes, command.summary]),
    ["left", "left", "left"],
    "  ",
  ) +
  "\nFindings go to the error stream as file:line:column, warnings and stops unless --notes is given.\n" +
  "Each command tells those that bear on it; evening counts all.\n" +
  "tamis COMMAND --help says more. NO_COLOR is honoured.\n\n" +
  codesText;

/** The help of one command. */
export const commandHelp = (command: Command): string =>
  `Usage: tamis ${command.name} ${command.takes}${Object.keys(command.options).length > 0 ? " [options]" : ""}\n\n` +
  `${command.about}\n\nOptions\n` +
  tableText(
    [
      ...Object.entries(command.options).map(([name, option]) => [
        `--${name}${option.value === undefined ? "" : ` ${option.value}`}`,
        option.help,
      ]),
      ["--help", "show this"],
    ],
    ["left", "left"],
    "  ",
  ) +
  `\nExamples\n${command.examples.map((example) => `  ${example}\n`).join("")}\n${codesText}`;
