/** Does one thing after the other: what comes while another is under way waits for it. */
export function oneAfterAnother(): <Result>(act: () => Promise<Result>) => Promise<Result> {
  let last: Promise<unknown> = Promise.resolve();
  return (act) => {
    const result = last.then(act, act);
    last = result;
    return result;
  };
}
