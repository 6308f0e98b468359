/** Says how far a proof is and how long it will take, every few seconds. */
export function timeLeft(name: string, say: (line: string) => void): (done: number, of: number) => void {
  const since = performance.now();
  let said = since;
  return (done, of) => {
    const now = performance.now();
    if (now - said < 5000 || done === 0) return;
    said = now;
    const leftS = Math.round((((now - since) / done) * (of - done)) / 1000);
    const left = leftS < 90 ? `${leftS} s` : `${Math.round(leftS / 60)} min`;
    say(`${name}: ${done} of ${of}, about ${left} left`);
  };
}
