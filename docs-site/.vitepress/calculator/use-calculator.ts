import { type AnyRelation, fragment, type Output, readFragment } from "chargewright";
import { computed, onMounted, onUnmounted, ref, shallowRef } from "vue";
import { converted, type FieldState, isNumberAlone, ownUnit } from "./field.ts";
import { compute, isPreset, type Outcome, reasonOf } from "./outcome.ts";
import { setFragment } from "./set-fragment.ts";
import { type CalculatorState, exampleState, fromPageState, toPageState, wantedField } from "./state.ts";

/**
 * The state of a calculator, what it computes to, and the edits a visitor can make.
 * @param linked whether the page's address holds the state; not where several calculators share a page.
 */
export function useCalculator(relation: AnyRelation, linked: boolean) {
  const state = shallowRef<CalculatorState>(exampleState(relation));
  const notice = ref("");
  // What was typed before the unit menu converted it, so that going back brings the very text back.
  const typed = new Map<string, FieldState>();

  const result = computed(() => compute(relation, state.value));
  const outcome = computed<Outcome | undefined>((last) => result.value.outcome ?? last);
  const stale = computed(() => result.value.outcome === undefined);

  function edit(change: Partial<CalculatorState>): void {
    state.value = { ...state.value, ...change };
    if (linked) setFragment(fragment(toPageState(state.value)));
  }

  function fieldOf(name: string): FieldState {
    const { fields, wanted } = state.value;
    return fields[name] ?? wanted.field;
  }

  function putField(name: string, field: FieldState): void {
    const { fields, wanted } = state.value;
    edit(Object.hasOwn(fields, name) ? { fields: { ...fields, [name]: field } } : { wanted: { ...wanted, field } });
  }

  const kindOf = (name: string) => (relation.inputs[name] ?? relation.outputs[name]).kind;

  /** The symbol of the unit that a field counts in: its own where the text names one, else the menu's. */
  function unitOf(name: string): string {
    const { text, unit } = fieldOf(name);
    return ownUnit(text, kindOf(name))?.symbol ?? unit;
  }

  function type(name: string, part: "text" | "plusMinus", text: string): void {
    typed.delete(name);
    putField(name, { ...fieldOf(name), [part]: text });
  }

  function chooseUnit(name: string, symbol: string): void {
    const field = fieldOf(name);
    // A preset has no number to convert; its unit only matters where the input is sought.
    if (isPreset(relation, name, field.text)) {
      putField(name, { ...field, unit: symbol });
      return;
    }
    if (symbol === unitOf(name)) return;
    // Who mends a refused number by its unit means the number as it stands.
    if (result.value.problems?.fields[name] !== undefined && isNumberAlone(field.text)) {
      typed.delete(name);
      putField(name, { ...field, unit: symbol });
      return;
    }
    const before = typed.get(name) ?? { ...field, unit: unitOf(name) };
    typed.set(name, before);
    putField(name, symbol === before.unit ? before : converted(before, kindOf(name), symbol));
  }

  function sought(name: string | undefined): void {
    const { fields, wanted } = state.value;
    if (name === undefined) edit({ find: undefined });
    else
      edit({
        find: name,
        // The value that is found is shown in the unit that was typed.
        fields: { ...fields, [name]: { ...fieldOf(name), unit: unitOf(name) } },
        wanted: wanted.field.text === "" ? wantedNow(wanted.output) : wanted,
      });
  }

  /** The value an output has now, to be wished otherwise. */
  function wantedNow(output: string): CalculatorState["wanted"] {
    const shown = outcome.value?.check.outputs.find(({ name }) => name === output)?.quantity;
    const unit = (relation.outputs[output] as Output).unit.symbol;
    typed.delete(output);
    return { output, field: shown === undefined ? { text: "", plusMinus: "", unit } : wantedField(shown) };
  }

  function showOutput(output: string, symbol: string): void {
    const { find, wanted } = state.value;
    if (find !== undefined && output === wanted.output) chooseUnit(output, symbol);
    else edit({ shownIn: { ...state.value.shownIn, [output]: symbol } });
  }

  function reset(): void {
    typed.clear();
    notice.value = "";
    state.value = exampleState(relation);
    if (linked) setFragment("");
  }

  function restore(): void {
    const hash = location.hash;
    // A plain anchor is no state.
    if (!hash.includes("=")) return;
    typed.clear();
    try {
      const page = readFragment(hash);
      if (page === undefined) return;
      const { state: linked, unknown } = fromPageState(relation, page);
      state.value = linked;
      notice.value =
        unknown.length === 0 ? "" : `This link says more than this calculator knows; left out: ${unknown.join("; ")}.`;
    } catch (error) {
      notice.value = `This link cannot be read: ${reasonOf(error)}. The demo build's values are shown.`;
    }
  }

  onMounted(() => {
    if (!linked) return;
    restore();
    addEventListener("hashchange", restore);
  });
  onUnmounted(() => removeEventListener("hashchange", restore));

  return {
    state,
    notice,
    outcome,
    stale,
    problems: computed(() => result.value.problems),
    fieldOf,
    unitOf,
    type,
    chooseUnit,
    sought,
    wantOutput: (output: string) => edit({ wanted: wantedNow(output) }),
    showOutput,
    reset,
    put: putField,
  };
}

/** What the calculator's parts share. */
export type Calculator = ReturnType<typeof useCalculator>;
