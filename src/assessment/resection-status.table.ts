import type { Citation } from '../kernel/index.js';
import { cite } from '../references/index.js';

/** Residual tumour: none, microscopic, seen, or not to be told. */
export type ResectionStatus = 'R0' | 'R1' | 'R2' | 'RX';

/** What the status rests on; absent: not told. */
export interface ResectionFacts {
  readonly enBloc: boolean;
  /** Whether part of the lesion stayed in place and was seen there. */
  readonly leftInPlace: boolean;
  /** 0 free, 1 involved, X not assessable. */
  readonly hm: '0' | '1' | 'X' | undefined;
  readonly vm: '0' | '1' | 'X' | undefined;
}

interface StatusRow {
  readonly status: ResectionStatus;
  readonly says: string;
  /** The values with which the row fits; a fact that is absent here may be anything. */
  readonly when: {
    readonly [Fact in keyof ResectionFacts]?: readonly NonNullable<ResectionFacts[Fact]>[];
  };
  readonly cites: readonly Citation[];
}

const TABLE_1 = cite(
  'korea2020',
  'Table 1: en bloc, no tumour at the lateral and vertical margins',
  'published',
);
const NOT_R0 = cite('korea2020', 'a margin that cannot be assessed is not free', 'derived');
const UICC = cite('esdPractice', 'residual tumour: R1 microscopic, R2 macroscopic', 'recalled');

/**
 * Residual tumour after a resection; the first row that fits decides.
 *
 * Source: R0 by korea2020, Table 1 (read); R1 and R2 as in the residual tumour classification of
 * the UICC (from memory); RX: a margin that cannot be assessed, and the cut edges between pieces,
 * are not shown to be free (derived).
 */
export const RESECTION_STATUS: readonly StatusRow[] = [
  {
    status: 'R2',
    says: 'Part of the lesion stayed in place.',
    when: { leftInPlace: [true] },
    cites: [UICC],
  },
  {
    status: 'R1',
    says: 'Tumour at the horizontal margin.',
    when: { hm: ['1'] },
    cites: [UICC],
  },
  {
    status: 'R1',
    says: 'Tumour at the vertical margin.',
    when: { vm: ['1'] },
    cites: [UICC],
  },
  {
    status: 'R0',
    says: 'One piece with both margins free.',
    when: { enBloc: [true], hm: ['0'], vm: ['0'] },
    cites: [TABLE_1],
  },
  {
    status: 'RX',
    says: 'Several pieces, at whose margins no tumour was found.',
    when: { enBloc: [false], hm: ['0', 'X'], vm: ['0', 'X'] },
    cites: [NOT_R0],
  },
  {
    status: 'RX',
    says: 'A margin cannot be assessed.',
    when: { hm: ['0', 'X'], vm: ['0', 'X'] },
    cites: [NOT_R0],
  },
];
