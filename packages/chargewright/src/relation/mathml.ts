import { binding, type Equation, needsParentheses, type Term } from "./equation.ts";

const greek: Readonly<Record<string, string>> = {
  alpha: "α",
  beta: "β",
  gamma: "γ",
  delta: "δ",
  Delta: "Δ",
  epsilon: "ε",
  zeta: "ζ",
  eta: "η",
  theta: "θ",
  kappa: "κ",
  lambda: "λ",
  mu: "μ",
  nu: "ν",
  xi: "ξ",
  pi: "π",
  rho: "ρ",
  sigma: "σ",
  tau: "τ",
  phi: "φ",
  Phi: "Φ",
  psi: "ψ",
  omega: "ω",
};

const escaped = (text: string) => text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;");
const row = (...parts: readonly string[]) => `<mrow>${parts.join("")}</mrow>`;
const sign = (text: string) => `<mo>${text}</mo>`;

/** A symbol as it is printed in running text: Greek letters as letters, the index after an underscore kept. */
export function symbolText(name: string): string {
  return name
    .split("_")
    .map((part) => greek[part] ?? part)
    .join("_");
}

/** A declared symbol as MathML: `eta_v` is η with the index v. */
export function symbolMathml(name: string): string {
  const [base, ...index] = name.split("_").map((part) => greek[part] ?? part);
  const letter = `<mi>${escaped(base ?? "")}</mi>`;
  return index.length === 0 ? letter : `<msub>${letter}<mtext>${escaped(index.join(","))}</mtext></msub>`;
}

/** A value with its unit as MathML. */
export function valueMathml(text: string): string {
  return `<mtext>${escaped(text)}</mtext>`;
}

const comparisons = { "<": "&lt;", "<=": "≤", ">": "&gt;", ">=": "≥" } as const;

/** A term as MathML, each symbol written by `symbol`. */
export function termMathml(term: Term, symbol: (name: string) => string = symbolMathml): string {
  const inner = (part: Term) => termMathml(part, symbol);
  const bracketed = (part: Term, bracket: boolean) => (bracket ? row(sign("("), inner(part), sign(")")) : inner(part));
  switch (term.type) {
    case "number":
      return `<mn>${escaped(term.raw)}</mn>`;
    case "symbol":
      return symbol(term.name);
    case "minus":
      return row(sign("−"), bracketed(term.of, term.of.type === "operation"));
    case "function":
      return term.name === "sqrt"
        ? `<msqrt>${term.of.map(inner).join("")}</msqrt>`
        : row(`<mi>${term.name}</mi>`, sign("("), term.of.map(inner).join(sign(",")), sign(")"));
    case "sum":
      return row(
        `<munderover><mo>∑</mo>${row(symbolMathml(term.index), sign("="), inner(term.from))}${inner(term.to)}</munderover>`,
        bracketed(term.of, binding(term.of) < 2),
      );
    case "choice": {
      const condition = row(inner(term.left), sign(comparisons[term.comparison]), inner(term.right));
      const line = (value: Term, when: string) => `<mtr><mtd>${inner(value)}</mtd><mtd>${when}</mtd></mtr>`;
      const lines = [
        line(term.met, row("<mtext>if&#xA0;</mtext>", condition)),
        line(term.otherwise, "<mtext>otherwise</mtext>"),
      ];
      return row(sign("{"), `<mtable columnalign="left">${lines.join("")}</mtable>`);
    }
    case "operation": {
      const { operator, left, right } = term;
      if (operator === "/") return `<mfrac>${inner(left)}${inner(right)}</mfrac>`;
      const base = bracketed(
        left,
        needsParentheses(left, operator, "left") ||
          (operator === "^" && left.type === "symbol" && symbol(left.name).startsWith("<mtext")),
      );
      if (operator === "^") return `<msup>${row(base)}${inner(right)}</msup>`;
      const written = { "+": "+", "-": "−", "*": "·" }[operator];
      return row(base, sign(written), bracketed(right, needsParentheses(right, operator, "right")));
    }
  }
}

/** The values that are put into an equation. */
export interface PutIn {
  /** What is written for a symbol: its value with its unit. */
  readonly symbol: (name: string) => string;
  /** What the equation comes to. */
  readonly result: string;
  /** True where the equation holds with the result put in, rather than leads to it. */
  readonly implicit?: boolean;
}

/**
 * A whole equation as a MathML element; with `values` in three rows, the formula, the same with numbers, and the result,
 * so that it fits a narrow page.
 */
export function equationMathml({ left, right }: Equation, values?: PutIn): string {
  const math = (content: string) =>
    `<math xmlns="http://www.w3.org/1998/Math/MathML" display="block">${content}</math>`;
  if (values === undefined) return math(row(termMathml(left), sign("="), termMathml(right)));
  const line = (from: string, mark: string, to: string) =>
    `<mtr><mtd>${from}</mtd><mtd>${mark}</mtd><mtd>${to}</mtd></mtr>`;
  const put = (term: Term) => termMathml(term, (name) => valueMathml(values.symbol(name)));
  const lines = [
    line(termMathml(left), sign("="), termMathml(right)),
    line(values.implicit === true ? put(left) : "", sign("="), put(right)),
    line("", sign(values.implicit === true ? "⇒" : "="), valueMathml(values.result)),
  ];
  return math(`<mtable displaystyle="true">${lines.join("")}</mtable>`);
}
