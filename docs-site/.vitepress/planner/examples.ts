import twin from "chargewright/examples/high-altitude-twin.json";
import moorland from "chargewright/examples/moorland-two-seater.json";
import aspirated from "chargewright/examples/naturally-aspirated.json";

/** The builds that a visitor can start from, by the ids that links carry; the first is shown at first. */
export const examples: Readonly<Record<string, { readonly name: string }>> = {
  "moorland-two-seater": moorland,
  "high-altitude-twin": twin,
  "naturally-aspirated": aspirated,
};

export const FIRST_EXAMPLE = "moorland-two-seater";

/** Where a build of one's own starts from: nothing. */
export const OWN = "own";
