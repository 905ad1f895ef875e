import { fingerprint, type Rule } from '../../src/rules/index.js';

/** Versions of each rule by its id, oldest first, with the hash of its data. */
export type Recorded = Readonly<
  Record<string, readonly { readonly version: number; readonly sha256: string }[]>
>;

/** What the next one to read must do about changed rules; empty when all is in order. */
export function faultsOf(
  rules: readonly Rule[],
  recorded: Recorded,
  changelog: string,
): readonly string[] {
  const lines = entriesOf(changelog);
  const ids = rules.map(({ id }) => id);
  return [
    ...rules.flatMap((rule) => faultsOfRule(rule, recorded[rule.id] ?? [])),
    ...Object.entries(recorded).flatMap(([id, versions]) => [
      ...(ids.includes(id) ? [] : [`Rule ${id} is gone; records name it. Put it back.`]),
      ...versions
        .filter(({ version }) => version > 1 && !lines.some((line) => tells(line, id, version)))
        .map(({ version }) => `CHANGELOG.md lacks this line: ${lineFor(id, version)}`),
    ]),
  ];
}

function faultsOfRule(rule: Rule, versions: Recorded[string]): readonly string[] {
  const { id, version } = rule;
  if (versions.some((each, i) => each.version !== i + 1)) {
    return [`The recorded versions of rule ${id} do not rise from 1 by one.`];
  }
  const newest = versions.at(-1);
  if (newest === undefined || newest.version + 1 === version) {
    return [`Version ${version} of rule ${id} is not recorded: npm run rules:hash -- --write`];
  }
  if (newest.version !== version) {
    return [`Rule ${id} says version ${version}, recorded is ${newest.version}: raise it by one.`];
  }
  if (newest.sha256 === fingerprint(rule)) return [];
  return [
    `The data of rule ${id} changed, and records of version ${version} would mean something ` +
      `else now. Make it version ${version + 1}, then: npm run rules:hash -- --write, and in ` +
      `CHANGELOG.md: ${lineFor(id, version + 1)}`,
  ];
}

const lineFor = (id: string, version: number): string =>
  `- Rule \`${id}\` version ${version}: what changed and why. Organs: ... Verdicts: ... Procedure dates: ...`;

/** The entries of a list in Markdown, each on one line. */
const entriesOf = (text: string): readonly string[] =>
  text
    .split(/\n(?=\s*- |\s*\n|#)/)
    .map((entry) => entry.replaceAll(/\s+/g, ' ').trim())
    .filter((entry) => entry.startsWith('- '));

const tells = (line: string, id: string, version: number): boolean =>
  line.startsWith(`- Rule \`${id}\` version ${version}: `) &&
  ['Organs', 'Verdicts', 'Procedure dates'].every((what) =>
    new RegExp(`${what}: (?!\\.\\.\\.)\\S`).test(line),
  );
