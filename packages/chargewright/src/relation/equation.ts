import jsep from "jsep";
import { studentT } from "../numerics/student-t.ts";

// jsep knows the caret as bitwise exclusive or; in an equation it is a power and binds from the right.
jsep.addBinaryOp("^", 15, true);

/** A parsed part of an equation. */
export type Term =
  | { readonly type: "number"; readonly value: number; readonly raw: string }
  | { readonly type: "symbol"; readonly name: string }
  | { readonly type: "minus"; readonly of: Term }
  | { readonly type: "operation"; readonly operator: Operator; readonly left: Term; readonly right: Term }
  | { readonly type: "function"; readonly name: FunctionName; readonly of: readonly Term[] }
  /** `sum(n, 0, 20, expression in n)`. */
  | { readonly type: "sum"; readonly index: string; readonly from: Term; readonly to: Term; readonly of: Term }
  /** `left < right ? met : otherwise`. */
  | {
      readonly type: "choice";
      readonly comparison: Comparison;
      readonly left: Term;
      readonly right: Term;
      readonly met: Term;
      readonly otherwise: Term;
    };

export type Operator = "+" | "-" | "*" | "/" | "^";
export type Comparison = "<" | "<=" | ">" | ">=";

/** The functions that an equation may use. */
export const functions = {
  sqrt: Math.sqrt,
  cbrt: Math.cbrt,
  exp: Math.exp,
  ln: Math.log,
  log10: Math.log10,
  abs: Math.abs,
  min: Math.min,
  max: Math.max,
  floor: Math.floor,
  ceil: Math.ceil,
  round: Math.round,
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
  asin: Math.asin,
  acos: Math.acos,
  atan: Math.atan,
  tanh: Math.tanh,
  factorial,
  /** Probability that Student's t lies below the first number, with the second as its degrees of freedom. */
  tcdf: studentT,
} as const satisfies Readonly<Record<string, (...of: number[]) => number>>;

export type FunctionName = keyof typeof functions;

function factorial(n: number): number {
  return n < 2 ? 1 : n * factorial(n - 1);
}

/** An equation, parsed: two sides that are equal. */
export interface Equation {
  readonly text: string;
  readonly left: Term;
  readonly right: Term;
}

/** Parses an equation as a declaration writes it: two expressions with one equals sign between them. */
export function parseEquation(text: string): Equation {
  const [left, right, ...more] = text.split(/(?<![<>])=/);
  if (left === undefined || right === undefined || more.length > 0)
    throw new SyntaxError(`an equation has one equals sign, unlike "${text}"`);
  return { text, left: term(jsep(left) as Node, text), right: term(jsep(right) as Node, text) };
}

/** The symbol that an equation computes, where it stands alone on the left and nowhere on the right. */
export function explicitSymbol({ left, right }: Equation): string | undefined {
  return left.type === "symbol" && !symbolsIn(right).includes(left.name) ? left.name : undefined;
}

interface Node {
  readonly type: string;
  readonly value?: unknown;
  readonly raw?: string;
  readonly name?: string;
  readonly operator?: string;
  readonly argument?: Node;
  readonly left?: Node;
  readonly right?: Node;
  readonly callee?: Node;
  readonly test?: Node;
  readonly consequent?: Node;
  readonly alternate?: Node;
  readonly arguments?: readonly Node[];
}

const operators: ReadonlySet<string | undefined> = new Set<Operator>(["+", "-", "*", "/", "^"]);
const comparisons: ReadonlySet<string | undefined> = new Set<Comparison>(["<", "<=", ">", ">="]);

function term(node: Node | undefined, text: string): Term {
  const { type, value, raw, name, operator, argument, left, right, callee, test, ...rest } = node ?? {
    type: "nothing",
  };
  const within = (part: Node | undefined) => term(part, text);
  if (type === "Literal" && typeof value === "number" && raw !== undefined) return { type: "number", value, raw };
  if (type === "Identifier" && name !== undefined) return { type: "symbol", name };
  if (type === "UnaryExpression" && operator === "-") return { type: "minus", of: within(argument) };
  if (type === "BinaryExpression" && operators.has(operator))
    return { type: "operation", operator: operator as Operator, left: within(left), right: within(right) };
  if (type === "ConditionalExpression" && comparisons.has(test?.operator))
    return {
      type: "choice",
      comparison: test?.operator as Comparison,
      left: within(test?.left),
      right: within(test?.right),
      met: within(rest.consequent),
      otherwise: within(rest.alternate),
    };
  const [index, from, to, of, ...more] = rest.arguments ?? [];
  if (type === "CallExpression" && callee?.name === "sum" && index?.name !== undefined && more.length === 0)
    return { type: "sum", index: index.name, from: within(from), to: within(to), of: within(of) };
  if (type === "CallExpression" && callee?.name !== undefined && Object.hasOwn(functions, callee.name))
    return { type: "function", name: callee.name as FunctionName, of: (rest.arguments ?? []).map(within) };
  throw new SyntaxError(`cannot read a part of the equation "${text}" (${type})`);
}

