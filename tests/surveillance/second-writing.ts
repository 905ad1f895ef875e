import type { Choices, Plain } from '../support/every-question.js';

/**
 * The follow-up rules once more, as plain sentences. Written from the guidelines that each names,
 * without a look at the tables; months as whole calendar months.
 */
export interface SecondFollowUp {
  readonly id: string;
  /** The answer to a question in which everything is known. */
  readonly says: (question: Plain) => string;
  /** The whole space of questions: values of each field, one on each side of every border. */
  readonly spaces: readonly Choices[];
}

const ON = '2024-03-15';

/** Whole months after a day that every month has. */
function after(day: unknown, months: number): string {
  const [year, month, dayOfMonth] = String(day).split('-').map(Number);
  const count = Number(year) * 12 + Number(month) - 1 + months;
  const text = (n: number, digits: number) => String(n).padStart(digits, '0');
  return `${text(Math.floor(count / 12), 4)}-${text((count % 12) + 1, 2)}-${text(Number(dayOfMonth), 2)}`;
}

const look = (day: unknown, min: number, target: number, max: number, then: string) =>
  `min=${after(day, min)};target=${after(day, target)};max=${after(day, max)};then=${then}`;

const at = (day: unknown, ...years: readonly number[]) =>
  `at=${years.map((year) => after(day, year * 12)).join(',')}`;

const CLINICIAN = 'task=clinician-decision';
const MEETING = 'task=multidisciplinary-meeting';
const PATHOLOGY = 'task=await-pathology';

/** What is due when there is no class of a rule set; undefined when there is one. */
function withoutClass(found: unknown): string | undefined {
  if (found === null) return PATHOLOGY;
  const none = found === 'indeterminate' || found === 'no-rule' || found === 'incomplete';
  return none ? CLINICIAN : undefined;
}

/** Follow-up after a resection of low grade of risk, ESGE 2022 and what it hands on to. */
function esge({ organ, tumour, class: found, esdDate }: Plain): string {
  const open = withoutClass(found);
  if (open !== undefined) return open;
  if (found === 'high-risk') return MEETING;
  const curative = found === 'very-low-risk' || found === 'low-risk';
  if (organ === 'oesophagus' && tumour === 'squamous') {
    // from memory: 3 to 6 months, then yearly; after local risk 3 months, then 6, then yearly
    return curative ? look(esdDate, 3, 6, 6, '12*') : look(esdDate, 3, 3, 6, '6,12*');
  }
  if (organ === 'oesophagus' && tumour === 'barrett') {
    // ESGE Barrett 2023, second source: every 2 to 3 months until no Barrett mucosa is left
    return curative ? look(esdDate, 2, 3, 3, '3*') : CLINICIAN;
  }
  if (organ === 'stomach' && tumour === 'gastric') {
    return curative ? look(esdDate, 3, 6, 6, '12*') : look(esdDate, 3, 3, 6, '6,12*');
  }
  if ((organ === 'colon' || organ === 'rectum') && tumour === 'colorectal') {
    // ESGE polypectomy 2020: after 3 years; ESGE/ESDO 2019: after 1 year, then 3, then 5
    if (found === 'very-low-risk') return look(esdDate, 36, 36, 36, '60,screening');
    if (found === 'low-risk') return look(esdDate, 12, 12, 12, '36,60');
    return look(esdDate, 3, 6, 6, '12,COL-1');
  }
  return CLINICIAN;
}

/** Squamous cancer, Japan 2020: interval 6 to 12 months by Clin Endosc 2024;57:5, abstract. */
function jes({ organ, tumour, class: found, iodineVoiding, esdDate }: Plain): string {
  const open = withoutClass(found);
  if (open !== undefined) return open;
  if (organ !== 'oesophagus' || tumour !== 'squamous') return CLINICIAN;
  if (found !== 'curative') return look(esdDate, 3, 6, 6, '6*');
  return look(esdDate, 6, 12, 12, iodineVoiding === 'many' ? '6*' : '12*');
}

