import { fragment, readFragment } from "chargewright";
import { type FieldState, unitBySymbol } from "../calculator/field.ts";
import {
  type ConditionName,
  type ConditionState,
  conditionField,
  conditionNames,
  conditionTexts,
  firstCondition,
  fuellings,
} from "./condition.ts";
import { fieldsOf } from "./description.ts";
import { leafAt, lists, rowAt, sectionOf, sections } from "./entries.ts";
import { examples, FIRST_EXAMPLE, OWN } from "./examples.ts";
import { type Fields, fieldWith, hasSection, rowsOf, type Texts, textsOf } from "./fields.ts";
import { groupNames, type Shown, shownGroups } from "./shown.ts";
import { applies, firstVariant, MOST_VARIANTS, readVariant, type VariantState, variantText } from "./variants.ts";

/** Everything that a visitor can set on the planner. */
export interface PlannerState {
  /** Id of the example that the description started from, or "own". */
  readonly start: string;
  readonly fields: Fields;
  readonly condition: ConditionState;
  readonly variants: readonly VariantState[];
  /** Units chosen for results. */
  readonly shownIn: Shown;
}

/** An example as it is shipped, with a first comparison. */
export function exampleState(start: string = FIRST_EXAMPLE): PlannerState {
  const fields = baseFields(start);
  return { start, fields, condition: firstCondition, variants: firstVariants(fields), shownIn: {} };
}

// Read once: every edit compares with them.
const bases = new Map(Object.entries(examples).map(([id, example]) => [id, fieldsOf(example)]));
const baseFields = (start: string): Fields => bases.get(start) ?? {};

/** What is laid beside a build before anybody chooses: the change that says most of those that it can have. */
export function firstVariants(fields: Fields): readonly VariantState[] {
  const change = (["no cooler", "drive ratio", "altitude"] as const).find((each) =>
    applies(each, (section) => hasSection(fields, section)),
  );
  return change === undefined ? [] : [firstVariant(change)];
}

const VARIANT = "variant.";
const UNIT = ".in";

/** A state as the part of an address behind the `#`: what differs from the example that it started from, and no more. */
export function plannerFragment({ start, fields, condition, variants, shownIn }: PlannerState): string {
  const [now, before] = [textsOf(fields), textsOf(baseFields(start))];
  const texts: Record<string, string> = { build: start };
  for (const { name } of sections)
    if (hasSection(baseFields(start), name) && !hasSection(fields, name)) texts[name] = "";
  for (const path of [...Object.keys(now), ...Object.keys(before)]) {
    if (!hasSection(fields, sectionOf(path)) || rowAt(path) !== undefined) continue;
    if (now[path] !== before[path]) texts[path] = now[path] ?? "";
  }
  // A list that differs is carried whole: a row has no name of its own.
  for (const { path } of lists)
    if (JSON.stringify(within(now, path)) !== JSON.stringify(within(before, path)))
      Object.assign(texts, within(now, path));
  const [running, first] = [conditionTexts(condition), conditionTexts(firstCondition)];
  for (const name of conditionNames) if (running[name] !== first[name]) texts[name] = running[name] ?? "";
  if (condition.fuelling !== firstCondition.fuelling) texts.fuelling = condition.fuelling;
  const named = variants.map(variantText);
  if (named.join("\n") !== firstVariants(fields).map(variantText).join("\n")) {
    if (named.length === 0) texts[`${VARIANT}1`] = "";
    for (const [i, name] of named.entries()) texts[`${VARIANT}${i + 1}`] = name;
  }
  // What was made blank has to be said as well, and `fragment` leaves blanks out.
  const blanks = Object.keys(texts).filter((name) => texts[name] === "");
  return [
    fragment({ texts, shownIn: shownIn as Readonly<Record<string, string>> }),
    ...blanks.map((name) => `${name}=`),
  ].join("&");
}

const within = (texts: Texts, list: string) =>
  Object.fromEntries(Object.entries(texts).filter(([path]) => path.startsWith(`${list}.`)));

/** What a link holds, and what of it the planner does not know. */
export interface LinkedState {
  readonly state: PlannerState;
  readonly unknown: readonly string[];
}

