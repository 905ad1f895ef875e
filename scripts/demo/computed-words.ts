import type { Answer, SentKind } from '../../src/pipeline/index.js';

type Computed = Answer['assessment']['speedCm2PerH'];

/**
 * What was computed from a message of this kind, in a few words.
 *
 * @returns undefined where the verdict says it all
 */
export function computedWords(
  kind: SentKind,
  key: string | undefined,
  answer: Answer,
): string | undefined {
  switch (kind) {
    case 'case':
      return caseWords(answer);
    case 'event':
      return gradeWords(key, answer);
    case 'examination':
      return scarWords(key, answer);
    case 'pathology':
    case 'withdrawal':
      return undefined;
  }
}

/** The same in so few words that a line holds them. */
export function shortCaseWords({ assessment }: Answer): string {
  const { procedureMin, speedCm2PerH } = assessment;
  return [
    ...inWords('procedure', procedureMin, 'min'),
    ...inWords('speed', speedCm2PerH, 'cm2/h'),
  ].join(', ');
}

/** Times, size and speed of a dissection; what could not be computed is not named. */
function caseWords({ assessment }: Answer): string {
  const { procedureMin, dissectionMin, specimenAreaCm2, speedCm2PerH } = assessment;
  const { strictureRisk } = assessment;
  const words = [
    ...inWords('procedure', procedureMin, 'min'),
    ...inWords('dissection', dissectionMin, 'min'),
    ...inWords('specimen', specimenAreaCm2, 'cm2'),
    ...inWords('speed', speedCm2PerH, 'cm2/h'),
    ...(strictureRisk?.kind === 'determined' ? [`stricture ${strictureRisk.value.flag}`] : []),
  ];
  return words.join(', ');
}

function inWords(name: string, finding: Computed, unit: string): readonly string[] {
  return finding.kind === 'determined' ? [`${name} ${finding.value.toFixed(1)} ${unit}`] : [];
}

function gradeWords(event: string | undefined, { afterwards }: Answer): string | undefined {
  const found = afterwards?.grades.find((graded) => graded.event.value === event);
  const grades = (found?.findings ?? []).map(({ rule, outcome }) => {
    if (outcome.kind === 'decided') return `${rule} ${outcome.grade}`;
    return outcome.kind === 'indeterminate' ? `${rule} at least ${outcome.atLeast}` : '';
  });
  const known = grades.filter((grade) => grade !== '');
  if (found === undefined || known.length === 0) return undefined;
  return `${found.kind} on day ${found.days}, ${known.join(', ')}`;
}

function scarWords(examination: string | undefined, { afterwards }: Answer): string | undefined {
  const found = afterwards?.recurrences.find((one) => one.examination.value === examination);
  if (found === undefined) return undefined;
  const { answer, isPending } = found;
  const says = answer.kind === 'determined' ? `neoplasia at the scar: ${answer.value}` : undefined;
  return says === undefined ? undefined : `${says}${isPending ? ', tissue pending' : ''}`;
}