/** Stomach, Japan 2021, second source: once or twice a year. */
function jgca({ organ, tumour, class: found, esdDate }: Plain): string {
  const open = withoutClass(found);
  if (open !== undefined) return open;
  if (organ !== 'stomach' || tumour !== 'gastric') return CLINICIAN;
  if (found === 'eCuraA') return look(esdDate, 6, 12, 12, '12*');
  if (found === 'eCuraB') return look(esdDate, 6, 6, 12, '6*');
  return look(esdDate, 3, 6, 6, '6*');
}

/** ESGE polypectomy 2020. */
function pps(question: Plain): string {
  const { firstSurveillance, findings, esdDate, polypType, histology } = question;
  if (firstSurveillance !== undefined) {
    return findings === 'none'
      ? look(firstSurveillance, 60, 60, 60, 'screening')
      : look(firstSurveillance, 36, 36, 36, 'by-findings');
  }
  const sizeMm = Number(question['sizeMm']);
  if (question['enBloc'] === false && sizeMm >= 20) return look(esdDate, 3, 6, 6, '12,COL-1');
  const dysplastic = histology !== 'none';
  const needed =
    Number(question['count']) >= 5 ||
    sizeMm >= 10 ||
    histology === 'high-grade-dysplasia' ||
    histology === 'carcinoma' ||
    (polypType !== 'adenoma' && dysplastic);
  return needed ? look(esdDate, 36, 36, 36, '60,screening') : 'none';
}

/** ESGE/ESDO 2019: as after surgery; from 80 years on later examinations are asked again. */
function esdo({ histology, depth, class: found, r0, age, esdDate }: Plain): string {
  if (found === 'high-risk') return MEETING;
  if (histology !== 'carcinoma' || depth !== 'sm' || found !== 'low-risk' || r0 !== true) {
    return CLINICIAN;
  }
  const plan = look(esdDate, 12, 12, 12, '36,60');
  return typeof age === 'number' && age >= 80 ? `${plan};stop=to-confirm` : plan;
}

/** BSG 2019, second source: only lesions of 20 mm or more; a site check when R0 is not proven. */
function bsg({ sizeMm, enBloc, r0, esdDate }: Plain): string {
  if (Number(sizeMm) < 20) return CLINICIAN;
  return enBloc === true && r0 === true
    ? look(esdDate, 36, 36, 36, 'by-findings')
    : look(esdDate, 2, 4, 6, '12,36');
}

/** USMSTF 2020, tables 4 and 5. */
function usmstf({ sizeMm, polypType, histology, enBloc, esdDate }: Plain): string {
  if (enBloc === false) {
    return Number(sizeMm) >= 20 ? look(esdDate, 6, 6, 6, '12,36') : CLINICIAN;
  }
  const dysplastic = histology === 'low-grade-dysplasia' || histology === 'high-grade-dysplasia';
  const listed =
    polypType === 'traditional-serrated' ||
    (polypType === 'sessile-serrated' && (Number(sizeMm) >= 10 || dysplastic));
  return listed ? look(esdDate, 36, 36, 36, 'by-findings') : CLINICIAN;
}

/** ESGE Barrett 2023: abstract, statements 1 and 2; after eradication by a second source. */
function barrett(question: Plain): string {
  const { eradicationDate, baselineHistology, examDate, histology } = question;
  if (eradicationDate !== undefined) {
    return baselineHistology === 'low-grade-dysplasia'
      ? at(eradicationDate, 1, 3, 5)
      : at(eradicationDate, 1, 2, 3, 4, 5, 7, 10);
  }
  if (histology !== 'none') return CLINICIAN;
  const cm = Number(question['barrettMaxCm']);
  if (cm < 1) return 'none';
  if (cm < 3) return look(examDate, 60, 60, 60, '60*');
  return cm < 10 ? look(examDate, 36, 36, 36, '36*') : 'task=expert-centre';
}

