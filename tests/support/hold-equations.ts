// The printed equations are the ones that run: each is executed by a general mathematics library with 40 digits and
// held against the kernel.
import type { AnyRelation, Input, Output } from "chargewright";
import { type Equation, evaluate, explicitSymbol, parseEquation, symbolsIn, termText } from "chargewright";
import fc from "fast-check";
import { all, type BigNumber, create, type FactoryFunctionMap, type MathNode } from "mathjs";
import { expect, test } from "vitest";
import { siOf, validArguments } from "./random-inputs.ts";
import { exactStudentT } from "./student-t.ts";

const math = create(all as FactoryFunctionMap, { number: "BigNumber", precision: 40 });

/** The exact value of a double, which its shortest decimal text is not. */
function exact(value: number): BigNumber {
  if (value === 0) return math.bignumber(0);
  const exponent = Math.floor(Math.log2(Math.abs(value))) - 52;
  const mantissa = value / 2 ** exponent;
  return math.bignumber(mantissa.toFixed(0)).times(powerOfTwo(exponent));
}

const powerOfTwo = remembered((exponent: number) => math.pow(math.bignumber(2), exponent) as BigNumber);

/** A function that computes each answer once. */
function remembered<A, R>(compute: (of: A) => R): (of: A) => R {
  const known = new Map<A, R>();
  return (of) => {
    const answer = known.get(of) ?? compute(of);
    known.set(of, answer);
    return answer;
  };
}

// A thousand runs evaluate the same few texts.
const compiled = remembered((text: string) => math.compile(text));
const compiledNode = remembered((node: MathNode) => node.compile());
const parsed = remembered(parseEquation);

math.import(
  {
    // sum(n, from, to, expression): the expression is evaluated anew for every n.
    sum: Object.assign(
      (args: MathNode[], _: unknown, scope: Map<string, unknown>) => {
        const [index, from, to, of] = args as [MathNode, MathNode, MathNode, MathNode];
        const last = Number(compiledNode(to).evaluate(scope));
        const term = compiledNode(of);
        let total: unknown = math.bignumber(0);
        for (let n = Number(compiledNode(from).evaluate(scope)); n <= last; n++) {
          const inner = new Map(scope);
          inner.set(index.toString(), math.bignumber(n));
          total = math.add(total as BigNumber, term.evaluate(inner));
        }
        return total;
      },
      { rawArgs: true },
    ),
    ln: (value: BigNumber) => math.log(value),
    tcdf: exactStudentT,
  },
  { override: true },
);

interface Executed {
  readonly values: Readonly<Record<string, BigNumber>>;
  readonly residuals: Readonly<Record<string, number>>;
}

/** The one symbol of an implicit equation that is not known yet. */
function unknownIn({ text, left, right }: Equation, known: Readonly<Record<string, unknown>>): string {
  const unknown = new Set([...symbolsIn(left), ...symbolsIn(right)].filter((name) => known[name] === undefined));
  const [symbol, ...more] = unknown;
  if (symbol === undefined || more.length > 0) throw new Error(`"${text}" must determine one symbol: ${[...unknown]}`);
  return symbol;
}

/** Runs the equations as printed; returns every symbol's value, and how far each implicit one is from holding. */
function execute(relation: AnyRelation, si: Readonly<Record<string, number>>): Executed {
  const scope: Record<string, unknown> = {};
  const residuals: Record<string, number> = {};
  const computed = relation.si(si) as Record<string, number>;
  for (const [name, { symbol }] of Object.entries<Input>(relation.inputs)) scope[symbol] = exact(si[name] as number);
  for (const [symbol, { value }] of Object.entries(relation.constants ?? {})) scope[symbol] = math.bignumber(value);
  for (const text of relation.equations) {
    const equation = parsed(text);
    if (explicitSymbol(equation) !== undefined) {
      compiled(text).evaluate(scope);
      continue;
    }
    const symbol = unknownIn(equation, scope);
    const [name] = Object.entries<Output>(relation.outputs).find(([, output]) => output.symbol === symbol) ?? [];
    scope[symbol] = exact(computed[name ?? ""] as number);
    const [left, right] = text.split(/(?<![<>])=/).map((side) => compiled(side).evaluate(scope)) as [
      BigNumber,
      BigNumber,
    ];
    residuals[text] = left.minus(right).abs().div(left.abs().plus(right.abs())).toNumber();
  }
  return { values: scope as Record<string, BigNumber>, residuals };
}

