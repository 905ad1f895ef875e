import manifest from '../package.json' with { type: 'json' };

/** Version of this program, as package.json has it. */
export const SOFTWARE_VERSION: string = manifest.version;
