// Draws the fly of an exercise anew while its fields are changed: posts the form as its button "Draw it" would, and takes the drawing out of the page that
// comes back. Nothing else on the page is touched. Without it the button does the same, and comes back to the drawing.
(() => {
  const draft = document.querySelector("[data-draft]");
  const form = draft && draft.closest("form");
  if (!form) return;
  const plate = draft.querySelector("[data-draft-plate]"), said = draft.querySelector("[data-draft-said]");
  const pause = 300;
  let timer = 0, request = null;

  form.addEventListener("input", event => {
    if (!event.target.name || event.target.name === "add-kind") return;
    clearTimeout(timer);
    timer = setTimeout(draw, pause);
  });

  async function draw() {
    if (request) request.abort();
    const mine = request = new AbortController();
    const data = new URLSearchParams(new FormData(form));
    data.set("do", "draw");
    try {
      const answer = await fetch(form.action, { method: "POST", body: data, signal: mine.signal });
      if (!answer.ok) throw new Error(String(answer.status));
      const page = new DOMParser().parseFromString(await answer.text(), "text/html");
      if (mine !== request) return;
      const next = page.querySelector("[data-draft-plate]"), wrong = page.querySelector("#problems li");
      const drawn = next && next.querySelector("svg");
      if (drawn) plate.replaceChildren(...next.childNodes);
      plate.classList.toggle("is-old", !drawn);
      say(drawn ? "" : wrong ? `Not drawn yet: ${wrong.textContent.trim().replace(/\s+/g, " ")}` : "Not drawn yet.");
    } catch (error) {
      if (error.name === "AbortError") return;
      plate.classList.add("is-old");
      say("The server cannot be reached just now. What you typed stands.");
    }
  }

  function say(words) { if (said.textContent !== words) said.textContent = words; }
})();
