export { adapters } from './catalog/adapters.ts';
export { cableKinds, leadOf } from './catalog/cables/cable-kinds.ts';
export { cableWords, neededAdapters, proposalWords } from './catalog/cables/cable-words.ts';
export { connectors } from './catalog/connectors.ts';
export { judgePair } from './catalog/fit.ts';
export { type ShelfKind, shelf } from './catalog/kinds/index.ts';
export { changeKind } from './catalog/laying/change-kind.ts';
export { layInHookup } from './catalog/laying/lay-in-hookup.ts';
export { moveCableEnd } from './catalog/laying/move-cable-end.ts';
export { findNewPartners, findPartners, type NewPartner } from './catalog/laying/partners.ts';
export { placeUnit } from './catalog/laying/place-unit.ts';
export { splitCable, throughPorts } from './catalog/laying/split-cable.ts';
export type { PinPlan } from './catalog/pins/pin-plan.ts';
export { pinPlanOf } from './catalog/pins/pin-plan-of.ts';
export { groupNames, searchKinds, searchShelf, shelfGroups } from './catalog/search-shelf.ts';
export { fuseFamilyNames } from './catalog/wire/fuse-family-names.ts';
export { fuseBreakingAmps, fuseRatings } from './catalog/wire/fuses.ts';
export { parseWire } from './catalog/wire/parse-wire.ts';
export { wireName } from './catalog/wire/wire.ts';
export { asPeopleCount } from './quantity/as-people-count.ts';
export { counted, plural } from './quantity/counted.ts';
export { wattsFromDbm } from './quantity/decibel.ts';
export * from './quantity/format.ts';
export { asKept, type Limit, limitProblem, limits } from './quantity/limits.ts';
export { parseQuantity, type QuantityKind } from './quantity/parse-quantity.ts';
export { budgetIn } from './reports/budget/budget-in.ts';
export { type BudgetTableName, budgetTable } from './reports/budget/budget-table.ts';
export type * from './reports/budget/rows.ts';
export { worstWay } from './reports/budget/ways/way-rows.ts';
export { wholeBudgetTable } from './reports/budget/whole-budget-table.ts';
export { type BuyGroup, type BuyRow, buyGroups } from './reports/buy/buy-row.ts';
export { buyTable } from './reports/buy/buy-table.ts';
export { usualAllowance, whatToBuy } from './reports/buy/what-to-buy.ts';
export { cableTable } from './reports/cables/cable-table.ts';
export { listCables } from './reports/cables/list-cables.ts';
export { type NumberScheme, numberCables } from './reports/cables/number-cables.ts';
export { compareHookups, type HookupDifference } from './reports/changes/compare-hookups.ts';
export { describeChange, describeDifference } from './reports/changes/describe-change.ts';
export { lineHeight, type MeasureText } from './reports/flags/fit-text.ts';
export { type FlagSheet, usualFlagSheet } from './reports/flags/flag-sheet.ts';
export { type FlagText, flagsOf, flagTable } from './reports/flags/flag-text.ts';
export { type FlagPages, layOutFlags, type PlacedFlag, ringMm } from './reports/flags/lay-out-flags.ts';
export { isFoundIn, isOpenCause, isPressing } from './reports/is-pressing.ts';
export { makeTable } from './reports/make/make-table.ts';
export { type MakeRow, type MakeWire, whatToMake } from './reports/make/what-to-make.ts';
export { draftPowerUp, type PowerUpDraft } from './reports/power-up/draft-power-up.ts';
export { formatExpected, formatQuantity } from './reports/power-up/format-quantity.ts';
export { judgeReading } from './reports/power-up/judge-reading.ts';
export { nowAndBefore, startOfRound, writeReading } from './reports/power-up/kept-readings.ts';
export { type Cause, causesOf, type StepReading } from './reports/power-up/off/causes-of.ts';
export { figureOfReading, takeAsFigure } from './reports/power-up/own-figures.ts';
export { parseReading } from './reports/power-up/parse-reading.ts';
export * from './reports/power-up/sheet.ts';
export { sheetOf } from './reports/power-up/sheet-of.ts';
export type * from './reports/report-rows.ts';
export type { ReportTable } from './reports/report-table.ts';
export type * from './reports/rf/rf-report.ts';
export { spiceDecks } from './reports/spice-decks.ts';
export { reportSurvey, surveyReport } from './reports/survey-report.ts';
export { type Trouble, troubleReport } from './reports/trouble-report.ts';
export { writeCsv } from './reports/write-csv.ts';
export { acceptFinding } from './rules/accept.ts';
export { type Finding, type Severity, severities } from './rules/finding.ts';
export { rules } from './rules/index.ts';
export { copyHookup } from './station/copy-hookup.ts';
export { createStation } from './station/create-station.ts';
export { type Change, edit } from './station/edit.ts';
export { type ElementFigure, elementFigures } from './station/element-figures.ts';
export { elementTitle, elementTitles } from './station/element-title.ts';
export { fieldLabel } from './station/figure-labels.ts';
export { checkKind } from './station/file/check/check-kind.ts';
export { type WholeKind, writeKind } from './station/file/kind-file.ts';
export type { Problem } from './station/file/problem.ts';
export { readKind } from './station/file/read-kind.ts';
export { readStation } from './station/file/read-station.ts';
export { savedText } from './station/file/saved-text.ts';
export { writeStation } from './station/file/write-station.ts';
export type { Fix } from './station/fix.ts';
export { freeName } from './station/free-name.ts';
export { goTo, type History, recordChange, redo, replaceStation, startHistory, undo } from './station/history.ts';
export { isOutdoor } from './station/outdoors.ts';
export { classOf, drawnKind, hookupsOf, kindOf, portName, settingsIn } from './station/parts.ts';
export type { Place } from './station/place.ts';
export { plugOf } from './station/plug-of.ts';
export { ringAt } from './station/ring-at.ts';
export { ringColours, ringName } from './station/ring-colours.ts';
export type { Connector } from './station/schema/connector.ts';
export { type ElementField, elementFields } from './station/schema/element-fields.ts';
export { longestId } from './station/schema/numbers.ts';
export type { RingColour } from './station/schema/ring-colour.ts';
export type { Cable, CableEnd, Hookup, Mark, Plan, PortRef, Station, Unit } from './station/schema/schema.ts';
export { type TextSort, textProblem } from './station/schema/text-problem.ts';
export {
  type Actor,
  type Condition,
  type Feel,
  hasTypicalFigures,
  type Port,
  type PortClass,
  portClasses,
  type UnitElement,
  type UnitKind,
  unitGroups,
} from './station/schema/unit-kind.ts';
export { shareEqual } from './station/share-equal.ts';
export { withoutUndefined } from './station/without-undefined.ts';
export { type Survey, survey } from './survey.ts';
export type { Act } from './whatif/acts/act.ts';
export { difference } from './whatif/acts/harm.ts';
export type { MixUp, MixUpStudy } from './whatif/acts/mix-up.ts';
export { studyMixUps } from './whatif/acts/study-mix-ups.ts';
export { type FailureGroup, type HarmfulFailure, type RankedFailures, rankFailures } from './whatif/rank-failures.ts';
export { applyMeasures } from './whatif/scheme/apply-measures.ts';
export type { Measure, Scheme } from './whatif/scheme/measure.ts';
export { precautionFor } from './whatif/scheme/precaution-for.ts';
export { schemeFor } from './whatif/scheme/scheme-for.ts';
export { type FailureStudy, studyFailures } from './whatif/study-failures.ts';
export { type Supposed, type Variable, variablesOf, whatIf } from './whatif/what-if.ts';