/** High risk and no operation: common practice; oesophagus from memory of two guidelines. */
function withoutSurgery({ esdDate, tumour, class: found, depth }: Plain): string {
  const submucosal = depth === 'sm';
  if (found === 'low-risk') {
    // pT1b of a Barrett oesophagus: 3 to 6 months, half-yearly for two years, then yearly
    const pt1b = tumour === 'barrett' && submucosal;
    return pt1b ? look(esdDate, 3, 3, 6, '6*until-24,12*') : CLINICIAN;
  }
  switch (tumour) {
    case 'gastric':
      return look(esdDate, 3, 3, 6, '6*until-36,12*');
    case 'colorectal':
      return submucosal ? look(esdDate, 3, 6, 6, '6*until-36,12*until-60') : CLINICIAN;
    case 'squamous':
      return submucosal || depth === 'mm' ? look(esdDate, 3, 6, 6, '6*') : CLINICIAN;
    default:
      return CLINICIAN;
  }
}

/** MAPS II, abstract; months after a dysplasia that nobody sees by a second source of MAPS III. */
function backgroundMucosa(question: Plain): string {
  const { examDate, dysplasia, gastritisStage: stage, extent, metaplasia } = question;
  if (dysplasia !== 'none')
    return look(examDate, 0, 0, 0, dysplasia === 'high-grade' ? '6*' : '12*');
  const everyThreeYears = look(examDate, 36, 36, 36, '36*');
  if (stage === 'III' || stage === 'IV' || extent === 'antrum-and-corpus') return everyThreeYears;
  if (extent !== 'one-site' || metaplasia === 'none') return 'none';
  const atRisk =
    metaplasia === 'incomplete' ||
    question['helicobacterGastritis'] === true ||
    question['familyHistory'] === true;
  // once, and only considered
  return atRisk ? look(examDate, 36, 36, 36, 'by-findings') : 'none';
}

const advanced = (background: unknown): boolean => /-(III|IV)$/.test(String(background));

const ORGANS = ['oesophagus', 'stomach', 'colon', 'rectum'];
const TUMOURS = ['squamous', 'barrett', 'gastric', 'colorectal', 'other'];
const OPEN = ['incomplete', 'no-rule', 'indeterminate', null];
const ESGE = ['very-low-risk', 'low-risk', 'local-risk', 'high-risk'];
const POLYPS = ['adenoma', 'sessile-serrated', 'traditional-serrated', 'hyperplastic'];
const GRADES = ['low-grade-dysplasia', 'high-grade-dysplasia', 'carcinoma'];
const AROUND_10_AND_20 = [5, 9, 9.9, 10, 11, 19, 19.9, 20, 21];
const YES_NO = [true, false];
const afterResection = { organ: ORGANS, tumour: TUMOURS, esdDate: [ON] };

