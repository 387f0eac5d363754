import type { ConstantDeclaration } from "./declaration.ts";

export const pi = {
  value: Math.PI,
  unit: "",
  meaning: "circumference of a circle over its diameter",
} as const satisfies ConstantDeclaration;
