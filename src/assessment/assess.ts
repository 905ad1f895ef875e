import type { CaseFields, Organ, PathologyFields, UnitSettings } from '../contract/index.js';
import type { Told } from '../rules/index.js';
import type { Assessment } from './assessment.js';
import { classBy } from './curability/class-by.js';
import { assessCurability } from './curability/curability.js';
import { toCurabilityQuestion } from './curability/from-record.js';
import type { RuleSetId } from './curability/rule-sets.js';
import { defectCircumference } from './defect-circumference.js';
import { dissectionMin, procedureMin, speedCm2PerH } from './dissection-speed.js';
import { resectionStatus } from './resection-status.js';
import { missingElements } from './review/missing-elements.js';
import { reviewCase } from './review/review-case.js';
import { assessScores } from './scores/of-record.js';
import { specimenAreaCm2 } from './specimen-area.js';
import { strictureRisk } from './stricture-risk.js';
import { vesselInvasion } from './vessel-invasion.js';

/** Version of all rules of this folder; rises with every change of a rule. */
const RULES_VERSION = '1';

/** What is known of a dissection: the case as sent, and the report on its specimen. */
export interface Known {
  readonly fields: CaseFields;
  readonly report?: PathologyFields;
}

/**
 * Computes everything that a record allows; decides nothing by itself.
 *
 * Source: the rules that it calls.
 */
export function assess({ fields, report }: Known, unit: UnitSettings): Assessment {
  const { lesion, specimen, times, defect } = fields;
  const area = specimenAreaCm2(specimen ?? {});
  const minutes = dissectionMin(times);
  const circumference = defectCircumference(defect ?? {});
  const risk = strictureRisk(circumference, {
    organ: lesion.organ,
    site: lesion.site,
    lengthMm: defect?.longAxisMm,
  });
  const speed = speedCm2PerH(area, minutes);
  const question = toCurabilityQuestion(fields, report);
  return {
    rulesVersion: RULES_VERSION,
    procedureMin: procedureMin(times),
    dissectionMin: minutes,
    specimenAreaCm2: area,
    speedCm2PerH: speed,
    defectCircumference: circumference,
    ...(risk === undefined ? {} : { strictureRisk: risk }),
    ...(report === undefined
      ? {}
      : {
          specimen: {
            resectionStatus: resectionStatus(fields, report),
            vesselInvasion: vesselInvasion(report),
          },
        }),
    curability: assessCurability(
      question,
      lesion.organ,
      chosenFor(lesion.organ, unit),
      report?.report.status !== 'final',
    ),
    scores: assessScores(fields, report, japaneseGastricClass(lesion.organ, question)),
    review: reviewCase(
      fields,
      {
        pathology: report,
        speedCm2PerH: speed.kind === 'determined' ? speed.value : undefined,
        defectPercent:
          circumference.kind === 'determined' ? circumference.value.percent : undefined,
      },
      unit,
    ),
    missingElements: missingElements(fields),
  };
}

/** No set speaks of the duodenum: the default one says so. */
const chosenFor = (organ: Organ, { curabilityRules }: UnitSettings): RuleSetId =>
  organ === 'duodenum' ? 'esge-esd-2022' : curabilityRules[organ];

const japaneseGastricClass = (organ: Organ, question: Told): string | undefined =>
  organ === 'stomach' ? classBy('jges-jgca-2021', question) : undefined;
