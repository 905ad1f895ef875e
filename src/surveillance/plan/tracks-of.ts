import type { UnitSettings } from '../../contract/index.js';
import type { ClassRule, Told } from '../../rules/index.js';
import { WITHOUT_CLASS } from '../after-class-fields.js';
import { BSG_2019 } from '../bsg-2019.table.js';
import { ESGE_DUODENUM_2021 } from '../esge-duodenum-2021.table.js';
import { ESGE_ESD_2022_FOLLOW_UP } from '../esge-esd-2022-follow-up.table.js';
import { ESGE_ESDO_2019 } from '../esge-esdo-2019.table.js';
import { ESGE_PPS_2020 } from '../esge-pps-2020.table.js';
import type { FollowUpRow } from '../follow-ups.table.js';
import { GASTRIC_ADENOMA_PRACTICE } from '../gastric-adenoma.table.js';
import { JGES_COLORECTAL_2020 } from '../jges-colorectal-2020.table.js';
import { JGES_JES_2020_FOLLOW_UP, JGES_JGCA_2021_FOLLOW_UP } from '../jges-follow-up.table.js';
import { USMSTF_2020 } from '../usmstf-2020.table.js';
import { WITHOUT_SURGERY } from '../without-surgery.table.js';
import type { PlanFacts } from './plan-facts.js';
import type { ReasonCode } from './reasons.table.js';
import { askTrack, isSilent, type Track } from './track.js';

type Choices = UnitSettings['followUpRules'];
type RuleId = Choices[keyof Choices];

const RULES: Readonly<Record<RuleId, ClassRule<FollowUpRow>>> = {
  'esge-esd-2022-follow-up': ESGE_ESD_2022_FOLLOW_UP,
  'jges-jes-2020-follow-up': JGES_JES_2020_FOLLOW_UP,
  'jges-jgca-2021-follow-up': JGES_JGCA_2021_FOLLOW_UP,
  'gastric-adenoma-practice': GASTRIC_ADENOMA_PRACTICE,
  'esge-duodenum-2021': ESGE_DUODENUM_2021,
  'esge-pps-2020': ESGE_PPS_2020,
  'bsg-2019': BSG_2019,
  'usmstf-2020': USMSTF_2020,
  'jges-colorectal-2020': JGES_COLORECTAL_2020,
};

/** The rule set of curability whose classes a follow-up rule asks for. */
const CLASSES_OF: Readonly<Partial<Record<RuleId, string>>> = {
  'esge-esd-2022-follow-up': 'esge-esd-2022',
  'jges-jes-2020-follow-up': 'jges-jes-2020',
  'jges-jgca-2021-follow-up': 'jges-jgca-2021',
};

/** Barrett mucosa has one set, whatever was chosen for the squamous oesophagus. */
const chosenFor = ({ organ, tumour }: PlanFacts, unit: UnitSettings): RuleId =>
  tumour === 'barrett' ? 'esge-esd-2022-follow-up' : unit.followUpRules[organ];

/**
 * Why no rule set can be asked; undefined where one can.
 *
 * Source: the follow-up rule sets; a class without a row goes to a person (derived).
 */
export function unmet({ organ, verdict }: PlanFacts): ReasonCode | undefined {
  if (verdict.class === 'incomplete') return 'part-left';
  // No set of curability speaks of the duodenum; its follow-up asks for no class.
  if (organ === 'duodenum') return undefined;
  return verdict.class === undefined || verdict.class === 'no-rule' ? 'no-class' : undefined;
}

/**
 * The series by class, and the others that ask for the same place.
 *
 * Source: the follow-up rule sets; a class without a row goes to a person (derived).
 */
export function tracksByClass(facts: PlanFacts, unit: UnitSettings): readonly Track[] {
  const id = chosenFor(facts, unit);
  const chosen = ask(id, facts);
  const own = isSilent(chosen) ? [instead(id, chosen, facts)] : [chosen];
  const others = lowRiskTracks(facts).filter((track) => !isSilent(track));
  const rows = own.map(({ row }) => row);
  return [...own, ...others.filter(({ row }) => !rows.includes(row))];
}

/**
 * The series where nobody operates, although the risk is high.
 *
 * Source: the follow-up rule sets; a class without a row goes to a person (derived).
 */
export function tracksWithoutSurgery(facts: PlanFacts, unit: UnitSettings): readonly Track[] {
  const chosen = ask(chosenFor(facts, unit), facts);
  const speaks = chosen.row === 'GAS-7' || chosen.row === 'OES-4';
  return [speaks ? chosen : withoutSurgery(facts, 'high-risk')];
}

