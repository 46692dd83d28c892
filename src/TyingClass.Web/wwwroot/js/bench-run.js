// While the speed is being pulled about, the fly turns at once: the server sends its attitudes over all speeds one time, drawn about
// the eye, and each is turned here by the little that its pitch differs.
(() => {
  const page = document.querySelector("[data-bench]");
  const form = document.getElementById("bench-form");
  if (!page || !form) return;
  const head = page.querySelector(".bench-head");
  const stage = document.createElement("div");
  stage.className = "plate bench-run";
  stage.setAttribute("aria-hidden", "true");
  head.append(stage);
  let recipe = "", run = null, away = 0, held = false;

  const isSpeed = e => e.target.dataset && e.target.dataset.path === "fishing.speed" && e.target.type === "range";
  // What the attitudes hang on: all of the recipe but its speed.
  const key = () => [...form.querySelectorAll("[name^='r:']")].filter(f => f.name !== "r:fishing.speed").map(f => f.value).join("\n") + form.querySelector("[name='soak-was']").value;

  async function load() {
    const now = key();
    if (now === recipe) return;
    recipe = now;
    run = null;
    const data = new URLSearchParams(new FormData(form));
    data.set("do", "run");
    try {
      const answer = await fetch("/bench", { method: "POST", body: data });
      if (answer.status !== 200 || !answer.headers.get("Content-Type").startsWith("image/svg")) { recipe = ""; return; }
      stage.innerHTML = await answer.text();
      const line = stage.querySelector(".fly-run-line");
      const list = name => line.dataset[name].split(" ").map(Number);
      run = { line, speeds: list("speedsMs"), pitches: list("pitchesDeg"), leans: list("leansDeg"), lines: list("linesDeg"), poses: [...stage.querySelectorAll(".fly-pose")].map(pose => ({ pose, pitch: Number(pose.dataset.pitchDeg), lean: Number(pose.dataset.leanDeg) })) };
    } catch { recipe = ""; }
  }

  function at(values, speed) {
    const s = run.speeds;
    let i = 1;
    while (i < s.length - 1 && s[i] < speed) i++;
    const share = Math.min(Math.max((speed - s[i - 1]) / (s[i] - s[i - 1]), 0), 1);
    return values[i - 1] + share * (values[i] - values[i - 1]);
  }

  function show(range) {
    const side = document.querySelector("#bench-plate svg");
    if (!run || !side) return;
    const speed = Number(range.value) * Number(range.dataset.si), pitch = at(run.pitches, speed), lean = at(run.leans, speed);
    const far = p => 3 * Math.abs(p.lean - lean) + Math.abs(p.pitch - pitch);
    const nearest = run.poses.reduce((a, b) => far(b) < far(a) ? b : a);
    for (const p of run.poses) p.pose.setAttribute("display", p === nearest ? "inline" : "none");
    nearest.pose.setAttribute("transform", `rotate(${pitch - nearest.pitch})`);
    run.line.setAttribute("transform", `rotate(${at(run.lines, speed)})`);
    // Both drawings are in millimeters about the eye: through the same window the fly stays where it is.
    const svg = stage.querySelector("svg");
    if (!head.classList.contains("is-running")) {
      svg.setAttribute("viewBox", side.getAttribute("viewBox"));
      stage.style.height = `${document.getElementById("bench-plate").offsetHeight}px`;
    }
    head.classList.add("is-running");
    clearTimeout(away);
    if (!held) away = setTimeout(stop, 600);
  }

  function stop() { head.classList.remove("is-running"); }

  form.addEventListener("pointerdown", event => { if (isSpeed(event)) { held = true; load(); } });
  form.addEventListener("focusin", event => { if (isSpeed(event)) load(); });
  form.addEventListener("input", event => { if (isSpeed(event)) show(event.target); });
  form.addEventListener("change", event => { if (isSpeed(event)) { held = false; clearTimeout(away); away = setTimeout(stop, 250); } });
})();