// The relations that everything else stands on are tried the most.
const core: ReadonlySet<string> = new Set([
  "air-density",
  "blower-flow",
  "blower-discharge-temperature",
  "cooler-effectiveness",
  "net-density-gain",
  "pressure-drop-limit",
  "fuel-flow-from-economy",
  "air-fuel-ratio",
  "smoke-limited-fuel",
]);

/** Holds the printed equations of a relation against its kernel. */
export function holdEquations(relation: AnyRelation): void {
  const runs = core.has(relation.id) ? 1000 : 200;

  test(`every printed equation agrees with the kernel to 1e-12 over ${runs} random inputs`, () => {
    fc.assert(
      fc.property(validArguments(relation), (args) => {
        const si = siOf(args);
        const computed = relation.si(si) as Record<string, number>;
        const { values: printed, residuals } = execute(relation, si);
        for (const [text, residual] of Object.entries(residuals)) expect(residual, text).toBeLessThan(1e-10);
        for (const [name, { symbol }] of Object.entries<Output>(relation.outputs)) {
          const expected = printed[symbol] as BigNumber;
          const difference = exact(computed[name] as number)
            .minus(expected)
            .abs();
          expect(difference.lte(expected.abs().times(1e-12)), `${name}: ${computed[name]} against ${expected}`).toBe(
            true,
          );
        }
      }),
      { numRuns: runs },
    );
  });

  test("the steps that worked checks evaluate on the way agree with the same at 40 digits", () => {
    fc.assert(
      fc.property(validArguments(relation), (args) => {
        const si = siOf(args);
        const values: Record<string, number> = {};
        for (const [name, { symbol }] of Object.entries<Input>(relation.inputs)) values[symbol] = si[name] as number;
        for (const [symbol, { value }] of Object.entries(relation.constants ?? {})) values[symbol] = value;
        const { values: exactly } = execute(relation, si);
        for (const text of relation.equations) {
          const equation = parsed(text);
          const symbol = explicitSymbol(equation) ?? unknownIn(equation, values);
          values[symbol] =
            explicitSymbol(equation) === undefined
              ? (exactly[symbol] as BigNumber).toNumber()
              : evaluate(equation.right, values);
        }
        for (const symbol of Object.keys(relation.steps ?? {}))
          expect(
            exact(values[symbol] as number)
              .minus(exactly[symbol] as BigNumber)
              .abs()
              .lte((exactly[symbol] as BigNumber).abs().times(1e-12)),
            symbol,
          ).toBe(true);
      }),
    );
  });

  test("uses declared symbols only, and every declared one", () => {
    const inputs = Object.values<Input>(relation.inputs).map(({ symbol }) => symbol);
    const known = new Set([...inputs, ...Object.keys(relation.constants ?? {})]);
    const used = new Set<string>();
    for (const text of relation.equations) {
      const equation = parseEquation(text);
      const names = new Set([...symbolsIn(equation.left), ...symbolsIn(equation.right)]);
      const fresh = [...names].filter((name) => !known.has(name));
      expect(fresh, `what "${text}" determines`).toEqual([explicitSymbol(equation) ?? fresh[0]]);
      for (const name of names) if (known.has(name)) used.add(name);
      for (const name of fresh) known.add(name);
    }
    const outputs = Object.values<Output>(relation.outputs).map(({ symbol }) => symbol);
    for (const name of [...inputs, ...Object.keys(relation.constants ?? {})]) expect(used).toContain(name);
    for (const name of [...outputs, ...Object.keys(relation.steps ?? {})]) expect(known).toContain(name);
    expect(known.size).toBe(
      inputs.length +
        Object.keys(relation.constants ?? {}).length +
        Object.keys(relation.steps ?? {}).length +
        outputs.length,
    );
  });

  test("the text of an equation, parsed again, is the same equation", () => {
    for (const text of relation.equations) {
      const { left, right } = parseEquation(text);
      const again = parseEquation(`${termText(left, (name) => name)} = ${termText(right, (name) => name)}`);
      expect([again.left, again.right]).toEqual([left, right]);
    }
  });
}
