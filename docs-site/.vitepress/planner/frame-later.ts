import { onUnmounted, type Ref, type ShallowRef, shallowRef, watch } from "vue";

/** Follows a value a frame later, so that what is read first is drawn first; of quick changes only the last is followed. */
export function frameLater<T>(source: Readonly<Ref<T>>): Readonly<ShallowRef<T>> {
  const later = shallowRef(source.value);
  let frame = 0;
  let turn: ReturnType<typeof setTimeout> | undefined;
  const cancel = () => {
    cancelAnimationFrame(frame);
    clearTimeout(turn);
  };
  watch(source, () => {
    cancel();
    // A frame is drawn after its callbacks: the turn after it is the next one.
    frame = requestAnimationFrame(() => {
      turn = setTimeout(() => {
        later.value = source.value;
      });
    });
  });
  onUnmounted(cancel);
  return later;
}
