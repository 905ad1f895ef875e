import { isRecord, recordsAt, textAt } from './json.js';

const MOST_ISSUES = 20;
const MOST_TEXT = 400;

/**
 * What an OperationOutcome says, with the words of the server, one issue a line. Only for what was
 * sent without a word about a patient: the server may repeat it. The outcomes of refused entries of
 * a response count too.
 *
 * Source: FHIR R4 (4.0.1), OperationOutcome; http, transaction response.
 *
 * @param body of any shape
 * @returns at most 20 lines of at most some hundred characters, without control characters
 */
export function issueLines(body: unknown): readonly string[] {
  const ofEntries = recordsAt(body, 'entry').map(({ response }) =>
    isRecord(response) ? response['outcome'] : undefined,
  );
  return [body, ...ofEntries]
    .filter((one) => textAt(one, 'resourceType') === 'OperationOutcome')
    .flatMap((one) => recordsAt(one, 'issue'))
    .slice(0, MOST_ISSUES)
    .map(lineOf);
}

function lineOf(issue: Readonly<Record<string, unknown>>): string {
  const text = textAt(issue['details'], 'text') ?? textAt(issue, 'diagnostics');
  const places = issue['expression'];
  const at = Array.isArray(places) && typeof places[0] === 'string' ? ` at ${places[0]}` : '';
  const said = text === undefined ? '' : `: ${text}`;
  const whole = `${textAt(issue, 'severity') ?? 'error'} ${textAt(issue, 'code') ?? ''}${at}${said}`;
  return whole.replaceAll(/[\p{Cc}\p{Cf}\u2028\u2029\s]+/gu, ' ').slice(0, MOST_TEXT);
}
