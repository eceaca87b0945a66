/**
 * Asks once nothing new has come for so many ms, and one question at a time: of the questions that come
 * meanwhile only the last is asked. Those it overtook come back empty.
 */
export function askLatest<S, R>(
  ask: (state: S) => Promise<R>,
  stillMs: number,
): (state: S) => Promise<R | undefined> {
  let isOut = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let next: Readonly<{ go: () => void; drop: () => void }> | undefined;
  const onward = () => {
    if (isOut || timer !== undefined || !next) return;
    const { go } = next;
    [next, isOut] = [undefined, true];
    go();
  };
  const back = () => {
    isOut = false;
    onward();
  };
  const still = () => {
    timer = undefined;
    onward();
  };
  return (state) =>
    new Promise((resolve, reject) => {
      next?.drop();
      next = {
        go: () => void ask(state).then(resolve, reject).finally(back),
        drop: () => resolve(undefined),
      };
      clearTimeout(timer);
      timer = setTimeout(still, stillMs);
    });
}