/** The value of a term, the symbols' values given. */
export function evaluate(term: Term, values: Readonly<Record<string, number>>): number {
  switch (term.type) {
    case "number":
      return term.value;
    case "symbol": {
      const value = values[term.name];
      if (value === undefined) throw new SyntaxError(`the equation's symbol ${term.name} has no value`);
      return value;
    }
    case "minus":
      return -evaluate(term.of, values);
    case "function":
      return (functions[term.name] as (...of: number[]) => number)(...term.of.map((part) => evaluate(part, values)));
    case "operation":
      return operate(term.operator, evaluate(term.left, values), evaluate(term.right, values));
    case "sum":
      return evaluateSum(term, values);
    case "choice":
      return evaluate(
        compare(term.comparison, evaluate(term.left, values), evaluate(term.right, values)) ? term.met : term.otherwise,
        values,
      );
  }
}

function evaluateSum(sum: Term & { type: "sum" }, values: Readonly<Record<string, number>>): number {
  const last = evaluate(sum.to, values);
  let total = 0;
  for (let n = evaluate(sum.from, values); n <= last; n++) total += evaluate(sum.of, { ...values, [sum.index]: n });
  return total;
}

function compare(comparison: Comparison, left: number, right: number): boolean {
  switch (comparison) {
    case "<":
      return left < right;
    case "<=":
      return left <= right;
    case ">":
      return left > right;
    case ">=":
      return left >= right;
  }
}

function operate(operator: Operator, left: number, right: number): number {
  switch (operator) {
    case "+":
      return left + right;
    case "-":
      return left - right;
    case "*":
      return left * right;
    case "/":
      return left / right;
    case "^":
      return left ** right;
  }
}

/** The symbols that occur in a term; the index of a sum is none of them. */
export function symbolsIn(term: Term): readonly string[] {
  switch (term.type) {
    case "sum":
      return [term.from, term.to, term.of].flatMap(symbolsIn).filter((name) => name !== term.index);
    case "choice":
      return [term.left, term.right, term.met, term.otherwise].flatMap(symbolsIn);
    case "number":
      return [];
    case "symbol":
      return [term.name];
    case "minus":
      return symbolsIn(term.of);
    case "function":
      return term.of.flatMap(symbolsIn);
    case "operation":
      return [...symbolsIn(term.left), ...symbolsIn(term.right)];
  }
}

const strength: Readonly<Record<Operator, number>> = { "+": 1, "-": 1, "*": 2, "/": 2, "^": 4 };
const MINUS = 3;

/** How tightly the outermost sign of a term binds; a thing by itself binds tightest. */
export function binding(term: Term): number {
  if (term.type === "operation") return strength[term.operator];
  if (term.type === "choice") return 0;
  return term.type === "minus" ? MINUS : 5;
}

/** Whether an operand needs parentheses to keep its meaning beside `operator`. */
export function needsParentheses(operand: Term, operator: Operator, side: "left" | "right"): boolean {
  const own = binding(operand);
  const outer = strength[operator];
  if (own !== outer) return own < outer;
  return operator === "^" ? side === "left" : side === "right" && operator !== "+" && operator !== "*";
}

/** A term as plain text, each symbol written by `symbol`; what is written with a space in it stands in parentheses where it must. */
export function termText(term: Term, symbol: (name: string) => string): string {
  const text = (part: Term) => termText(part, symbol);
  switch (term.type) {
    case "number":
      return term.raw;
    case "symbol":
      return symbol(term.name);
    case "minus":
      return `-${binding(term.of) < MINUS ? `(${text(term.of)})` : text(term.of)}`;
    case "function":
      return `${term.name}(${term.of.map(text).join(", ")})`;
    case "sum":
      return `sum(${term.index}, ${text(term.from)}, ${text(term.to)}, ${text(term.of)})`;
    case "choice":
      return `${text(term.left)} ${term.comparison} ${text(term.right)} ? ${text(term.met)} : ${text(term.otherwise)}`;
    case "operation": {
      const { operator, left, right } = term;
      const side = (part: Term, where: "left" | "right") => {
        const written = text(part);
        const bare = !needsParentheses(part, operator, where);
        // A value with its unit is two words; a power or a quotient must take hold of both.
        const whole =
          part.type !== "symbol" ||
          !(/[ -]/.test(written) && (operator === "^" || operator === "/" || written.startsWith("-")));
        return bare && whole ? written : `(${written})`;
      };
      const gap = operator === "^" ? "" : " ";
      return `${side(left, "left")}${gap}${operator}${gap}${side(right, "right")}`;
    }
  }
}
