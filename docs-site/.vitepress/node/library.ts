// What the site's build needs of the library, in one module, so that it is bundled once from the packages' source.

export { kindFacts, write, writeNumber } from "@chargewright/quantities";
export * as exported from "chargewright";
export { citedBy, subjects } from "chargewright";
export { relations } from "chargewright/registry";
export { evaluateRecord } from "../../../tests/support/evaluate-record.ts";
export { loadRecords, loadSources } from "../../../tests/support/load-records.ts";
export { compute } from "../calculator/outcome.ts";
export { exampleState } from "../calculator/state.ts";
