export { adapters } from './catalog/adapters.ts';
export { cableKinds, leadOf } from './catalog/cable-kinds.ts';
export { cableWords, neededAdapters, proposalWords } from './catalog/cable-words.ts';
export { changeKind } from './catalog/change-kind.ts';
export { connectors } from './catalog/connectors.ts';
export { judgePair } from './catalog/fit.ts';
export { fuseBreakingAmps, fuseRatings } from './catalog/fuses.ts';
export { type ShelfKind, shelf } from './catalog/kinds/index.ts';
export { layInHookup } from './catalog/lay-in-hookup.ts';
export { moveCableEnd } from './catalog/move-end.ts';
export { parseWire } from './catalog/parse-wire.ts';
export { findNewPartners, findPartners, type NewPartner } from './catalog/partners.ts';
export { placeUnit } from './catalog/place.ts';
export { groupNames, searchKinds, searchShelf, shelfGroups } from './catalog/search-shelf.ts';
export { splitCable, throughPorts } from './catalog/split-cable.ts';
export { wireName } from './catalog/wire.ts';
export { quantityBounds } from './quantity/bounds.ts';
export { wattsFromDbm } from './quantity/decibel.ts';
export * from './quantity/format.ts';
export { parseQuantity, type QuantityKind } from './quantity/parse.ts';
export { type BudgetSheetName, budgetSheet } from './reports/budget/budget-sheet.ts';
export type * from './reports/budget/rows.ts';
export { worstWay } from './reports/budget/ways/way-rows.ts';
export { describeChange } from './reports/changes/describe-change.ts';
export { compareHookups, type HookupDifference } from './reports/compare-hookups.ts';
export { writeCsv } from './reports/csv.ts';
export type * from './reports/report.ts';
export type * from './reports/rf-report.ts';
export { spiceDeck } from './reports/spice-deck.ts';
export { surveyReport } from './reports/survey-report.ts';
export { acceptFinding } from './rules/accept.ts';
export { type Finding, type Place, type Severity, severities } from './rules/finding.ts';
export { rules } from './rules/index.ts';
export { checkKind } from './station/check-kind.ts';
export type { Connector } from './station/connector.ts';
export { copyHookup } from './station/copy-hookup.ts';
export { createStation } from './station/create.ts';
export { type Change, edit } from './station/edit.ts';
export { type ElementField, elementFields } from './station/element-fields.ts';
export { goTo, type History, recordChange, redo, startHistory, undo } from './station/history.ts';
export { type WholeKind, writeKind } from './station/kind-file.ts';
export { classOf, drawnKind, hookupsOf, kindOf, portName, settingsIn } from './station/parts.ts';
export type { Problem } from './station/problem.ts';
export { readStation } from './station/read.ts';
export { readKind } from './station/read-kind.ts';
export { plugOf } from './station/references.ts';
export type { Cable, CableEnd, Hookup, Mark, Plan, PortRef, Station, Unit } from './station/schema.ts';
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
} from './station/unit-kind.ts';
export { writeStation } from './station/write.ts';
export { type FailureStudy, studyFailures } from './whatif/study-failures.ts';
export { type Supposed, type Variable, variablesOf, whatIf } from './whatif/what-if.ts';
