import type { CodeableConcept, Device, DeviceProperty } from 'fhir/r4.js';
import { ANSWERS, localRef, UNITS, WORD_CODES } from '../terminology/index.js';
import { head, type MappingContext } from './context.js';
import type { Draft } from './draft.js';

/** Single-use accessories and the generator, by generic type alone. */
export function toDevices(context: MappingContext): readonly Draft<Device>[] {
  const { knives = [], accessories = [], generator } = context.fields.equipment ?? {};
  const devices = [
    ...knives.map(({ kind, injectionChannel, minChannelMm }) => ({
      kind: `knife-${kind}`,
      type: context.concept(WORD_CODES.knife[kind]),
      property: [
        ...(injectionChannel === undefined ? [] : [hasChannel(context, injectionChannel)]),
        ...minimumChannel(context, minChannelMm),
      ],
    })),
    ...accessories.map(({ kind, minChannelMm }) => ({
      kind,
      type: context.concept(WORD_CODES.accessory[kind]),
      property: minimumChannel(context, minChannelMm),
    })),
    ...(generator === undefined
      ? []
      : [{ kind: 'generator', type: generatorType(context), property: settings(context) }]),
  ];
  return devices.map(({ kind, type, property }, i) => {
    const before = devices.slice(0, i).filter((other) => other.kind === kind).length;
    const key = before === 0 ? kind : `${kind}.${before + 1}`;
    return {
      key,
      resource: {
        resourceType: 'Device',
        ...head(context, 'Device', key, 'dr-device'),
        type,
        ...(property.length === 0 ? {} : { property }),
      },
    };
  });
}

const propertyType = (context: MappingContext, code: 'injection-channel' | 'minimum-channel') =>
  context.concept(localRef({ set: 'device-property', code }));

function hasChannel(context: MappingContext, has: boolean): DeviceProperty {
  return {
    type: propertyType(context, 'injection-channel'),
    valueCode: [context.concept(ANSWERS[has ? 'yes' : 'no'])],
  };
}

function minimumChannel(context: MappingContext, mm: number | undefined): DeviceProperty[] {
  if (mm === undefined) return [];
  return [
    {
      type: propertyType(context, 'minimum-channel'),
      valueQuantity: [{ value: mm, ...UNITS.mm }],
    },
  ];
}

function generatorType(context: MappingContext): CodeableConcept {
  return context.concept(localRef({ set: 'device-type', code: 'electrosurgical-generator' }));
}

function settings(context: MappingContext): DeviceProperty[] {
  return (context.fields.equipment?.generator ?? []).map(({ purpose, mode, powerW }) => ({
    type: context.concept(WORD_CODES.electrodePurpose[purpose]),
    ...(powerW === undefined ? {} : { valueQuantity: [{ value: powerW, ...UNITS.watt }] }),
    valueCode: [context.concept(WORD_CODES.electrodeMode[mode])],
  }));
}