/**
 * The series that would come first, of all classes that pathology can give.
 *
 * Source: the follow-up rule sets; a class without a row goes to a person (derived).
 */
export function shortestTracks(facts: PlanFacts, unit: UnitSettings): readonly Track[] {
  const id = chosenFor(facts, unit);
  const tumours = facts.tumour === undefined ? (['squamous', 'barrett'] as const) : [facts.tumour];
  const plausible = tumours.flatMap((tumour) =>
    PLAUSIBLE.map((more) => ask(id, { ...facts, tumour, ...more(facts) })),
  );
  const fallback = tumours.flatMap((tumour) =>
    PLAUSIBLE.map((more) => ask('esge-esd-2022-follow-up', { ...facts, tumour, ...more(facts) })),
  );
  const first = plausible.filter((track) => !isSilent(track));
  return first.length > 0 ? first : fallback;
}

/** Stands for a report that is not there. */
const SUPPOSED = { system: 'urn:supposed', value: 'report' };

/** Classes after which an examination is planned, as pathology could give them. */
const PLAUSIBLE: readonly ((facts: PlanFacts) => Partial<PlanFacts>)[] = [
  ['very-low-risk', 'curative', 'eCuraA'],
  ['low-risk', 'curative', 'eCuraB'],
  ['local-risk', 'undetermined', 'eCuraC-1'],
].map(([esge = '', jes = '', jgca = '']) => (facts) => ({
  classes: { 'esge-esd-2022': esge, 'jges-jes-2020': jes, 'jges-jgca-2021': jgca },
  pathology: {
    status: 'interim',
    id: SUPPOSED,
    reportedOn: facts.esdOn,
    histology: 'high-grade-dysplasia',
    depth: 'm',
    polypType: 'adenoma',
    r0: false,
  },
}));

function instead(id: RuleId, chosen: Track, facts: PlanFacts): Track {
  if (id === 'esge-esd-2022-follow-up' || facts.organ === 'duodenum') return chosen;
  const standard = ask('esge-esd-2022-follow-up', facts);
  return isSilent(standard) ? chosen : { ...standard, reasons: ['set-silent'] };
}

/**
 * What else speaks of a resection of low risk: class before size, a colorectal pT1 has a guideline
 * of its own, and a Barrett pT1b is followed up as one that was not operated.
 */
function lowRiskTracks(facts: PlanFacts): readonly Track[] {
  const { organ, tumour, pathology } = facts;
  if (classOf(facts) !== 'low-risk') return [];
  if (organ === 'colon' || organ === 'rectum') {
    return [trackOf(ESGE_ESDO_2019, facts, { class: 'low-risk' })];
  }
  const isR0 = tumour === 'barrett' && pathology?.r0 === true;
  return isR0 ? [withoutSurgery(facts, 'low-risk')] : [];
}

const withoutSurgery = (facts: PlanFacts, found: 'low-risk' | 'high-risk'): Track =>
  trackOf(WITHOUT_SURGERY, facts, { class: found });

const ask = (id: RuleId, facts: PlanFacts): Track =>
  trackOf(RULES[id], facts, { class: classOf(facts, CLASSES_OF[id]) });

function classOf({ classes }: PlanFacts, set = 'esge-esd-2022'): string {
  const [, , indeterminate] = WITHOUT_CLASS;
  return classes[set] ?? indeterminate;
}

/** Asks with the fields that the rule has. */
function trackOf(rule: ClassRule<FollowUpRow>, facts: PlanFacts, more: Told): Track {
  const { organ, tumour, esdOn, outcome, sizeMm, verdict, pathology } = facts;
  const { histology, depth, polypType, r0 } = pathology ?? {};
  const told: Told = {
    organ,
    tumour,
    esdDate: esdOn,
    enBloc: outcome === 'en-bloc',
    sizeMm,
    histology: inField(rule, 'histology', histology),
    depth: inField(rule, 'depth', depth),
    polypType,
    r0,
    ...more,
  };
  const asked = Object.entries(told).filter(([field]) => Object.hasOwn(rule.fields, field));
  const track = askTrack({
    rule,
    told: Object.fromEntries(asked),
    anchorOn: esdOn,
    local: outcome === 'piecemeal' || verdict.group === 'local-risk',
  });
  // What an examination turns a series into depends on these, whether the rule asks or not.
  const kept = { organ, ...(tumour && { tumour }), ...(histology && { histology }) };
  return { ...track, inputs: { ...kept, ...track.inputs } };
}

/** A word that the rule does not have says nothing to it. */
function inField(rule: ClassRule, name: string, word: string | undefined): string | null {
  const field = rule.fields[name];
  if (word === undefined || field?.type !== 'word') return null;
  return field.words.includes(word) ? word : null;
}
