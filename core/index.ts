export { type Adapter, adapters } from './catalog/adapters.ts';
export { cableKinds, type ShelfCable } from './catalog/cable-kinds.ts';
export { coaxLossDb } from './catalog/coax.ts';
export { judgePair, type PairVerdict } from './catalog/fit.ts';
export { fuseColour, fuseRatings, nextFuse, openingTime } from './catalog/fuses.ts';
export { type ShelfKind, shelf } from './catalog/kinds/index.ts';
export { layCable } from './catalog/lay.ts';
export { placeUnit } from './catalog/place.ts';
export { type ShelfGroup, searchShelf, shelfGroups } from './catalog/search-shelf.ts';
export { wireLimitAmps, wireName } from './catalog/wire.ts';
export { dbmFromWatts, wattsFromDbm } from './quantity/decibel.ts';
export * from './quantity/format.ts';
export { type ParsedQuantity, parseQuantity, type QuantityKind } from './quantity/parse.ts';
export { writeCsv } from './reports/csv.ts';
export type * from './reports/report.ts';
export { spiceDeck } from './reports/spice-deck.ts';
export { surveyReport } from './reports/survey-report.ts';
export { acceptFinding } from './rules/accept.ts';
export { type Finding, type Place, type Severity, severities } from './rules/finding.ts';
export type { CableKind } from './station/cable-kind.ts';
export type { Connector } from './station/connector.ts';
export { createStation } from './station/create.ts';
export { type Change, changeName, edit } from './station/edit.ts';
export { type History, recordChange, redo, startHistory, undo } from './station/history.ts';
export {
  asDrawn,
  cablesIn,
  classOf,
  hookupsOf,
  kindOf,
  portName,
  portOf,
  settingsIn,
  unitOf,
} from './station/parts.ts';
export type { Problem } from './station/problem.ts';
export { type ReadResult, readStation } from './station/read.ts';
export { plugOf } from './station/references.ts';
export type { Cable, CableEnd, Hookup, Plan, PortRef, Station, Unit } from './station/schema.ts';
export type { Actor, Port, PortClass, UnitElement, UnitGroup, UnitKind } from './station/unit-kind.ts';
export { writeStation } from './station/write.ts';
