// While an answer is worked out its button says so and cannot be pressed twice. Without scripting the form goes as it is, and the server takes it once.
(() => {
  const words = "Working it out…";

  document.addEventListener("submit", event => {
    const form = event.target, button = event.submitter;
    if (!form.matches("form.answer") || !button || button.value !== "submit") return;
    if (form.dataset.sent) return event.preventDefault();
    form.dataset.sent = button.textContent;
    const said = form.querySelector("[data-sending]");
    if (said) said.textContent = words;
    button.setAttribute("aria-disabled", "true");
    button.textContent = words;
  });

  // Coming back to a page that the browser kept: it can be sent again.
  addEventListener("pageshow", () => {
    for (const form of document.querySelectorAll("form.answer[data-sent]")) {
      const button = form.querySelector("button[value=submit]");
      button.textContent = form.dataset.sent;
      button.removeAttribute("aria-disabled");
      form.querySelector("[data-sending]").textContent = "";
      delete form.dataset.sent;
    }
  });
})();
