// Redraws the bench as it is edited: posts the form, puts the parts that come back in place of the old ones, and leaves alone whatever
// is being typed into. Without it every button posts the form itself.
(() => {
  const page = document.querySelector("[data-bench]");
  const form = document.getElementById("bench-form");
  if (!page || !form) return;
  const trouble = page.querySelector("[data-trouble]");
  const say = page.querySelector("[data-say]");
  const typingPause = 220, slidingPause = 25, quiet = 700, restPause = 350;
  let request = null, timer = 0, restTimer = 0, sayTimer = 0, touched = new Set(), gesture = "", presses = Promise.resolve();

  const twin = e => e.dataset.path ? [...form.querySelectorAll(`[data-path="${CSS.escape(e.dataset.path)}"]`)].find(o => o !== e) : null;

  form.addEventListener("input", event => {
    const field = event.target;
    if (!field.name) return;
    const other = twin(field);
    if (other && field.value !== "") { other.value = field.value; touched.add(other.name); }
    touched.add(field.name);
    gesture = field.dataset.path || field.name;
    const sliding = field.type === "range";
    if (request && request.isLast) { request.abort(); request = null; }
    if (sliding && request) return; // Another goes out as soon as this one is back.
    if (request && request.isPress) return;
    if (!sliding && request) request.abort();
    clearTimeout(timer);
    timer = setTimeout(() => send(""), sliding ? slidingPause : typingPause);
  });
  form.addEventListener("change", event => {
    if (event.target.tagName === "SELECT" && event.target.name !== "add-kind" && !(request && request.isPress)) { clearTimeout(timer); send(""); }
  });
  // A gesture ends where the hand lets go: the next one is a step of its own for undo.
  form.addEventListener("focusout", () => { gesture = ""; });

  document.addEventListener("submit", event => {
    if (event.target !== form || event.defaultPrevented) return;
    if (event.submitter && event.submitter.hasAttribute("data-leave")) return;
    event.preventDefault();
    const button = event.submitter;
    const target = button && button.getAttribute("formaction") ? button.getAttribute("formaction").split("#")[1] : "";
    gesture = "";
    // One press after another: none may cut off the one before.
    presses = presses.then(() => { if (request) request.abort(); return send(button ? button.value : "draw", button, target); });
  });

  // What must follow the hand comes at once, the rest when the hand rests; a button is pressed by a hand at rest. What takes longest comes last, by itself.
  async function send(action, button, target, part) {
    clearTimeout(timer);
    clearTimeout(restTimer);
    const data = new URLSearchParams(new FormData(form));
    data.set("do", action);
    const brief = action === "";
    data.set("live", part || (brief ? "brief" : "whole"));
    data.set("gesture", gesture);
    const sent = touched;
    touched = new Set();
    const mine = request = new AbortController();
    mine.isPress = Boolean(button);
    mine.isLast = part === "doubt";
    try {
      const answer = await fetch("/bench", { method: "POST", body: data, signal: mine.signal, headers: { "X-Requested-With": "bench" } });
      if (answer.status === 400) { form.submit(); return; }
      if (!answer.ok) throw new Error(String(answer.status));
      const text = await answer.text();
      if (mine !== request) return;
      request = null;
      trouble.hidden = true;
      put(new DOMParser().parseFromString(text, "text/html"), button, target);
      if (touched.size > 0) send("");
      else if (brief) restTimer = setTimeout(() => send("draw"), restPause);
      else if (page.querySelector("[data-later]")) restTimer = setTimeout(() => send("draw", null, "", "doubt"), 0);
    } catch (error) {
      for (const name of sent) touched.add(name);
      if (error.name === "AbortError") return;
      request = null;
      trouble.hidden = false;
    }
  }

  function put(fresh, button, target) {
    const held = document.activeElement;
    for (const region of page.querySelectorAll("[data-swap]")) {
      const next = fresh.getElementById(region.id);
      if (!next) continue;
      const keeps = region.hasAttribute("data-keep-when-empty") && next.childElementCount === 0;
      region.classList.toggle("is-old", keeps);
      if (keeps) continue;
      if (!sync(region, next)) replace(region, next);
    }
    refocus(held, button, target);
    announce();
    page.dispatchEvent(new CustomEvent("bench:put"));
  }

  const names = region => [...region.querySelectorAll("input, select, textarea, button")].map(e => `${e.type} ${e.name} ${e.type === "submit" ? e.value : ""}`).join("|");

  // The same fields in the same order: only what they hold is brought up to date.
  function sync(region, next) {
    const now = [...region.querySelectorAll("input, select, textarea")], then = [...next.querySelectorAll("input, select, textarea")];
    if (now.length === 0 || region.id === "bench-more" || names(region) !== names(next)) return false;
    now.forEach((field, i) => {
      const from = then[i];
      for (const name of ["aria-invalid", "aria-describedby", "min", "max", "step", "rows"]) {
        if (from.hasAttribute(name)) field.setAttribute(name, from.getAttribute(name)); else field.removeAttribute(name);
      }
      if (field !== document.activeElement && !touched.has(field.name) && field.value !== from.value) field.value = from.value;
      remarks(field, from);
    });
    const said = "label, h3, legend, .fold > summary", others = next.querySelectorAll(said);
    region.querySelectorAll(said).forEach((words, i) => {
      const other = others[i];
      if (other && words.textContent !== other.textContent) words.innerHTML = other.innerHTML;
    });
    // What must be mended does not stay folded away.
    region.querySelectorAll("details").forEach((d, i) => { if (next.querySelectorAll("details")[i]?.open) d.open = true; });
    return true;
  }

  function remarks(field, from) {
    const box = field.closest(".field"), other = from.closest(".field");
    if (!box || !other) return;
    box.querySelectorAll(".field-error").forEach(e => e.remove());
    other.querySelectorAll(".field-error").forEach(e => box.append(e));
  }

  function replace(region, next) {
    const open = [...region.querySelectorAll("details")].map(d => d.open);
    const typed = [...touched].map(name => [name, region.querySelector(`[name="${CSS.escape(name)}"]`)?.value]);
    region.replaceChildren(...next.childNodes);
    region.toggleAttribute("data-later", next.hasAttribute("data-later"));
    const details = [...region.querySelectorAll("details")];
    if (details.length === open.length) details.forEach((d, i) => { d.open = open[i] || d.open; });
    for (const [name, value] of typed) {
      const field = region.querySelector(`[name="${CSS.escape(name)}"]`);
      if (field && value !== undefined) field.value = value;
    }
  }

  function refocus(held, button, target) {
    if (target) {
      const place = document.getElementById(target);
      const same = button && place && place.querySelector(`button[value^="${button.value.split(":")[0]}:"]:not(:disabled)`);
      (same || (place && (place.querySelector(".fold[open] :is(select, input), .fold > summary") || place.querySelector("select, input, button:not(:disabled)"))))?.focus();
      return;
    }
    if (held && !held.isConnected) {
      const again = (held.id && document.getElementById(held.id))
        || (held.name && held.value && document.querySelector(`button[name="${CSS.escape(held.name)}"][value="${CSS.escape(held.value)}"]:not(:disabled)`))
        || (held.tagName === "BUTTON" ? form.querySelector("button") : null);
      again?.focus({ preventScroll: true });
    }
  }

  function announce() {
    clearTimeout(sayTimer);
    sayTimer = setTimeout(() => {
      const verdict = page.querySelector("[data-verdict]");
      if (verdict && say.textContent !== verdict.textContent.trim()) say.textContent = verdict.textContent.trim();
      const address = document.getElementById("address");
      if (address) history.replaceState(null, "", new URL(address.value).pathname + new URL(address.value).search);
    }, quiet);
  }

  function offerCopy() {
    for (const button of page.querySelectorAll("[data-copy]")) button.hidden = false;
  }
  page.addEventListener("click", async event => {
    const button = event.target.closest("[data-copy]");
    if (!button) return;
    const field = document.getElementById(button.dataset.copy);
    field.select();
    try {
      await navigator.clipboard.writeText(field.value);
      button.textContent = "Copied";
    } catch {
      // No clipboard on plain HTTP: the text stands selected for Ctrl+C.
      button.textContent = "Selected: copy it";
    }
  });
  page.addEventListener("bench:put", offerCopy);
  offerCopy();
})();
