import { draftPowerUp, type PowerUpDraft } from '../../../core/reports/power-up/draft-power-up.ts';
import type { PowerUpSheet } from '../../../core/reports/power-up/sheet.ts';
import { sheetOf } from '../../../core/reports/power-up/sheet-of.ts';
import type { Station } from '../../../core/station/schema/schema.ts';
import { survey } from '../../../core/survey.ts';

/** The draft of a station's power-up sheet, straight from its document. */
export const draftOf = (station: Station): PowerUpDraft => draftPowerUp(survey(station));

/** The sheet of a station, straight from its document. */
export const powerUpSheet = (station: Station): PowerUpSheet => sheetOf(draftOf(station));