/**
 * The state that a link holds; nothing where it holds none.
 * @throws ChargewrightError as `readFragment`.
 */
export function readPlannerFragment(text: string): LinkedState | undefined {
  const page = readFragment(text);
  if (page === undefined) return undefined;
  const { build: start = FIRST_EXAMPLE, ...texts } = page.texts;
  if (start !== OWN && !Object.hasOwn(examples, start))
    return { state: exampleState(), unknown: [`build = ${start}, and all that it says of it`] };

  const known = new Set<string>();
  const fields = linkedFields(start, texts, known);
  const state: PlannerState = {
    start,
    fields,
    condition: linkedCondition(texts, known),
    variants: linkedVariants(texts, known) ?? firstVariants(fields),
    shownIn: linkedUnits(page.shownIn ?? {}, known),
  };
  const left = (each: Texts, ending: string) =>
    Object.entries(each).flatMap(([name, text]) => (known.has(name + ending) ? [] : [`${name}${ending} = ${text}`]));
  const { plusMinus = {}, shownIn = {} } = page;
  return { state, unknown: [...left(texts, ""), ...left(plusMinus, ".pm"), ...left(shownIn, UNIT)] };
}

function linkedUnits(shownIn: Texts, known: Set<string>): Shown {
  const sound = groupNames.filter((name) => {
    const symbol = shownIn[name];
    return symbol !== undefined && unitBySymbol(shownGroups[name].kinds[0], symbol).symbol === symbol;
  });
  for (const name of sound) known.add(name + UNIT);
  return Object.fromEntries(sound.map((name) => [name, shownIn[name]]));
}

function linkedCondition(texts: Texts, known: Set<string>): ConditionState {
  const fields = conditionNames.map((name): [ConditionName, FieldState] => {
    const text = texts[name];
    if (text === undefined) return [name, firstCondition.fields[name]];
    known.add(name);
    return [name, conditionField(name, text)];
  });
  const fuelling = fuellings.find((each) => each === texts.fuelling);
  if (fuelling !== undefined) known.add("fuelling");
  return {
    fields: Object.fromEntries(fields) as ConditionState["fields"],
    fuelling: fuelling ?? firstCondition.fuelling,
  };
}

/** The description's fields: those of the example, with what the link changes; what it knows is noted in `known`. */
function linkedFields(start: string, texts: Texts, known: Set<string>): Fields {
  const gone = sections.filter(({ name, optional }) => optional && texts[name] === "").map(({ name }) => name);
  for (const name of gone) known.add(name);
  const linked: Fields = Object.fromEntries(
    Object.entries(texts).flatMap(([path, text]) => {
      const leaf = leafAt(path);
      return leaf === undefined || gone.includes(sectionOf(path)) ? [] : [[path, fieldWith(leaf, text)]];
    }),
  );
  // Of a list the rows that follow on each other from the first; one row of it stands for the whole.
  const sound = Object.keys(linked).filter((path) => {
    const at = rowAt(path);
    return at === undefined || rowsOf(linked, at.list).includes(at.row);
  });
  for (const path of sound) known.add(path);
  const replaced = new Set(sound.flatMap((path) => rowAt(path)?.list ?? []));
  const kept = Object.entries(baseFields(start)).filter(([path]) => {
    const list = rowAt(path)?.list;
    return !gone.includes(sectionOf(path)) && !(list !== undefined && replaced.has(list));
  });
  return Object.fromEntries([...kept, ...sound.map((path) => [path, linked[path] as FieldState] as const)]);
}

/** The link's variants; nothing where it says nothing of them. */
function linkedVariants(texts: Texts, known: Set<string>): readonly VariantState[] | undefined {
  const names = Object.keys(texts).filter((name) => name.startsWith(VARIANT));
  if (names.length === 0) return undefined;
  const variants: VariantState[] = [];
  for (const name of names) {
    const variant = readVariant(texts[name] ?? "");
    if (variant !== undefined && variants.length < MOST_VARIANTS) variants.push(variant);
    else if (texts[name] !== "") continue;
    known.add(name);
  }
  return variants;
}
