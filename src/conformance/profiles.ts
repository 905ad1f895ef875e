import antithrombotic from '../../profiles/StructureDefinition-dr-antithrombotic.json' with {
  type: 'json',
};
import caseBundle from '../../profiles/StructureDefinition-dr-case-bundle.json' with {
  type: 'json',
};
import complication from '../../profiles/StructureDefinition-dr-complication.json' with {
  type: 'json',
};
import computed from '../../profiles/StructureDefinition-dr-computed.json' with { type: 'json' };
import curability from '../../profiles/StructureDefinition-dr-curability.json' with {
  type: 'json',
};
import device from '../../profiles/StructureDefinition-dr-device.json' with { type: 'json' };
import drugGiven from '../../profiles/StructureDefinition-dr-drug-given.json' with { type: 'json' };
import endoscopyFinding from '../../profiles/StructureDefinition-dr-endoscopy-finding.json' with {
  type: 'json',
};
import endoscopyReport from '../../profiles/StructureDefinition-dr-endoscopy-report.json' with {
  type: 'json',
};
import esdProcedure from '../../profiles/StructureDefinition-dr-esd-procedure.json' with {
  type: 'json',
};
import followUp from '../../profiles/StructureDefinition-dr-follow-up.json' with { type: 'json' };
import followUpAppointment from '../../profiles/StructureDefinition-dr-follow-up-appointment.json' with {
  type: 'json',
};
import followUpFinding from '../../profiles/StructureDefinition-dr-follow-up-finding.json' with {
  type: 'json',
};
import followUpReport from '../../profiles/StructureDefinition-dr-follow-up-report.json' with {
  type: 'json',
};
import followUpRequest from '../../profiles/StructureDefinition-dr-follow-up-request.json' with {
  type: 'json',
};
import followUpTask from '../../profiles/StructureDefinition-dr-follow-up-task.json' with {
  type: 'json',
};
import injectate from '../../profiles/StructureDefinition-dr-injectate.json' with { type: 'json' };
import laterFinding from '../../profiles/StructureDefinition-dr-later-finding.json' with {
  type: 'json',
};
import lesion from '../../profiles/StructureDefinition-dr-lesion.json' with { type: 'json' };
import media from '../../profiles/StructureDefinition-dr-media.json' with { type: 'json' };
import pathologyFinding from '../../profiles/StructureDefinition-dr-pathology-finding.json' with {
  type: 'json',
};
import pathologyReport from '../../profiles/StructureDefinition-dr-pathology-report.json' with {
  type: 'json',
};
import pathologyRequest from '../../profiles/StructureDefinition-dr-pathology-request.json' with {
  type: 'json',
};
import provenance from '../../profiles/StructureDefinition-dr-provenance.json' with {
  type: 'json',
};
import score from '../../profiles/StructureDefinition-dr-score.json' with { type: 'json' };
import specimen from '../../profiles/StructureDefinition-dr-specimen.json' with { type: 'json' };
import subProcedure from '../../profiles/StructureDefinition-dr-sub-procedure.json' with {
  type: 'json',
};

/** As much of an element of a differential as the runner reads. */
export interface ProfileElement {
  readonly id: string;
  readonly path: string;
  readonly sliceName?: string | undefined;
  readonly min?: number | undefined;
  readonly max?: string | undefined;
  readonly patternCode?: string | undefined;
  readonly patternUri?: string | undefined;
  readonly type?:
    | readonly { readonly code: string; readonly profile?: readonly string[] | undefined }[]
    | undefined;
  readonly constraint?:
    | readonly {
        readonly key: string;
        readonly severity: string;
        readonly human: string;
        readonly expression: string;
      }[]
    | undefined;
}

/** As much of a published StructureDefinition as the runner reads. */
export interface Profile {
  readonly url: string;
  readonly type: string;
  readonly differential: { readonly element: readonly ProfileElement[] };
}

/** The published profiles: the rules that run are read from them and stand nowhere else. */
export const PROFILES: readonly Profile[] = [
  antithrombotic,
  caseBundle,
  complication,
  computed,
  curability,
  device,
  drugGiven,
  endoscopyFinding,
  endoscopyReport,
  esdProcedure,
  followUp,
  followUpAppointment,
  followUpFinding,
  followUpReport,
  followUpRequest,
  followUpTask,
  injectate,
  laterFinding,
  lesion,
  media,
  pathologyFinding,
  pathologyReport,
  pathologyRequest,
  provenance,
  score,
  specimen,
  subProcedure,
];
