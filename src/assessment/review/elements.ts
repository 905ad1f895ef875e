import type { CaseFields } from '../../contract/index.js';
import type { Citation } from '../../kernel/index.js';
import type { Condition, ConditionOn } from '../../rules/index.js';
import type { Drug } from './drug-facts.js';

/** An element of a complete record, and for which cases it is asked. */
export interface RecordElement<When = Condition> {
  /** In plain words, to follow "not recorded:". */
  readonly element: string;
  readonly need: 'required' | 'conditional';
  /**
   * JSON Pointers of which each one would do. A list that is told counts, even if empty: it says
   * "none". `*` stands for any entry of a list.
   */
  readonly pointers: readonly string[];
  /** Only entries with this word count. */
  readonly word?: string;
  /** Asked where one of these holds; without it always. */
  readonly askedWhen?: readonly When[];
  /** Not asked where one of these holds. */
  readonly unless?: readonly When[];
  readonly cites: readonly Citation[];
}

type Lesion = CaseFields['lesion'];
type Safety = NonNullable<CaseFields['safety']>;

/** What decides which elements are asked of a case; `undefined` was not told. */
export interface ElementFacts {
  readonly organ: Lesion['organ'];
  readonly tumour: Lesion['tumour'];
  readonly paris: Lesion['paris'];
  readonly longAxisMm: number;
  readonly outcome: CaseFields['resection']['outcome'];
  readonly defectPercent: number | undefined;
  readonly visibleVessels: boolean | undefined;
  readonly closure: NonNullable<Safety['closure']>['kind'] | undefined;
  readonly retrieved: boolean | undefined;
  readonly traineePercent: number | undefined;
}

/**
 * Reads from a case what decides which elements it is asked for.
 *
 * Source: the fields of the case.
 */
export function elementFacts({ lesion, ...rest }: CaseFields): ElementFacts {
  const { resection, defect, safety, specimen, team } = rest;
  return {
    organ: lesion.organ,
    tumour: lesion.tumour,
    paris: lesion.paris,
    longAxisMm: lesion.longAxisMm,
    outcome: resection.outcome,
    defectPercent: defect?.circumferencePercent,
    visibleVessels: safety?.siteInspection?.visibleVessels,
    closure: safety?.closure?.kind,
    retrieved: specimen?.retrieved,
    traineePercent: team.traineePercent,
  };
}

/** What decides which elements are asked of one antithrombotic drug. */
export type DrugElementFacts = Pick<Drug, 'class' | 'decision' | 'thromboticRisk'>;

export type CaseElement = RecordElement<ConditionOn<ElementFacts>>;
export type DrugElement = RecordElement<ConditionOn<DrugElementFacts>>;
