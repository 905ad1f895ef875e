import type { Observation } from 'fhir/r4.js';
import { ANSWERS } from '../terminology/index.js';
import type { MappingContext } from './context.js';
import type { Draft } from './draft.js';
import { toObservation } from './observation.js';
import { measured } from './values.js';

/** Whether antithrombotics were taken, and the blood tests that were told beside them. */
export function toDrugFindings(context: MappingContext): Listed {
  return [...antithromboticsTaken(context), ...distinct(drugTests(context))];
}

type Listed = readonly Draft<Observation>[];

function antithromboticsTaken(context: MappingContext): Listed {
  const drugs = context.fields.before?.antithrombotics;
  if (drugs === undefined) return [];
  return [
    toObservation(context, {
      item: 'antithrombotics-taken',
      about: 'session',
      category: 'exam',
      content: {
        valueCodeableConcept: context.concept(drugs.length > 0 ? ANSWERS.yes : ANSWERS.no),
      },
    }),
  ];
}

/** The same test with the same result and day, told beside two drugs, is one test. */
function distinct(tests: Listed): Listed {
  const said = tests.map(({ resource: { code, effectiveDateTime, valueQuantity } }) =>
    JSON.stringify([code, effectiveDateTime, valueQuantity]),
  );
  return tests.filter((_test, i) => said.indexOf(said[i] ?? '') === i);
}

/** Blood tests that were told beside a drug; they are the patient's, on their own day. */
function drugTests(context: MappingContext): Listed {
  return (context.fields.before?.antithrombotics ?? []).flatMap((drug, i) => {
    const key = drug.agent ?? drug.class;
    const at = `/before/antithrombotics/${i}`;
    const about = { about: 'session', category: 'laboratory' } as const;
    return [
      ...(drug.inr === undefined
        ? []
        : [
            toObservation(context, {
              item: 'inr',
              key: `inr.${key}`,
              ...about,
              ...(drug.inrOn === undefined ? {} : { effectiveOn: drug.inrOn }),
              content: { valueQuantity: measured(context, `${at}/inr`, drug.inr, 'one') },
            }),
          ]),
      ...(drug.creatinineClearanceMlPerMin === undefined
        ? []
        : [
            toObservation(context, {
              item: 'creatinine-clearance',
              key: `creatinine-clearance.${key}`,
              ...about,
              content: {
                valueQuantity: measured(
                  context,
                  `${at}/creatinineClearanceMlPerMin`,
                  drug.creatinineClearanceMlPerMin,
                  'mlPerMin',
                ),
              },
            }),
          ]),
    ];
  });
}
