// Moves the fly along the path of its film strip, at its own pace, when asked. What it does is computed; here it is only put in its place.
(() => {
  const page = document.querySelector("[data-bench]");
  if (!page) return;
  const still = matchMedia("(prefers-reduced-motion: reduce)");
  let frame = 0;

  const parts = () => {
    const moving = page.querySelector("[data-film] .fly-film-moving"), tools = page.querySelector("[data-film-tools]");
    return moving && tools ? { moving, tools, go: tools.querySelector("[data-film-go]") } : null;
  };
  const offer = () => { const p = parts(); if (p) p.tools.hidden = still.matches; };

  function stop() {
    cancelAnimationFrame(frame);
    frame = 0;
    const p = parts();
    if (!p) return;
    p.moving.setAttribute("visibility", "hidden");
    p.moving.replaceChildren();
    for (const pose of page.querySelectorAll("[data-film] .fly-film-pose")) pose.removeAttribute("visibility");
    p.go.textContent = "Let it swim";
  }

  function start(p) {
    const list = name => p.moving.dataset[name].split(" ").map(Number);
    const times = list("timesS"), xs = list("xMm"), ys = list("yMm"), pitches = list("pitchesDeg"), nearest = list("poses"), drawn = list("posePitchesDeg");
    const flies = [...page.querySelectorAll("[data-film] .fly-film-fly")].map(fly => fly.cloneNode(true)), last = times[times.length - 1];
    if (times.length < 2 || !(last > 0)) return;
    for (const pose of page.querySelectorAll("[data-film] .fly-film-pose")) pose.setAttribute("visibility", "hidden");
    p.moving.replaceChildren(...flies);
    p.moving.setAttribute("visibility", "visible");
    p.go.textContent = "Stop";
    let began = 0;
    const step = now => {
      // Another fly came onto the bench meanwhile.
      if (!p.moving.isConnected) { frame = 0; offer(); return; }
      if (!began) began = now;
      const time = ((now - began) / 1000) % last;
      const i = Math.max(1, times.findIndex(t => t >= time)), share = (time - times[i - 1]) / (times[i] - times[i - 1]);
      const between = values => values[i - 1] + share * (values[i] - values[i - 1]);
      const shown = nearest[share < 0.5 ? i - 1 : i];
      flies.forEach((fly, n) => {
        fly.setAttribute("display", n === shown ? "inline" : "none");
        if (n === shown) fly.setAttribute("transform", `translate(${between(xs)} ${between(ys)}) rotate(${between(pitches) - drawn[n]})`);
      });
      frame = requestAnimationFrame(step);
    };
    frame = requestAnimationFrame(step);
  }

  page.addEventListener("click", event => {
    if (!event.target.closest || !event.target.closest("[data-film-go]")) return;
    const p = parts();
    if (!p) return;
    if (frame) stop(); else if (!still.matches) start(p);
  });
  still.addEventListener("change", () => { if (still.matches) stop(); offer(); });
  new MutationObserver(offer).observe(page, { childList: true, subtree: true });
  offer();
})();