export const SECOND_FOLLOW_UPS: readonly SecondFollowUp[] = [
  {
    id: 'esge-esd-2022-follow-up',
    says: esge,
    spaces: [{ ...afterResection, class: [...ESGE, ...OPEN], enBloc: YES_NO }],
  },
  {
    id: 'jges-jes-2020-follow-up',
    says: jes,
    spaces: [
      {
        ...afterResection,
        class: ['curative', 'undetermined', 'additional-treatment', ...OPEN],
        iodineVoiding: ['few', 'many'],
      },
    ],
  },
  {
    id: 'jges-jgca-2021-follow-up',
    says: jgca,
    spaces: [
      {
        ...afterResection,
        class: ['eCuraA', 'eCuraB', 'eCuraC-1', 'eCuraC-2', ...OPEN],
      },
    ],
  },
  {
    id: 'esge-pps-2020',
    says: pps,
    spaces: [
      {
        esdDate: [ON],
        sizeMm: AROUND_10_AND_20,
        polypType: POLYPS,
        histology: ['none', ...GRADES],
        enBloc: YES_NO,
        count: [0, 1, 4, 5, 6],
        r0: YES_NO,
      },
      { firstSurveillance: [ON], findings: ['none', 'needing-surveillance'] },
    ],
  },
  {
    id: 'esge-esdo-2019',
    says: esdo,
    spaces: [
      {
        esdDate: [ON],
        histology: GRADES,
        depth: ['m', 'sm', 'mp'],
        class: [...ESGE, 'incomplete', 'no-rule', 'indeterminate'],
        r0: YES_NO,
        age: [50, 79, 80, 81],
      },
    ],
  },
  {
    id: 'bsg-2019',
    says: bsg,
    spaces: [{ esdDate: [ON], sizeMm: AROUND_10_AND_20, enBloc: YES_NO, r0: YES_NO }],
  },
  {
    id: 'usmstf-2020',
    says: usmstf,
    spaces: [
      {
        esdDate: [ON],
        sizeMm: AROUND_10_AND_20,
        polypType: POLYPS,
        histology: ['none', ...GRADES],
        enBloc: YES_NO,
      },
    ],
  },
  {
    id: 'esge-duodenum-2021',
    // second source: after 3 months, then 12
    says: ({ polypType, esdDate }) =>
      polypType === 'adenoma' ? look(esdDate, 3, 3, 3, '12,by-findings') : CLINICIAN,
    spaces: [{ esdDate: [ON], polypType: POLYPS }],
  },
  {
    id: 'esge-barrett-2023',
    says: barrett,
    spaces: [
      {
        examDate: [ON],
        barrettMaxCm: [0, 0.9, 1, 1.1, 2, 2.9, 3, 3.1, 4, 9, 9.9, 10, 10.1, 11],
        histology: ['none', ...GRADES],
      },
      { eradicationDate: [ON], baselineHistology: GRADES },
    ],
  },
  {
    id: 'maps-ii-2019',
    // abstract: advanced stages every 3 years
    says: ({ background, examDate }) =>
      advanced(background) ? look(examDate, 36, 36, 36, '36*') : 'none',
    spaces: [
      {
        examDate: [ON],
        background: [
          'none',
          ...['OLGA', 'OLGIM'].flatMap((by) =>
            ['0', 'I', 'II', 'III', 'IV'].map((n) => `${by}-${n}`),
          ),
        ],
      },
    ],
  },
  {
    id: 'without-surgery',
    says: withoutSurgery,
    spaces: [
      {
        esdDate: [ON],
        tumour: TUMOURS,
        class: ['low-risk', 'high-risk'],
        depth: ['ep', 'lpm', 'mm', 'm', 'sm', 'mp'],
      },
    ],
  },
  {
    id: 'jges-colorectal-2020',
    // second source: after about six months, if a pTis was taken piecemeal
    says: ({ esdDate, histology, depth, enBloc }) =>
      depth === 'm' &&
      enBloc === false &&
      ['high-grade-dysplasia', 'carcinoma'].includes(`${histology}`)
        ? look(esdDate, 6, 6, 6, 'by-findings')
        : CLINICIAN,
    spaces: [
      {
        esdDate: [ON],
        histology: ['none', ...GRADES],
        depth: ['m', 'sm', 'mp'],
        enBloc: YES_NO,
      },
    ],
  },
  {
    id: 'gastric-adenoma-practice',
    // survey 2025: 3 to 6 months, then every year
    says: ({ esdDate, histology }) =>
      histology === 'low-grade-dysplasia' ? look(esdDate, 3, 6, 6, '12*') : CLINICIAN,
    spaces: [{ esdDate: [ON], histology: ['none', ...GRADES] }],
  },
  {
    id: 'background-mucosa',
    says: backgroundMucosa,
    spaces: [
      {
        examDate: [ON],
        dysplasia: ['none', 'low-grade', 'high-grade'],
        gastritisStage: ['0', 'I', 'II', 'III', 'IV'],
        extent: ['none', 'one-site', 'antrum-and-corpus'],
        metaplasia: ['none', 'complete', 'incomplete'],
        helicobacterGastritis: YES_NO,
        familyHistory: YES_NO,
      },
    ],
  },
];
