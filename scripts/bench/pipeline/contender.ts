import { createHash } from 'node:crypto';
import { CONTENDERS } from './contenders.js';
import { type Answer, isRefusal, type Request, type Work } from './protocol.js';

/** A round takes at least so much CPU, in ms, so that the clock's step does not matter. */
const LEAST_MS = 300;

let work: Work = (input) => input;
let inputs: readonly string[] = [];
let repeats = 1;

async function answer(request: Request): Promise<Answer> {
  switch (request.ask) {
    case 'load': {
      const before = performance.now();
      const prepare = CONTENDERS[request.name];
      if (prepare === undefined) throw new Error('no such contender');
      const { prepared, texts } = await prepare(request.inputs);
      work = prepared;
      inputs = texts;
      return { value: performance.now() - before };
    }
    case 'outputs':
      return { texts: inputs.map(work) };
    case 'hash': {
      const bundles = inputs.map(work).filter((text) => !isRefusal(text));
      return { value: createHash('sha256').update(bundles.join('\n')).digest('hex') };
    }
    case 'entries':
      return { value: JSON.parse(inputs.map(work)[0] ?? '{}').entry.length };
    case 'round':
      return { value: measure() };
  }
}

/** CPU in ms for all inputs once; finds out first how often they must be repeated. */
function measure(): number {
  for (;;) {
    const before = process.cpuUsage();
    for (let i = 0; i < repeats; i += 1) for (const input of inputs) work(input);
    const { user, system } = process.cpuUsage(before);
    const ms = (user + system) / 1000;
    if (ms >= LEAST_MS) return ms / repeats;
    repeats = Math.max(repeats + 1, Math.ceil((repeats * LEAST_MS * 1.2) / Math.max(ms, 1)));
  }
}

process.on('message', (request: Request) => {
  answer(request).then(
    (told) => process.send?.(told),
    (error: unknown) => {
      console.error(error);
      process.exit(1);
    },
  );
});
