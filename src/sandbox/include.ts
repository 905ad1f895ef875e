import { Refusal } from './refusal.js';
import { isResourceType, parameterOf, type ResourceType } from './resource-types.js';

/** The resources at the end of one kind of reference, or those where it begins. */
export interface Include {
  /** The type that holds the reference. */
  readonly source: ResourceType;
  readonly param: string;
  /** Only references to this type. */
  readonly target?: string;
}

/**
 * Source: HL7 FHIR R4, Search, section "Including other resources in result".
 *
 * @param text `Type:parameter` or `Type:parameter:TargetType`
 * @throws Refusal 400
 */
export function includeOf(text: string): Include {
  const [source = '', param = '', target, ...more] = text.split(':');
  const known =
    isResourceType(source) &&
    parameterOf(source, param)?.kind === 'reference' &&
    (target === undefined || isResourceType(target)) &&
    more.length === 0;
  if (!known) {
    throw new Refusal(400, 'not-supported', 'An include needs Type:parameter of a reference.');
  }
  return { source, param, ...(target === undefined ? {} : { target }) };
}
