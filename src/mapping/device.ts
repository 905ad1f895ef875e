import type { CodeableConcept, Device, DeviceProperty } from 'fhir/r4.js';
import { ANSWERS, localRef, WORD_CODES } from '../terminology/index.js';
import { head, type MappingContext } from './context.js';
import type { Draft } from './draft.js';
import { measured } from './values.js';

/** Single-use accessories and the generator, by generic type alone. */
export function toDevices(context: MappingContext): readonly Draft<Device>[] {
  const { knives = [], accessories = [], generator } = context.fields.equipment ?? {};
  const devices = [
    ...knives.map(({ kind, injectionChannel, minChannelMm }, i) => ({
      kind: `knife-${kind}`,
      type: context.concept(WORD_CODES.knife[kind]),
      property: [
        ...(injectionChannel === undefined ? [] : [hasChannel(context, injectionChannel)]),
        ...minimumChannel(context, `/equipment/knives/${i}/minChannelMm`, minChannelMm),
      ],
    })),
    ...accessories.map(({ kind, minChannelMm }, i) => ({
      kind,
      type: context.concept(WORD_CODES.accessory[kind]),
      property: minimumChannel(context, `/equipment/accessories/${i}/minChannelMm`, minChannelMm),
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

function minimumChannel(
  context: MappingContext,
  pointer: string,
  mm: number | undefined,
): DeviceProperty[] {
  if (mm === undefined) return [];
  return [
    {
      type: propertyType(context, 'minimum-channel'),
      valueQuantity: [measured(context, pointer, mm, 'mm')],
    },
  ];
}

function generatorType(context: MappingContext): CodeableConcept {
  return context.concept(localRef({ set: 'device-type', code: 'electrosurgical-generator' }));
}

function settings(context: MappingContext): DeviceProperty[] {
  return (context.fields.equipment?.generator ?? []).map(({ purpose, mode, powerW }, i) => ({
    type: context.concept(WORD_CODES.electrodePurpose[purpose]),
    ...(powerW === undefined
      ? {}
      : {
          valueQuantity: [measured(context, `/equipment/generator/${i}/powerW`, powerW, 'watt')],
        }),
    valueCode: [context.concept(WORD_CODES.electrodeMode[mode])],
  }));
}
