import { ChargewrightError, type Quantity, read, write, writeNumber } from "@chargewright/quantities";
import { readInputs } from "../relation/read-inputs.ts";
import type { AnyRelation, Output } from "../relation/relation.ts";
import { type WorkedCheck, type WorkedOutput, work } from "../relation/work.ts";
import { version } from "../version.ts";

/** One number of a pasted check against the same computed anew. */
export interface Comparison {
  readonly name: string;
  /** As it stands in the pasted text. */
  readonly stated: string;
  /** As it comes out now. */
  readonly computed: string;
  readonly same: boolean;
}

/** A pasted check computed anew. */
export interface Rerun {
  /** The check as it comes out now. */
  readonly check: WorkedCheck;
  /** Version of the library that wrote the pasted check. */
  readonly version: string;
  readonly outputs: readonly Comparison[];
  /** True where every result is as stated. */
  readonly same: boolean;
}

const LINE = /chargewright (\d+\.\d+\.\d+): ([a-z0-9-]+): ([^\n`]*?) => ([^\n`]*)/;

/**
 * The one line from which anybody can run a check again:
 * `chargewright 0.1.0: air-density: pressure = 84 kPa absolute; temperature = 38 °C => density = 0.9408 kg/m³`.
 * @param args the arguments that `check` was made of.
 */
export function checkLine(check: WorkedCheck, args: Readonly<Record<string, Quantity | undefined>>): string {
  const inputs = check.inputs.flatMap(({ name, preset }) => {
    const quantity = args[name];
    return quantity === undefined ? [] : [`${name} = ${preset ?? faithful(quantity)}`];
  });
  const outputs = check.outputs.map(({ name, text }) => `${name} = ${text}`);
  return `chargewright ${version}: ${check.relation}: ${inputs.join("; ")} => ${outputs.join("; ")}`;
}

/** A quantity so that it reads back the same: every figure of value and ±, and as many digits as were stated. */
function faithful(quantity: Quantity): string {
  const { kind, si, unit, digits } = quantity;
  const all = write(quantity, { digits: "all" });
  if (digits === undefined) return all;
  const stated = all.replace(
    /^(\(?)[-+\d.e]+/,
    (_, bracket: string) => bracket + writeNumber(quantity.in(unit), digits),
  );
  return read(stated, kind).si === si ? stated : all;
}

/**
 * Computes a pasted check anew from the line in it, and says of each result whether it is as stated.
 * @param find gives a relation by its id, as the registry's `get` does.
 * @throws ChargewrightError `unreadable` where the text holds no such line, `unknown-relation`, and what `readInputs`
 *   and the relation throw.
 */
export function rerun(text: string, find: (id: string) => AnyRelation | undefined): Rerun {
  const [, written, id, inputs, outputs] = LINE.exec(text) ?? [];
  if (written === undefined || id === undefined || inputs === undefined || outputs === undefined)
    throw new ChargewrightError(
      "unreadable",
      'there is no line in it that begins with "chargewright" and its version; copy the whole worked check',
      { value: text },
    );
  const relation = find(id);
  if (relation === undefined)
    throw new ChargewrightError("unknown-relation", `this version knows no relation "${id}"`, { value: id });
  const stated = pairs(outputs);
  const said = statedQuantities(relation, stated);
  const units = Object.fromEntries(Object.entries(said).map(([name, { unit }]) => [name, unit]));
  const now = work(relation, readInputs(relation, pairs(inputs)), units);
  // Written with as many digits as the pasted one: fewer digits are no other value.
  const check = {
    ...now,
    outputs: now.outputs.map((output) => ({ ...output, text: like(output, said[output.name]) })),
  };
  const compared = check.outputs.map(({ name, text: computed }) => {
    const text = stated[name] ?? "";
    return { name, stated: text, computed, same: text === computed };
  });
  return { check, version: written, outputs: compared, same: compared.every(({ same }) => same) };
}

/** The results as a pasted check states them; what cannot be read is left out, and comes out as altered. */
function statedQuantities(relation: AnyRelation, stated: Readonly<Record<string, string>>): Record<string, Quantity> {
  const quantities: Record<string, Quantity> = {};
  for (const [name, { kind }] of Object.entries<Output>(relation.outputs)) {
    try {
      quantities[name] = read(stated[name] ?? "", kind);
    } catch (error) {
      if (!(error instanceof ChargewrightError)) throw error;
    }
  }
  return quantities;
}

function like({ quantity, text }: WorkedOutput, said: Quantity | undefined): string {
  return said?.digits === undefined ? text : write(quantity, { digits: Math.min(said.digits, 17) });
}

function pairs(list: string): Record<string, string> {
  return Object.fromEntries(
    list.split("; ").map((pair) => {
      const at = pair.indexOf(" = ");
      return [pair.slice(0, at).trim(), pair.slice(at + 3).trim()];
    }),
  );
}
