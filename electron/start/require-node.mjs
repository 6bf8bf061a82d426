// Imported before everything else: what follows uses what an older Node does not have.
import { nodeTooOld } from './node-version.mjs';

const tooOld = nodeTooOld(process.versions.node);
if (tooOld) {
  console.error(tooOld);
  process.exit(1);
}
