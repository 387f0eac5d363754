import { computed, onMounted, onUnmounted, ref, shallowRef } from "vue";
import type { FieldState } from "../calculator/field.ts";
import { reasonOf } from "../calculator/outcome.ts";
import { setFragment } from "../calculator/set-fragment.ts";
import type { ConditionName } from "./condition.ts";
import { fieldsOfText } from "./description.ts";
import { OWN } from "./examples.ts";
import { textsOf } from "./fields.ts";
import { type Plan, planOf } from "./plan.ts";
import { exampleState, firstVariants, type PlannerState, plannerFragment, readPlannerFragment } from "./state.ts";
import type { VariantState } from "./variants.ts";

/** The state of the planner, what follows from it, and the edits that a visitor can make. */
export function usePlanner() {
  const state = shallowRef<PlannerState>(exampleState());
  const notice = ref("");
  // What stood there before another build took its place.
  const before = shallowRef<PlannerState>();

  // Many parts show them, and each edit would compose them anew for each.
  const texts = computed(() => textsOf(state.value.fields));
  const planned = computed(() => planOf(state.value));
  const plan = computed<Plan>((last) => planned.value.plan ?? last ?? (planOf(exampleState()).plan as Plan));
  const stale = computed(() => planned.value.plan === undefined);
  const link = computed(() => plannerFragment(state.value));

  function edit(change: Partial<PlannerState>): void {
    before.value = undefined;
    state.value = { ...state.value, ...change };
    setFragment(link.value);
  }

  function replace(next: PlannerState): void {
    const left = state.value;
    notice.value = "";
    edit(next);
    before.value = left;
  }

  /** Another build in the place of the present one; place, weather and units stay. */
  const replaceBuild = (start: string, fields: PlannerState["fields"]) =>
    replace({ ...state.value, start, fields, variants: firstVariants(fields) });

  /** Takes a build as JSON; says why where it cannot be taken. */
  function takeBuild(json: string): string | undefined {
    const answer = fieldsOfText(json);
    if ("refused" in answer) return answer.refused;
    replaceBuild(OWN, answer.fields);
    return undefined;
  }

  function restore(): void {
    const { hash } = location;
    // A plain anchor is no state.
    if (!hash.includes("=")) return;
    try {
      const linked = readPlannerFragment(hash);
      if (linked === undefined) return;
      state.value = linked.state;
      notice.value =
        linked.unknown.length === 0
          ? ""
          : `This link says more than the planner knows; left out: ${linked.unknown.join("; ")}.`;
    } catch (error) {
      notice.value = `This link cannot be read: ${reasonOf(error)}. It changes nothing here.`;
    }
  }

  onMounted(() => {
    restore();
    addEventListener("hashchange", restore);
  });
  onUnmounted(() => removeEventListener("hashchange", restore));

  return {
    state,
    notice,
    texts,
    plan,
    stale,
    link,
    problems: computed(() => planned.value.problems),
    edit,
    takeBuild,
    replaceable: computed(() => before.value !== undefined),
    start: (id: string) => replaceBuild(id, exampleState(id).fields),
    undo: () => before.value !== undefined && edit(before.value),
    putEntry: (path: string, field: FieldState) => edit({ fields: { ...state.value.fields, [path]: field } }),
    putCondition: (name: ConditionName, field: FieldState) => {
      const { condition } = state.value;
      edit({ condition: { ...condition, fields: { ...condition.fields, [name]: field } } });
    },
    putVariant: (place: number, variant: VariantState) =>
      edit({ variants: state.value.variants.map((each, i) => (i === place ? variant : each)) }),
  };
}

/** What the planner's parts share. */
export type Planner = ReturnType<typeof usePlanner>;
