import type { OperatingPoint } from "chargewright/build";
import { callFragment } from "../calculator/call-fragment.ts";

/** The calculator page on which the relation behind a value stands with the point's numbers, without the site's base. */
export function calculatorLink({ calls }: OperatingPoint, name: string): string | undefined {
  const call = calls[name];
  return call && `/calculators/${call.relation.id}.html#${callFragment(call)}`;
}
