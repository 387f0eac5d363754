export * from "./air/index.ts";
export * from "./blower/index.ts";
export * from "./compare/index.ts";
export * from "./cooler/index.ts";
export * from "./drive/index.ts";
export * from "./duct/index.ts";
export * from "./engine/index.ts";
export * from "./exhaust/index.ts";
export * from "./fuel/index.ts";
export * from "./limiter/index.ts";
export * from "./materials/index.ts";
export type { Citation, SourceId } from "./relation/citations.generated.ts";
export { citations } from "./relation/citations.generated.ts";
export { type Column, columns } from "./relation/columns.ts";
export type {
  Arguments,
  Assumption,
  ConstantDeclaration,
  Declaration,
  InputDeclaration,
  InputDeclarations,
  OutputDeclaration,
  OutputDeclarations,
  Requirement,
  Results,
  SiInputs,
  SiOutputs,
  StepDeclaration,
  Subject,
  Validity,
} from "./relation/declaration.ts";
export { subjects } from "./relation/declaration.ts";
export {
  type Equation,
  evaluate,
  explicitSymbol,
  parseEquation,
  symbolsIn,
  type Term,
  termText,
} from "./relation/equation.ts";
export { equationMathml, type PutIn, symbolMathml, symbolText } from "./relation/mathml.ts";
export { rangeText } from "./relation/range-text.ts";
export { readInput, readInputs, type Texts } from "./relation/read-inputs.ts";
export { type AnyRelation, type Input, type Output, type Relation, relation } from "./relation/relation.ts";
export { type SimulatedOutput, type Simulation, type SimulationOptions, simulate } from "./relation/simulate.ts";
export { solveFor } from "./relation/solve-for.ts";
export { type ValidityWarning, validityWarnings } from "./relation/validity.ts";
export {
  assumedText,
  citedBy,
  type WorkedCheck,
  type WorkedInput,
  type WorkedOutput,
  type WorkedStep,
  work,
} from "./relation/work.ts";
export * from "./relief/index.ts";
export * from "./road/index.ts";
export * from "./sensor/index.ts";
export { version } from "./version.ts";
export { checkLine, type Rerun, rerun } from "./worked/check-line.ts";
export { fragment, type PageState, readFragment } from "./worked/fragment.ts";
export { workedMarkdown } from "./worked/markdown.ts";
export { workedText } from "./worked/text.ts";
