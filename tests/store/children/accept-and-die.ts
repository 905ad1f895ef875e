import { createRecordStore, openDatabase } from '../../../src/store/index.js';
import { accept } from '../samples.js';

/** Accepts a case and dies at the point that is named: before or after the commit. */
const [url = '', caseId = '', point = ''] = process.argv.slice(2);
const die = () => process.kill(process.pid, 'SIGKILL');

const store = createRecordStore(await openDatabase(url));
await store.inCase(caseId, async (journal) => {
  await accept(caseId)(journal);
  if (point === 'before commit') die();
});
die();
