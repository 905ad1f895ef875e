import {
  COMMON_PARAMETERS,
  SEARCH_PARAMETERS,
  type SearchParameter,
} from './search-parameters.table.js';

/** A resource type that the sandbox keeps. */
export type ResourceType = keyof typeof SEARCH_PARAMETERS;

export function isResourceType(name: string): name is ResourceType {
  return Object.hasOwn(SEARCH_PARAMETERS, name);
}

export const RESOURCE_TYPES: readonly ResourceType[] =
  Object.keys(SEARCH_PARAMETERS).filter(isResourceType);

/** Every parameter by which the type can be searched, the common ones first. */
export const parametersOf = (type: ResourceType): readonly SearchParameter[] => [
  ...COMMON_PARAMETERS,
  ...SEARCH_PARAMETERS[type],
];

export const parameterOf = (type: ResourceType, code: string): SearchParameter | undefined =>
  parametersOf(type).find((parameter) => parameter.code === code);
