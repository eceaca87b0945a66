/**
 * Asks one question at a time. Of the questions that come while one is out only the last is asked after it;
 * those it overtook come back empty.
 */
export function askLatest<S, R>(ask: (state: S) => Promise<R>): (state: S) => Promise<R | undefined> {
  let isOut = false;
  let next: Readonly<{ go: () => void; drop: () => void }> | undefined;
  const onward = () => {
    isOut = next !== undefined;
    next?.go();
    next = undefined;
  };
  return (state) =>
    new Promise((resolve, reject) => {
      const go = () => void ask(state).then(resolve, reject).finally(onward);
      next?.drop();
      if (isOut) next = { go, drop: () => resolve(undefined) };
      else {
        isOut = true;
        go();
      }
    });
}
