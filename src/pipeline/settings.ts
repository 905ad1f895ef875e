import type { UnitSettings } from '../contract/index.js';
import type { MappingSettings } from '../mapping/index.js';

/** What the pipeline needs to know beside the messages. */
export interface PipelineSettings {
  readonly unit: UnitSettings;
  /** Site secret, at least 32 characters. */
  readonly secret: string;
  readonly softwareVersion: string;
}

export function mappingSettings({ unit, ...rest }: PipelineSettings): MappingSettings {
  return {
    ...rest,
    identifierBase: unit.identifierBase,
    licences: unit.licences,
    endoscopyReport: unit.endoscopyReport,
    proposedAppointments: unit.proposedAppointments,
  };
}
