/** A table as it is exported: a row of headings, and rows with as many cells. */
export interface ReportTable {
  readonly head: readonly string[];
  readonly rows: readonly (readonly (string | number)[])[];
}
