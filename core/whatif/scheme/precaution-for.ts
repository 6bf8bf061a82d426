import type { ActKind } from '../acts/act.ts';
import type { MixUp } from '../acts/mix-up.ts';

const precautions: Record<ActKind, string> = {
  moved: 'No ring tells these two jacks apart: another connector at one of them would.',
  exchanged: 'No ring tells these two jacks apart: another connector at one of them would.',
  turned: 'A connector of another kind at one end keeps it from going in the other way round.',
  crossed: 'A connector with a key in place of loose cores; until then each core is metered before power comes on.',
  mistaken: 'One of the two leads gets another look: another colour of jacket, or other plugs.',
  switched: 'A switch is looked at before the key is pressed.',
};

/** What helps against a mix-up that rings do not prevent; common practice. */
export const precautionFor = ({ act }: MixUp): string => precautions[act.kind];
