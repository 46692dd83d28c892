// Tips the fly and lets it go down its righting curve. The heels are the engine's; the pace is only for the eye.
(() => {
  const page = document.querySelector("[data-bench]");
  if (!page) return;
  const still = matchMedia("(prefers-reduced-motion: reduce)");
  let frame = 0;

  const parts = () => {
    const plate = page.querySelector("[data-tip-plate]"), fly = plate && plate.querySelector(".fly-tipping");
    return fly ? { fly, range: page.querySelector("[data-tip]"), said: page.querySelector("[data-tip-said]") } : null;
  };
  const turn = (p, heel) => p.fly.setAttribute("transform", `rotate(${heel})`);

  page.addEventListener("input", event => {
    if (!event.target.hasAttribute || !event.target.hasAttribute("data-tip")) return;
    const p = parts();
    if (!p) return;
    cancelAnimationFrame(frame);
    p.said.textContent = `${p.range.value}°`;
    turn(p, Number(p.range.value));
  });

  document.addEventListener("submit", event => {
    if (!event.submitter || !event.submitter.hasAttribute("data-tip-go") || still.matches) return;
    const p = parts();
    const heels = p ? p.fly.dataset.heelsDeg.split(" ").map(Number) : [], moments = p ? p.fly.dataset.restoringGmm.split(" ").map(Number) : [];
    if (heels.length < 2) return;
    event.preventDefault();
    cancelAnimationFrame(frame);
    const most = Math.max(...moments.map(Math.abs), 1e-9);
    const moment = heel => {
      const i = Math.min(Math.max(heels.findIndex(h => h >= heel), 1), heels.length - 1);
      return (moments[i - 1] + (heel - heels[i - 1]) / (heels[i] - heels[i - 1]) * (moments[i] - moments[i - 1])) / most;
    };
    let heel = Number(p.range.value), rate = 0, before = 0, began = 0, moved = 0;
    const step = now => {
      if (!began) began = before = moved = now;
      const dt = Math.min((now - before) / 1000, 0.04);
      before = now;
      // Beyond upright and upside down the curve is its own mirror image.
      const folded = heel < 0 ? -heel : heel > 180 ? 360 - heel : heel, side = heel < 0 || heel > 180 ? -1 : 1;
      rate += (-900 * side * moment(folded) - 3.2 * rate) * dt;
      heel += rate * dt;
      turn(p, heel);
      p.said.textContent = `${Math.round(Math.abs(folded))}°`;
      // It stands still only at the turn of a swing, too, but not for long.
      if (Math.abs(rate) > 1.5) moved = now;
      if (now - began < 12000 && now - moved < 400) frame = requestAnimationFrame(step);
      else p.said.textContent = folded < 30 ? "came back" : folded > 150 ? "turned over" : `rests ${Math.round(folded)}° over`;
    };
    frame = requestAnimationFrame(step);
  }, true);
})();
